#!/usr/bin/env bash
# SPDX-FileCopyrightText: The Setfolio authors
# SPDX-License-Identifier: MIT
set -euo pipefail

# A signed sheet from paper back to the file, with programs of others: the QR code is read from the rendered page by
# zbarimg, the chain computed by sha256sum, the signatures looked for among the lines of the page as vectors.
program=$1
root=$(cd "$(dirname "${BASH_SOURCE[0]}")/../.." && pwd)
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
cd "$work"

fail() {
    echo "$*"
    exit 1
}

signed() { # NAME [again]: NAME.setfolio and NAME.pdf
    /usr/bin/python3 "$root/tests/app/signed_match.py" "$root/resources/rulebooks/high-school.json" "${@:2}" >"$1.jsonl"
    "$program" enter "$1.jsonl" --to "$1.setfolio" >/dev/null
    "$program" print "$1.setfolio" --to "$1.pdf" >/dev/null
}

seals() { # FILE: the digests that sha256sum makes of the lines before each seal
    previous=$(printf '%064d' 0)
    while IFS= read -r line; do
        [[ $line == *'"kind":"sealed"'* ]] && echo "$previous"
        previous=$(printf '%s%s' "$previous" "${line%,\"digest\":*}" | sha256sum | cut -c1-64)
    done <"$1"
}

code() { cut -c1-24 <<<"$1" | tr 0123456789abcdef 3479ACEFHKMNPRTX; }
grouped() { sed 's/..../& /g; s/ $//' <<<"$1"; }

signed once
digest=$(seals once.setfolio)
pdftoppm -r 300 -png once.pdf page
read_back=$(zbarimg --quiet --raw page-1.png)
expected="Setfolio seal
$digest
match 7f1c2a54-3f0e-4b5e-9c0d-2f6c1a9b8e77
2026-10-10
set 1: SAL 25-20 QRL"
[[ $read_back == "$expected" ]] || fail "the QR code says: $read_back, not: $expected"

text=$(pdftotext -layout once.pdf - | tr -s ' \n' '  ')
plain=$(code "$digest")
for group in $(grouped "$plain"); do
    [[ $text == *"$group"* ]] || fail "the group $group of the code is not on the page"
done
[[ -z $(pdfimages -list once.pdf | tail -n +3) ]] || fail "there are pixels on the page"
# A stroke of 40 points is a path of 39 lines: nothing else on the sheet is one.
qpdf --qdf --object-streams=disable once.pdf plain.pdf
strokes=$(grep -a -E '^[-0-9. ]+ [ml]$' plain.pdf | awk '/m$/ {if (n == 39) found++; n = 0} /l$/ {n++} END {if (n == 39) found++; print found + 0}')
((strokes == 3)) || fail "three signatures should stand as lines on the page, and $strokes do"

"$program" check --seal "$(grouped "$plain")" once.setfolio >/dev/null || fail "the code does not fit its file"
"$program" check --seal "$digest" once.setfolio >/dev/null || fail "the digest does not fit its file"

signed twice again
mapfile -t both < <(seals twice.setfolio)
((${#both[@]} == 2)) || fail "there should be two seals"
[[ ${both[0]} == "$digest" ]] || fail "the first state is not the one that was signed first"
pdftoppm -r 300 -png twice.pdf again
[[ $(zbarimg --quiet --raw again-1.png) == *"${both[1]}"* ]] || fail "the second sheet's QR code is not the second seal's"
said=$("$program" check --seal "$(code "$digest")" twice.setfolio) && fail "a reopened seal passes"
[[ $said == *"reopens it"*"seals it anew"* ]] || fail "of the reopened seal is said: $said"
"$program" check --seal "$(code "${both[1]}")" twice.setfolio >/dev/null || fail "the second code does not fit"
"$program" check --seal "$(code "${both[1]}")" once.setfolio >/dev/null && fail "the second code fits the first file"
"$program" check --seal "$plain" "$root/resources/demo/herons-larks.setfolio" >/dev/null && fail "the code fits another match"
echo "the QR code is $digest, as sha256sum has it; both states of a reopened set are told apart"
