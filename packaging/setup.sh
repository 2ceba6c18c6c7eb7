# SPDX-FileCopyrightText: The Setfolio authors
# SPDX-License-Identifier: MIT
# Shared by packaging/run and tests/run: says what happens, installs what is missing, builds. Sourced, never started.

readonly root_folder=$(cd "$(dirname "${BASH_SOURCE[0]}")/.." && pwd)
readonly log_file=$root_folder/build/setup.log

say() { printf '== %s\n' "$*"; }

# fail SENTENCE: the one sentence that tells why it ends here.
fail() {
    printf '\nSetfolio: %s\n' "$*" >&2
    exit 1
}

# packages_of SECTION...: the packages listed under these sections of packaging/debian-packages.
packages_of() {
    local section
    for section in "$@"; do
        sed -n "/^\[$section\]/,/^\[/{/^[a-z0-9]/p}" "$root_folder/packaging/debian-packages"
    done
}

# missing_packages NAME...: those of them that are not installed.
missing_packages() {
    local name
    for name in "$@"; do
        [[ $(dpkg-query -W -f '${db:Status-Status}' "$name" 2>>"$log_file") == installed ]] || echo "$name"
    done
}

# as_root COMMAND...: runs it as root, by sudo where that is needed.
as_root() {
    if ((EUID == 0)); then
        "$@"
    else
        sudo "$@"
    fi
}

# show_progress: reads apt's status lines and shows how far it is: in place on a terminal, else every 20 %.
show_progress() {
    local kind percent text last=
    while IFS=: read -r kind _ percent _; do
        case $kind in
        dlstatus) text=fetching ;;
        pmstatus) text=installing ;;
        *) continue ;;
        esac
        percent=${percent%%.*}
        if [[ -t 1 ]]; then
            printf '\r   %-10s %3d %%' "$text" "$percent"
        elif [[ $text$((percent / 20)) != "$last" ]]; then
            last=$text$((percent / 20))
            printf '   %s %d %%\n' "$text" "$percent"
        fi
    done
    if [[ -t 1 ]]; then printf '\n'; fi
}

# apt_error: the first thing that apt said went wrong.
apt_error() { sed -n 's/^E: //p' "$log_file" | sed -n 1p; }

refresh_lists() {
    say "Asking the Debian archive what it has"
    as_root apt-get -q -o APT::Update::Error-Mode=any update >>"$log_file" 2>&1
}

# unknown_packages NAME...: those of them that apt's lists hold in no version.
unknown_packages() {
    local known
    known=$(LC_ALL=C apt-cache policy "$@" 2>>"$log_file" | awk '/^[^ ]/ { name = $1 } /^  Candidate: [^(]/ { print name }')
    printf '%s:\n' "$@" | grep -vxF -e "$known" | tr -d ':' | paste -sd ' ' || true
}

# The archive's lists may be only partly reachable and still hold all that is needed: the packages themselves decide.
install_missing() {
    local lists=whole unknown
    refresh_lists || lists=broken
    unknown=$(unknown_packages "$@")
    if [[ -n $unknown ]]; then
        [[ $lists == whole ]] ||
            fail "the Debian archive cannot be reached (apt says: $(apt_error)), so these packages cannot be installed: $*."
        fail "this system's archive has no package $unknown: Debian 12 or something newer is needed."
    fi
    say "Installing what is missing ($*) and what it depends on"
    # apt closes its status descriptor to the programs it starts, and sudo all above 2: so it is opened inside, beside stdout.
    as_root env DEBIAN_FRONTEND=noninteractive sh -c 'exec apt-get "$@" 3>&1 >&2' sh -q -y --no-install-recommends \
        -o APT::Status-Fd=3 -o Dpkg::Use-Pty=0 install "$@" 2>>"$log_file" | show_progress ||
        fail "apt could not install the missing packages ($(apt_error)): the whole story is in $log_file."
}

# need_packages SECTION...: installs what is missing of these sections, and does nothing when nothing is.
need_packages() {
    mkdir -p "$root_folder/build" && : >"$log_file" || fail "the folder $root_folder/build cannot be written to."
    if ! command -v apt-get >/dev/null || ! command -v dpkg-query >/dev/null; then
        fail "this is not a Debian system (there is no apt-get), so the packages in packaging/debian-packages cannot be installed here."
    fi
    say "Looking for what is missing on this machine"
    local missing
    mapfile -t missing < <(missing_packages $(packages_of "$@"))
    ((${#missing[@]})) || return 0
    if ((EUID != 0)) && ! command -v sudo >/dev/null; then
        fail "packages are missing and only root (or sudo, which is not here) can install them: ${missing[*]}."
    fi
    install_missing "${missing[@]}"
}

need_compiler() {
    local version
    version=$("${CXX:-c++}" -dumpfullversion -dumpversion 2>>"$log_file") || fail "there is no C++ compiler (${CXX:-c++}) on this machine."
    if [[ $("${CXX:-c++}" --version) == *clang* ]]; then
        ((${version%%.*} >= 14)) || fail "the compiler ${CXX:-c++} is clang $version, and clang 14 or newer is needed."
    else
        ((${version%%.*} >= 12)) || fail "the compiler ${CXX:-c++} is g++ $version, and g++ 12 or newer is needed."
    fi
}

# configure PRESET [CMAKE OPTION]...: with SETFOLIO_WERROR=ON in the surroundings a compiler's warning stops the build.
configure() {
    local preset=$1 launcher=()
    shift
    need_compiler
    if command -v ccache >/dev/null; then launcher=(-D CMAKE_CXX_COMPILER_LAUNCHER=ccache); fi
    (cd "$root_folder" && cmake --preset "$preset" -D SETFOLIO_WERROR="${SETFOLIO_WERROR:-OFF}" "${launcher[@]}" "$@") >>"$log_file" 2>&1 || {
        tail -n 20 "$log_file" >&2
        fail "the build in build/$preset could not be prepared (the lines above are the end of $log_file)."
    }
}

# build PRESET [TARGET]...: all targets when none is named.
build() {
    local preset=$1
    shift
    say "Building in build/$preset (some minutes the first time)"
    ninja -C "$root_folder/build/$preset" "$@" || fail "the build in build/$preset stopped at the error shown above."
}
