<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="fr_FR">
<context>
    <name>Copy</name>
    <message>
        <source>The match as it is, entry by entry, with its signatures: the codes of its seals, on paper too, hold for the copy.</source>
        <translation>Le match tel qu’il est, saisie par saisie, avec ses signatures&#xa0;: les codes de ses sceaux, sur papier aussi, valent pour la copie.</translation>
    </message>
    <message>
        <source>A match file of its own: the same numbers, order and times, without anybody&apos;s name and without the strokes of signatures. The codes of the seals on paper do not hold for it.</source>
        <translation>Un fichier de match à part&#xa0;: les mêmes numéros, le même ordre et les mêmes heures, sans le nom de personne et sans le tracé des signatures. Les codes des sceaux sur papier ne valent pas pour lui.</translation>
    </message>
    <message>
        <source>The list of entries for a spreadsheet: a line for each, those that were struck too.</source>
        <translation>La liste des saisies pour un tableur&#xa0;: une ligne pour chacune, y compris celles qui sont rayées.</translation>
    </message>
    <message>
        <source>What stands on the sheets, for another program.</source>
        <translation>Ce qui figure sur les feuilles, pour un autre programme.</translation>
    </message>
    <message>
        <source>A match file</source>
        <translation>Un fichier de match</translation>
    </message>
    <message>
        <source>A table (CSV)</source>
        <translation>Un tableau (CSV)</translation>
    </message>
    <message>
        <source>Data (JSON)</source>
        <translation>Des données (JSON)</translation>
    </message>
    <message>
        <source>Matches (*.setfolio)</source>
        <translation>Matchs (*.setfolio)</translation>
    </message>
    <message>
        <source>Text with columns (*.csv)</source>
        <translation>Texte en colonnes (*.csv)</translation>
    </message>
    <message>
        <source>Data (*.json)</source>
        <translation>Données (*.json)</translation>
    </message>
    <message>
        <source>Names that the match knows are taken out of remarks and reasons too; what else is written there stays: read it before you pass the copy on.</source>
        <translation>Les noms que le match connaît sont ôtés aussi des remarques et des motifs&#x202f;; ce qui y est écrit d’autre reste&#xa0;: relisez-le avant de transmettre la copie.</translation>
    </message>
</context>
<context>
    <name>Help</name>
    <message>
        <source>the %1 menu</source>
        <translation>le menu %1</translation>
    </message>
    <message>
        <source>A rally</source>
        <translation>Un échange</translation>
    </message>
    <message>
        <source>%1 when the serve is contacted, then %2 if the side on your left wins the rally, or %3 if the side on your right does. The winner alone is enough. %4 is a replay, %5 a re-serve, %6 a serve that did not come.</source>
        <translation>%1 quand le service est frappé, puis %2 si l’échange est gagné à votre gauche, ou %3 s’il l’est à votre droite. Le gagnant seul suffit. %4 pour un échange à rejouer, %5 pour un service à refaire, %6 pour un service qui n’est pas venu.</translation>
    </message>
    <message>
        <source>A wrong server</source>
        <translation>Un mauvais serveur</translation>
    </message>
    <message>
        <source>%1 as soon as another number than the one shown stands at the line; type that number. The bar says what to do before and after the contact.</source>
        <translation>%1 dès qu’un autre numéro que celui affiché est à la ligne&#x202f;; tapez ce numéro. La barre dit quoi faire avant et après la frappe.</translation>
    </message>
    <message>
        <source>A substitution</source>
        <translation>Un remplacement</translation>
    </message>
    <message>
        <source>%1 for the left side, %2 for the right side, then the number that comes in. The number that goes out is proposed. Enter records it; the next one begins with the same key.</source>
        <translation>%1 pour le côté gauche, %2 pour le côté droit, puis le numéro entrant. Le numéro sortant est proposé. Entrée pour inscrire&#x202f;; le suivant commence par la même touche.</translation>
    </message>
    <message>
        <source>A libero</source>
        <translation>Un libéro</translation>
    </message>
    <message>
        <source>%1 for the left side, %2 for the right side: the bar says what is possible now, for whom she comes in and who comes back.</source>
        <translation>%1 pour le côté gauche, %2 pour le côté droit&#xa0;: la barre dit ce qui est possible, à la place de qui il entre et qui revient.</translation>
    </message>
    <message>
        <source>A time-out</source>
        <translation>Un temps mort</translation>
    </message>
    <message>
        <source>%1 for the left side, %2 for the right side. Its card counts down and shows what to compare with the scoreboard. %3 puts the card away.</source>
        <translation>%1 pour le côté gauche, %2 pour le côté droit. Sa fiche décompte et montre ce qu’il faut comparer au tableau d’affichage. %3 range la fiche.</translation>
    </message>
    <message>
        <source>A card or a delay</source>
        <translation>Un carton ou un retard</translation>
    </message>
    <message>
        <source>%1 for the left side, %2 for the right side, then the number or the letter of who it is given to. The next step of the rulebook’s ladder is proposed with its consequence.</source>
        <translation>%1 pour le côté gauche, %2 pour le côté droit, puis le numéro ou la lettre de la personne. Le degré suivant prévu par le règlement est proposé avec sa conséquence.</translation>
    </message>
    <message>
        <source>A correction</source>
        <translation>Une correction</translation>
    </message>
    <message>
        <source>%1 takes back the last entry, %2 puts it in again. For an earlier one press %3, or click its mark on the sheet: strike it, change it, or put in what was missed before it. What that changes is shown before Enter records it.</source>
        <translation>%1 annule la dernière saisie, %2 la rétablit. Pour une plus ancienne, appuyez sur %3, ou cliquez sur son signe sur la feuille&#xa0;: rayez-la, changez-la, ou insérez ce qui a été oublié avant elle. Ce que cela change est montré avant qu’Entrée l’inscrive.</translation>
    </message>
    <message>
        <source>Before and after a set</source>
        <translation>Avant et après un set</translation>
    </message>
    <message>
        <source>%1 does what the amber card asks for: the toss, the line-ups, the start and the end of the set, the close of the match.</source>
        <translation>%1 fait ce que demande la fiche ambre&#xa0;: le tirage au sort, les formations, le début et la fin du set, la clôture du match.</translation>
    </message>
    <message>
        <source>Signing</source>
        <translation>Signer</translation>
    </message>
    <message>
        <source>In a bar</source>
        <translation>Dans une barre</translation>
    </message>
    <message>
        <source>The letters on its buttons choose, Tab goes on, Enter records, Esc closes it. Everything can be clicked or tapped too.</source>
        <translation>Les lettres de ses boutons choisissent, Tab passe à la suite, Entrée inscrit, Échap la ferme. Tout peut aussi se cliquer ou se toucher.</translation>
    </message>
    <message>
        <source>How things are entered</source>
        <translation>Comment saisir</translation>
    </message>
    <message>
        <source>All keys</source>
        <translation>Toutes les touches</translation>
    </message>
    <message>
        <source>%1 shows what the referee looks over and signs on the screen, of a set or of the match. %2 prints the sheets, also at any time during a match.</source>
        <translation>Avec %1, l’arbitre relit et signe à l’écran ce qui concerne un set ou le match. %2 imprime les feuilles, même à tout moment du match.</translation>
    </message>
    <message>
        <source>A copy for others</source>
        <translation>Une copie pour d’autres</translation>
    </message>
    <message>
        <source>%1 saves the match once more: as a match file, as a table for a spreadsheet or as data, with all names or with the numbers only. What is in it is said before it is saved.</source>
        <translation>%1 enregistre le match une fois de plus&#xa0;: en fichier de match, en tableau pour un tableur ou en données, avec tous les noms ou avec les numéros seuls. Ce qu’il contient est dit avant l’enregistrement.</translation>
    </message>
</context>
<context>
    <name>Inks</name>
    <message>
        <source>Black, blue and rust</source>
        <translation>Noir, bleu et rouille</translation>
    </message>
    <message>
        <source>Black, purple and ochre</source>
        <translation>Noir, violet et ocre</translation>
    </message>
    <message>
        <source>Black only</source>
        <translation>Noir seul</translation>
    </message>
    <message>
        <source>Shades of grey</source>
        <translation>Nuances de gris</translation>
    </message>
</context>
<context>
    <name>Practice</name>
    <message>
        <source>nothing</source>
        <translation>rien</translation>
    </message>
    <message>
        <source>an empty ring</source>
        <translation>un cercle vide</translation>
    </message>
    <message>
        <source>%1 in a ring</source>
        <translation>%1 dans un cercle</translation>
    </message>
    <message>
        <source>an empty triangle</source>
        <translation>un triangle vide</translation>
    </message>
    <message>
        <source>%1 in a triangle</source>
        <translation>%1 dans un triangle</translation>
    </message>
    <message>
        <source>%1 in a square</source>
        <translation>%1 dans un carré</translation>
    </message>
    <message>
        <source>%1, taken back</source>
        <translation>%1, retiré</translation>
    </message>
    <message>
        <source>slot %1</source>
        <translation>rang %1</translation>
    </message>
    <message>
        <source>points</source>
        <translation>points</translation>
    </message>
    <message>
        <source>substitutions</source>
        <translation>remplacements</translation>
    </message>
    <message>
        <source>time-outs</source>
        <translation>temps morts</translation>
    </message>
    <message>
        <source>libero replacements</source>
        <translation>remplacements de libéro</translation>
    </message>
    <message>
        <source>team</source>
        <translation>équipe</translation>
    </message>
    <message>
        <source>%1, %2: %3 at %4–%5</source>
        <translation>%1, %2&#xa0;: %3 à %4–%5</translation>
    </message>
    <message>
        <source>%1, slot %2, round %3</source>
        <translation>%1, rang %2, tour %3</translation>
    </message>
    <message>
        <source>%1, numbers in slot %2</source>
        <translation>%1, numéros au rang %2</translation>
    </message>
    <message>
        <source>%1, where the libero served</source>
        <translation>%1, rang où le libéro a servi</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Sanctions</source>
        <translation>Sanctions</translation>
    </message>
    <message>
        <source>Your sheet is as it should be: all %1 marks are right.</source>
        <translation>Votre feuille est comme il faut&#xa0;: les %1 signes sont justes.</translation>
    </message>
    <message>
        <source>%1 of %2 marks are right.</source>
        <translation>%1 signes justes sur %2.</translation>
    </message>
    <message>
        <source>The first line is where the two sheets part; what comes after may only follow from it.</source>
        <translation>La première ligne est l’endroit où les deux feuilles divergent&#x202f;; la suite peut n’en être que la conséquence.</translation>
    </message>
    <message>
        <source>The coach of %1 hands in a line-up.</source>
        <translation>L’entraîneur de %1 remet une feuille de position.</translation>
    </message>
    <message>
        <source>The match is over.</source>
        <translation>Le match est terminé.</translation>
    </message>
    <message>
        <source>%1 cannot play on.</source>
        <translation>%1 ne peut pas continuer.</translation>
    </message>
    <message>
        <source>Play is suspended.</source>
        <translation>Le jeu est interrompu.</translation>
    </message>
    <message>
        <source>Play is resumed.</source>
        <translation>Le jeu reprend.</translation>
    </message>
    <message>
        <source>%1 by the clock on the wall: the first referee whistles, the set begins.</source>
        <translation>%1 à l’horloge murale&#xa0;: le premier arbitre siffle, le set commence.</translation>
    </message>
    <message>
        <source>The second referee confirms that the set is over. The clock says %1.</source>
        <translation>Le second arbitre confirme que le set est terminé. L’horloge indique %1.</translation>
    </message>
    <message>
        <source>The teams change sides.</source>
        <translation>Les équipes changent de terrain.</translation>
    </message>
    <message>
        <source>Number %1 of %2 serves.</source>
        <translation>Le numéro %1 de %2 sert.</translation>
    </message>
    <message>
        <source>Number %1 goes to the service line.</source>
        <translation>Le numéro %1 va à la ligne de service.</translation>
    </message>
    <message>
        <source>The second referee rules: number %1 of %2 had no right to be on court.</source>
        <translation>Le second arbitre tranche&#xa0;: le numéro %1 de %2 n’avait pas le droit d’être sur le terrain.</translation>
    </message>
    <message>
        <source>Number %1 of %2 leaves the court, and nobody comes in for her.</source>
        <translation>Le numéro %1 de %2 quitte le terrain et personne n’entre à sa place.</translation>
    </message>
    <message>
        <source>%1 takes a time-out.</source>
        <translation>%1 prend un temps mort.</translation>
    </message>
    <message>
        <source>%1: libero %2 runs in, number %3 runs out.</source>
        <translation>%1&#xa0;: le libéro %2 entre en courant, le numéro %3 sort.</translation>
    </message>
    <message>
        <source>%1: libero %2 runs out, and the player she stood in for comes back.</source>
        <translation>%1&#xa0;: le libéro %2 sort en courant, et le joueur qu’il remplaçait revient.</translation>
    </message>
    <message>
        <source>%1: libero %2 runs in, libero %3 runs out.</source>
        <translation>%1&#xa0;: le libéro %2 entre en courant, le libéro %3 sort.</translation>
    </message>
    <message>
        <source>A libero of %1 changes places after the whistle. The referee lets it pass, once.</source>
        <translation>Un libéro de %1 change de place après le coup de sifflet. L’arbitre laisse passer, une fois.</translation>
    </message>
    <message>
        <source>%1 names number %2 as its captain.</source>
        <translation>%1 désigne le numéro %2 comme capitaine.</translation>
    </message>
    <message>
        <source>%1 makes a request that is not granted: improper, the second referee says.</source>
        <translation>%1 fait une demande qui n’est pas accordée&#xa0;: non fondée, dit le second arbitre.</translation>
    </message>
    <message>
        <source>The first referee gives %1 a penalty point.</source>
        <translation>Le premier arbitre accorde un point de pénalité à %1.</translation>
    </message>
    <message>
        <source>The second referee asks for a remark: “%1”</source>
        <translation>Le second arbitre demande une remarque&#xa0;: «&#xa0;%1&#xa0;»</translation>
    </message>
    <message>
        <source>The referees open the set again.</source>
        <translation>Les arbitres rouvrent le set.</translation>
    </message>
    <message>
        <source>The referees confer and change their last call: that rally goes the other way.</source>
        <translation>Les arbitres se consultent et changent leur dernière décision&#xa0;: cet échange revient à l’autre équipe.</translation>
    </message>
    <message>
        <source>The referee&apos;s arm points to %1: they win the rally.</source>
        <translation>Le bras de l’arbitre désigne %1&#xa0;: l’échange est à eux.</translation>
    </message>
    <message>
        <source>The ball is down. The rally goes to %1.</source>
        <translation>Le ballon est au sol. L’échange revient à %1.</translation>
    </message>
    <message>
        <source>A long rally, and %1 wins it.</source>
        <translation>Un long échange, et %1 le gagne.</translation>
    </message>
    <message>
        <source>A ball rolls onto the court: the rally is replayed.</source>
        <translation>Un ballon roule sur le terrain&#xa0;: l’échange est à rejouer.</translation>
    </message>
    <message>
        <source>She catches her toss. The referee lets her serve again.</source>
        <translation>Le serveur rattrape son lancer. L’arbitre le laisse resservir.</translation>
    </message>
    <message>
        <source>The time to serve has run out, and nobody has hit the ball: it is a fault of %1.</source>
        <translation>Le temps pour servir est écoulé et personne n’a frappé le ballon&#xa0;: faute de %1.</translation>
    </message>
    <message>
        <source>The second referee rules: number %1 of %2 was not the one to serve. The point and the serve go to %3.</source>
        <translation>Le second arbitre tranche&#xa0;: ce n’était pas au numéro %1 de %2 de servir. Le point et le service reviennent à %3.</translation>
    </message>
    <message>
        <source>The points that she won at serve are taken back.</source>
        <translation>Les points gagnés à son service sont retirés.</translation>
    </message>
    <message>
        <source>%1 asks for a substitution: number %2 in, number %3 out.</source>
        <translation>%1 demande un remplacement&#xa0;: le numéro %2 entre, le numéro %3 sort.</translation>
    </message>
    <message>
        <source>%1 has a player hurt, number %3, and nobody left who may lawfully replace her: number %2 comes in.</source>
        <translation>%1 a un joueur blessé, le numéro %3, et plus personne pour le remplacer légalement&#xa0;: le numéro %2 entre.</translation>
    </message>
    <message>
        <source>%1: libero %2 goes to the service line.</source>
        <translation>%1&#xa0;: le libéro %2 va à la ligne de service.</translation>
    </message>
    <message>
        <source>%1: libero %2 leaves the service line.</source>
        <translation>%1&#xa0;: le libéro %2 quitte la ligne de service.</translation>
    </message>
    <message>
        <source>Libero %1 of %2 cannot play on.</source>
        <translation>Le libéro %1 de %2 ne peut pas continuer.</translation>
    </message>
    <message>
        <source>Libero %1 of %2 cannot play on; number %3 is libero from now on.</source>
        <translation>Le libéro %1 de %2 ne peut pas continuer&#x202f;; le numéro %3 est désormais libéro.</translation>
    </message>
    <message>
        <source>The first referee shows number %1 of %2 a card: %3.</source>
        <translation>Le premier arbitre montre un carton au numéro %1 de %2&#xa0;: %3.</translation>
    </message>
    <message>
        <source>The first referee shows a card to %2 (%1): %3.</source>
        <translation>Le premier arbitre montre un carton à %2 (%1)&#xa0;: %3.</translation>
    </message>
    <message>
        <source>%1 is slow to take the court. The first referee shows a card on the wrist: %2.</source>
        <translation>%1 tarde à revenir sur le terrain. Le premier arbitre montre un carton au poignet&#xa0;: %2.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>a court position and the number that stands there</comment>
        <translation>%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>A plain set</source>
        <translation>Un set simple</translation>
    </message>
    <message>
        <source>Substitutions</source>
        <translation>Remplacements</translation>
    </message>
    <message>
        <source>A libero who serves</source>
        <translation>Un libéro qui sert</translation>
    </message>
    <message>
        <source>A wrong server</source>
        <translation>Un mauvais serveur</translation>
    </message>
    <message>
        <source>Corrected calls and cards</source>
        <translation>Décisions corrigées et cartons</translation>
    </message>
    <message>
        <source>Serves, rallies and time-outs.</source>
        <translation>Services, échanges et temps morts.</translation>
    </message>
    <message>
        <source>Players come in to serve and go out again; a serve is taken again.</source>
        <translation>Des joueurs entrent pour servir et ressortent&#x202f;; un service est refait.</translation>
    </message>
    <message>
        <source>Liberos come and go and take one turn at serve; a rally is replayed.</source>
        <translation>Des libéros entrent, sortent et servent à un rang&#x202f;; un échange est rejoué.</translation>
    </message>
    <message>
        <source>Watch the numbers at the service line: one of them should not be there. A delay.</source>
        <translation>Surveillez les numéros à la ligne de service&#xa0;: l’un d’eux ne devrait pas y être. Un retard.</translation>
    </message>
    <message>
        <source>The referees change a call, twice; a coach is shown cards; liberos and substitutions.</source>
        <translation>Les arbitres changent une décision, deux fois&#x202f;; un entraîneur reçoit des cartons&#x202f;; libéros et remplacements.</translation>
    </message>
    <message>
        <source>%1 serves first. %2 stands on the left of the table.</source>
        <translation>%1 sert en premier. %2 est à gauche de la table.</translation>
    </message>
    <message>
        <source>%1 by court position: %2.</source>
        <translation>%1 par position sur le terrain&#xa0;: %2.</translation>
    </message>
    <message>
        <source>%1 loses a set that has ended.</source>
        <translation>%1 perd un set déjà terminé.</translation>
    </message>
</context>
<context>
    <name>Sanctions</name>
    <message>
        <source>coach</source>
        <translation>entraîneur</translation>
    </message>
    <message>
        <source>assistant coach</source>
        <translation>entraîneur adjoint</translation>
    </message>
    <message>
        <source>second assistant coach</source>
        <translation>second entraîneur adjoint</translation>
    </message>
    <message>
        <source>therapist</source>
        <translation>soigneur</translation>
    </message>
    <message>
        <source>doctor</source>
        <translation>médecin</translation>
    </message>
    <message>
        <source>bench</source>
        <translation>banc</translation>
    </message>
    <message>
        <source>warning</source>
        <translation>avertissement</translation>
    </message>
    <message>
        <source>penalty</source>
        <translation>pénalité</translation>
    </message>
    <message>
        <source>expulsion</source>
        <translation>expulsion</translation>
    </message>
    <message>
        <source>disqualification</source>
        <translation>disqualification</translation>
    </message>
    <message>
        <source>delay warning</source>
        <translation>avertissement pour retard</translation>
    </message>
    <message>
        <source>delay penalty</source>
        <translation>pénalité pour retard</translation>
    </message>
    <message>
        <source>improper</source>
        <translation>non fondée</translation>
    </message>
</context>
<context>
    <name>Sheet</name>
    <message>
        <source>Home</source>
        <translation>Domicile</translation>
    </message>
    <message>
        <source>Visitors</source>
        <translation>Visiteurs</translation>
    </message>
    <message>
        <source>Opening of the match</source>
        <translation>Ouverture du match</translation>
    </message>
    <message>
        <source>%1 roster</source>
        <translation>Effectif de %1</translation>
    </message>
    <message>
        <source>List of officials</source>
        <translation>Liste des officiels</translation>
    </message>
    <message>
        <source>Closing of the match</source>
        <translation>Clôture du match</translation>
    </message>
    <message>
        <source>%1 forfeits the set</source>
        <translation>%1 perd le set par forfait</translation>
    </message>
    <message>
        <source>%1 forfeits the match</source>
        <translation>%1 perd le match par forfait</translation>
    </message>
    <message>
        <source>Play suspended</source>
        <translation>Jeu interrompu</translation>
    </message>
    <message>
        <source>Play resumed as it stood</source>
        <translation>Jeu repris en l’état</translation>
    </message>
    <message>
        <source>Set cancelled, to be played again</source>
        <translation>Set annulé, à rejouer</translation>
    </message>
    <message>
        <source>Sides changed</source>
        <translation>Changement de terrain</translation>
    </message>
    <message>
        <source>%1 at the service line</source>
        <translation>%1 à la ligne de service</translation>
    </message>
    <message>
        <source>%1 wrong server %2</source>
        <translation>%1, mauvais serveur %2</translation>
    </message>
    <message>
        <source>%1 illegal substitution, %2 on court</source>
        <translation>%1, remplacement illégal, %2 sur le terrain</translation>
    </message>
    <message>
        <source>%1 illegal libero replacement, %2 on court</source>
        <translation>%1, remplacement illégal de libéro, %2 sur le terrain</translation>
    </message>
    <message>
        <source>%1 plays on without %2, place vacant</source>
        <translation>%1 continue sans le %2, place vacante</translation>
    </message>
    <message>
        <source>%1 libero %2 in for %3</source>
        <translation>%1, libéro %2 pour %3</translation>
    </message>
    <message>
        <source>%1 libero %2 out</source>
        <translation>%1, sortie du libéro %2</translation>
    </message>
    <message>
        <source>%1 libero %2 for libero %3</source>
        <translation>%1, libéro %2 pour libéro %3</translation>
    </message>
    <message>
        <source>%1 libero %2 cannot play on</source>
        <translation>%1, libéro %2 hors d’état de jouer</translation>
    </message>
    <message>
        <source>%1 libero is %2 in place of %3</source>
        <translation>%1, libéro %2 à la place de %3</translation>
    </message>
    <message>
        <source>%1 late libero replacement let pass</source>
        <translation>%1, remplacement tardif de libéro toléré</translation>
    </message>
    <message>
        <source>%1 captain is %2</source>
        <translation>%1, capitaine %2</translation>
    </message>
    <message>
        <source>%1 %2, %3</source>
        <translation>%1 %2, %3</translation>
    </message>
    <message>
        <source>%1 improper request</source>
        <translation>%1, demande non fondée</translation>
    </message>
    <message>
        <source>Compared with the scoreboard: %1</source>
        <translation>Comparé au tableau d’affichage&#xa0;: %1</translation>
    </message>
    <message>
        <source>Toss</source>
        <translation>Tirage au sort</translation>
    </message>
    <message>
        <source>%1 line-up</source>
        <translation>Formation de %1</translation>
    </message>
    <message>
        <source>Start of the set</source>
        <translation>Début du set</translation>
    </message>
    <message>
        <source>End of the set</source>
        <translation>Fin du set</translation>
    </message>
    <message>
        <source>Serve contacted</source>
        <translation>Service frappé</translation>
    </message>
    <message>
        <source>Rally won by %1</source>
        <translation>Échange gagné par %1</translation>
    </message>
    <message>
        <source>Replay</source>
        <translation>Échange à rejouer</translation>
    </message>
    <message>
        <source>Re-serve</source>
        <translation>Service à refaire</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Rally lost without a serve</source>
        <translation>Échange perdu sans service</translation>
    </message>
    <message>
        <source>%1 exceptional substitution %2 for %3</source>
        <translation>%1, remplacement exceptionnel, %2 pour %3</translation>
    </message>
    <message>
        <source>%1 substitution %2 for %3</source>
        <translation>%1, remplacement, %2 pour %3</translation>
    </message>
    <message>
        <source>%1 time-out</source>
        <translation>%1, temps mort</translation>
    </message>
    <message>
        <source>%1 libero %2 to serve</source>
        <translation>%1, libéro %2 au service</translation>
    </message>
    <message>
        <source>%1 libero %2 no longer to serve</source>
        <translation>%1, libéro %2 n’est plus au service</translation>
    </message>
    <message>
        <source>Penalty point to %1</source>
        <translation>Point de pénalité à %1</translation>
    </message>
    <message>
        <source>Remark “%1”</source>
        <translation>Remarque «&#xa0;%1&#xa0;»</translation>
    </message>
    <message>
        <source>Correction</source>
        <translation>Correction</translation>
    </message>
    <message>
        <source>Signed under protest by the %1</source>
        <translation>Signé avec réclamation&#xa0;: %1</translation>
    </message>
    <message>
        <source>Signed by the %1</source>
        <translation>Signé&#xa0;: %1</translation>
    </message>
    <message>
        <source>Not signed by the %1</source>
        <translation>Non signé&#xa0;: %1</translation>
    </message>
    <message>
        <source>Seal</source>
        <translation>Sceau</translation>
    </message>
    <message>
        <source>Reopened by %1</source>
        <translation>Rouvert par %1</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 sur %2</translation>
    </message>
    <message>
        <source>At %1–%2: %3</source>
        <translation>À %1–%2&#xa0;: %3</translation>
    </message>
    <message>
        <source>%1 struck</source>
        <translation>%1 (rayé)</translation>
    </message>
    <message>
        <source>Rally %1: %2</source>
        <translation>Échange %1&#xa0;: %2</translation>
    </message>
    <message>
        <source>%1 on the referee’s word</source>
        <translation>%1 (décision de l’arbitre)</translation>
    </message>
    <message>
        <source>%1 put in later</source>
        <translation>%1 (ajouté après coup)</translation>
    </message>
    <message>
        <source>%1 wrong server, %2 for %3</source>
        <translation>%1, mauvais serveur, %2 pour %3</translation>
    </message>
    <message>
        <source>%1 wrong server, %2</source>
        <translation>%1, mauvais serveur, %2</translation>
    </message>
    <message>
        <source>%1; points taken back: %2</source>
        <translation>%1&#x202f;; points retirés&#xa0;: %2</translation>
    </message>
    <message>
        <source>%1; the seal %2 is void</source>
        <translation>%1&#x202f;; le sceau %2 est nul</translation>
    </message>
    <message>
        <source>improper request</source>
        <translation>demande non fondée</translation>
    </message>
    <message>
        <source>Sanction at %1: %2</source>
        <translation>Sanction à %1&#xa0;: %2</translation>
    </message>
    <message>
        <source>Libero tracking sheet</source>
        <translation>Feuille de contrôle du libéro</translation>
    </message>
    <message>
        <source>Match</source>
        <translation>Match</translation>
    </message>
    <message>
        <source>List of entries</source>
        <translation>Liste des saisies</translation>
    </message>
    <message>
        <source>Line-up slip</source>
        <translation>Feuille de position</translation>
    </message>
    <message>
        <source>Hand-over</source>
        <translation>Passation</translation>
    </message>
    <message>
        <source>Coach’s page</source>
        <translation>Page de l’entraîneur</translation>
    </message>
    <message>
        <source>MATCH</source>
        <translation>MATCH</translation>
    </message>
    <message>
        <source>Rulebook</source>
        <translation>Règlement</translation>
    </message>
    <message>
        <source>Coach</source>
        <translation>Entraîneur</translation>
    </message>
    <message>
        <source>Captain</source>
        <translation>Capitaine</translation>
    </message>
    <message>
        <source>Liberos</source>
        <translation>Libéros</translation>
    </message>
    <message>
        <source>No.</source>
        <translation>N°</translation>
    </message>
    <message>
        <source>Player</source>
        <translation>Joueur</translation>
    </message>
    <message>
        <source>Result by set</source>
        <translation>Résultat par set</translation>
    </message>
    <message>
        <source>Total</source>
        <translation>Total</translation>
    </message>
    <message>
        <source>Role</source>
        <translation>Fonction</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nom</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Objet</translation>
    </message>
    <message>
        <source>Reason</source>
        <translation>Motif</translation>
    </message>
    <message>
        <source>Remarks and corrections by set</source>
        <translation>Remarques et corrections par set</translation>
    </message>
    <message>
        <source>Signatures and seal of the match</source>
        <translation>Signatures et sceau du match</translation>
    </message>
    <message>
        <source>Seal of this record</source>
        <translation>Sceau de ce document</translation>
    </message>
    <message>
        <source>Serves</source>
        <translation>Services</translation>
    </message>
    <message>
        <source>each number with the score, own–opponents</source>
        <translation>chaque numéro avec le score, équipe–adversaire</translation>
    </message>
    <message>
        <source>no replacements were recorded: to be filled in by pen</source>
        <translation>aucun remplacement de libéro inscrit&#xa0;: à remplir au stylo</translation>
    </message>
    <message>
        <source>How it is written</source>
        <translation>Comment c’est écrit</translation>
    </message>
    <message>
        <source>libero, in the place of the number before her</source>
        <translation>libéro, à la place du numéro qui précède</translation>
    </message>
    <message>
        <source>player who comes back or in; those who left are struck</source>
        <translation>joueur qui revient ou entre&#x202f;; ceux qui sont sortis sont rayés</translation>
    </message>
    <message>
        <source>score at that moment, own–opponents</source>
        <translation>score à ce moment, équipe–adversaire</translation>
    </message>
    <message>
        <source>the one slot the libero has served in</source>
        <translation>le seul rang où le libéro a servi</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Heure</translation>
    </message>
    <message>
        <source>Rally</source>
        <translation>Éch.</translation>
    </message>
    <message>
        <source>Entry</source>
        <translation>Saisie</translation>
    </message>
    <message>
        <source>As you see them on court</source>
        <translation>Comme on les voit sur le terrain</translation>
    </message>
    <message>
        <source>net</source>
        <translation>filet</translation>
    </message>
    <message>
        <source>Coach’s signature</source>
        <translation>Signature de l’entraîneur</translation>
    </message>
    <message>
        <source>Write one number into each place. Hand the slip to the second referee before the set.</source>
        <translation>Écrivez un numéro dans chaque case. Remettez la feuille au second arbitre avant le set.</translation>
    </message>
    <message>
        <source>Team</source>
        <translation>Équipe</translation>
    </message>
    <message>
        <source>Roster</source>
        <translation>Effectif</translation>
    </message>
    <message>
        <source>As it stands at</source>
        <translation>Situation à</translation>
    </message>
    <message>
        <source>Serves next</source>
        <translation>Prochain service</translation>
    </message>
    <message>
        <source>If the serve is lost, next</source>
        <translation>Si le service est perdu, ensuite</translation>
    </message>
    <message>
        <source>On court now</source>
        <translation>Sur le terrain</translation>
    </message>
    <message>
        <source>Have stood here, in order</source>
        <translation>Passés à ce rang, dans l’ordre</translation>
    </message>
    <message>
        <source>Substitutions left</source>
        <translation>Remplacements restants</translation>
    </message>
    <message>
        <source>Time-outs left</source>
        <translation>Temps morts restants</translation>
    </message>
    <message>
        <source>Sets won</source>
        <translation>Sets gagnés</translation>
    </message>
    <message>
        <source>Slot in 1</source>
        <translation>Rang en 1</translation>
    </message>
    <message>
        <source>Side-out</source>
        <translation>Side-out</translation>
    </message>
    <message>
        <source>No rally</source>
        <translation>Autres</translation>
    </message>
    <message>
        <source>+/−</source>
        <translation>+/−</translation>
    </message>
    <message>
        <source>Servers</source>
        <translation>Serveurs</translation>
    </message>
    <message>
        <source>Terms</source>
        <translation>Passages</translation>
    </message>
    <message>
        <source>Won</source>
        <translation>Gagnés</translation>
    </message>
    <message>
        <source>Lost</source>
        <translation>Perdus</translation>
    </message>
    <message>
        <source>Longest</source>
        <translation>Max.</translation>
    </message>
    <message>
        <source>Longest runs</source>
        <translation>Plus longues séries</translation>
    </message>
    <message>
        <source>Points</source>
        <translation>Points</translation>
    </message>
    <message>
        <source>Score, home–visitors</source>
        <translation>Score, domicile–visiteurs</translation>
    </message>
    <message>
        <source>The score as it went</source>
        <translation>Marche du score</translation>
    </message>
    <message>
        <source>heavy line: home, fine line: visitors; strokes are substitutions, triangles time-outs: home above, visitors below</source>
        <translation>trait épais&#xa0;: domicile, trait fin&#xa0;: visiteurs&#x202f;; les tirets sont des remplacements, les triangles des temps morts&#xa0;: domicile en haut, visiteurs en bas</translation>
    </message>
    <message>
        <source>Substitutions and time-outs, score home–visitors</source>
        <translation>Remplacements et temps morts, score domicile–visiteurs</translation>
    </message>
    <message>
        <source>%1, continued</source>
        <translation>%1, suite</translation>
    </message>
    <message>
        <source>Captain %1</source>
        <translation>Capitaine %1</translation>
    </message>
    <message>
        <source>Coach %1</source>
        <translation>Entraîneur %1</translation>
    </message>
    <message>
        <source>%1 did not play: all sets are given</source>
        <translation>%1 n’a pas joué&#xa0;: tous les sets sont attribués</translation>
    </message>
    <message>
        <source>%1 could not play on: the points needed are given</source>
        <translation>%1 n’a pas pu continuer&#xa0;: les points nécessaires sont attribués</translation>
    </message>
    <message>
        <source>%1. %2</source>
        <translation>%1. %2</translation>
    </message>
    <message>
        <source>put in before no. %1</source>
        <translation>insérée avant le n°&#xa0;%1</translation>
    </message>
    <message>
        <source>put in the place of no. %1</source>
        <translation>mise à la place du n°&#xa0;%1</translation>
    </message>
    <message>
        <source>reason: %1</source>
        <translation>motif&#xa0;: %1</translation>
    </message>
    <message>
        <source>stands on the referee’s word</source>
        <translation>maintenue par décision de l’arbitre</translation>
    </message>
    <message>
        <source>stands on the referee’s word: %1</source>
        <translation>maintenue par décision de l’arbitre&#xa0;: %1</translation>
    </message>
    <message>
        <source>struck by no. %1</source>
        <translation>rayée par le n°&#xa0;%1</translation>
    </message>
    <message>
        <source>as it stands at %1, %2</source>
        <translation>situation à %1, %2</translation>
    </message>
    <message>
        <source>%1, slot %2</source>
        <translation>%1, rang %2</translation>
    </message>
    <message>
        <source>Order of service, %1: who serves next comes first</source>
        <translation>Ordre au service, %1&#xa0;: le prochain serveur en tête</translation>
    </message>
    <message>
        <source>serve +</source>
        <translation>serv. +</translation>
    </message>
    <message>
        <source>serve −</source>
        <translation>serv. −</translation>
    </message>
    <message>
        <source>rec. +</source>
        <translation>réc. +</translation>
    </message>
    <message>
        <source>rec. −</source>
        <translation>réc. −</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1&#xa0;%</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 à %2</translation>
    </message>
    <message>
        <source>%1 in for %2</source>
        <translation>%1 pour %2</translation>
    </message>
    <message>
        <source>SET</source>
        <translation>SET</translation>
    </message>
    <message>
        <source>Venue</source>
        <translation>Lieu</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Date</translation>
    </message>
    <message>
        <source>Scheduled</source>
        <translation>Prévu</translation>
    </message>
    <message>
        <source>Started</source>
        <translation>Début</translation>
    </message>
    <message>
        <source>Finished</source>
        <translation>Fin</translation>
    </message>
    <message>
        <source>Format</source>
        <translation>Formule</translation>
    </message>
    <message>
        <source>First serve</source>
        <translation>1er service</translation>
    </message>
    <message>
        <source>Court, seen from the scorer</source>
        <translation>Terrain, vu du marqueur</translation>
    </message>
    <message>
        <source>Libero</source>
        <translation>Libéro</translation>
    </message>
    <message>
        <source>Time-outs (own–opponents)</source>
        <translation>Temps morts (équipe–adv.)</translation>
    </message>
    <message>
        <source>Slot</source>
        <translation>Rang</translation>
    </message>
    <message>
        <source>Starter</source>
        <translation>Départ</translation>
    </message>
    <message>
        <source>Then</source>
        <translation>Ensuite</translation>
    </message>
    <message>
        <source>opp.</source>
        <translation>adv.</translation>
    </message>
    <message>
        <source>points</source>
        <translation>points</translation>
    </message>
    <message>
        <source>Sanctions</source>
        <translation>Sanctions</translation>
    </message>
    <message>
        <source>Card</source>
        <translation>Carton</translation>
    </message>
    <message>
        <source>Who</source>
        <translation>Qui</translation>
    </message>
    <message>
        <source>Set</source>
        <translation>Set</translation>
    </message>
    <message>
        <source>Score</source>
        <translation>Score</translation>
    </message>
    <message>
        <source>Remarks and corrections</source>
        <translation>Remarques et corrections</translation>
    </message>
    <message>
        <source>What happened, what was changed</source>
        <translation>Ce qui s’est passé, ce qui a été changé</translation>
    </message>
    <message>
        <source>Remarks and corrections, continued</source>
        <translation>Remarques et corrections, suite</translation>
    </message>
    <message>
        <source>Officials</source>
        <translation>Officiels</translation>
    </message>
    <message>
        <source>Signature, in ink</source>
        <translation>Signature, à l’encre</translation>
    </message>
    <message>
        <source>Line judges</source>
        <translation>Juges de ligne</translation>
    </message>
    <message>
        <source>Result</source>
        <translation>Résultat</translation>
    </message>
    <message>
        <source>Winner</source>
        <translation>Vainqueur</translation>
    </message>
    <message>
        <source>Winner, to be confirmed</source>
        <translation>Vainqueur, à confirmer</translation>
    </message>
    <message>
        <source>Set cancelled, played again</source>
        <translation>Set annulé, rejoué</translation>
    </message>
    <message>
        <source>Loser</source>
        <translation>Perdant</translation>
    </message>
    <message>
        <source>Duration</source>
        <translation>Durée</translation>
    </message>
    <message>
        <source>point that won the serve</source>
        <translation>point gagnant le service</translation>
    </message>
    <message>
        <source>point on own serve</source>
        <translation>point sur son service</translation>
    </message>
    <message>
        <source>rally lost</source>
        <translation>échange perdu</translation>
    </message>
    <message>
        <source>serve repeated</source>
        <translation>service refait</translation>
    </message>
    <message>
        <source>libero serves</source>
        <translation>libéro au service</translation>
    </message>
    <message>
        <source>without a serve</source>
        <translation>sans service</translation>
    </message>
    <message>
        <source>penalty point</source>
        <translation>point de pénalité</translation>
    </message>
    <message>
        <source>struck, with its remark</source>
        <translation>rayé, avec sa remarque</translation>
    </message>
    <message>
        <source>points taken back</source>
        <translation>points retirés</translation>
    </message>
    <message>
        <source>10 in for 7</source>
        <translation>10 pour 7</translation>
    </message>
    <message>
        <source>opponents’ substitution</source>
        <translation>remplacement adverse</translation>
    </message>
    <message>
        <source>time-out</source>
        <translation>temps mort</translation>
    </message>
    <message>
        <source>opponents’ time-out</source>
        <translation>temps mort adverse</translation>
    </message>
    <message>
        <source>10 in for 7 at 12–9</source>
        <translation>10 pour 7 à 12–9</translation>
    </message>
    <message>
        <source>exit score</source>
        <translation>score de sortie</translation>
    </message>
    <message>
        <source>in a slot: captain</source>
        <translation>dans un rang&#xa0;: capitaine</translation>
    </message>
    <message>
        <source>won on opponents’ serve</source>
        <translation>gagné sur service adverse</translation>
    </message>
    <message>
        <source>point won</source>
        <translation>point gagné</translation>
    </message>
    <message>
        <source>end of the set</source>
        <translation>fin du set</translation>
    </message>
    <message>
        <source>passed over</source>
        <translation>tour passé</translation>
    </message>
    <message>
        <source>rounds %1: fine</source>
        <translation>tours %1&#xa0;: fin</translation>
    </message>
    <message>
        <source>%1: heavy</source>
        <translation>%1&#xa0;: épais</translation>
    </message>
    <message>
        <source>%1: broken</source>
        <translation>%1&#xa0;: tirets</translation>
    </message>
    <message>
        <source>%1: long dashes</source>
        <translation>%1&#xa0;: longs tirets</translation>
    </message>
    <message>
        <source>ddd d MMM yyyy</source>
        <extracomment>A date as QLocale writes it: ddd day of the week, d day, MMM month, yyyy year.</extracomment>
        <translation>ddd d MMM yyyy</translation>
    </message>
    <message>
        <source>One set</source>
        <translation>Un set</translation>
    </message>
    <message>
        <source>Best of %1</source>
        <translation>%1 sets max.</translation>
    </message>
    <message>
        <source>Match %1</source>
        <translation>Match %1</translation>
    </message>
    <message>
        <source>page %1 of %2</source>
        <translation>page %1 sur %2</translation>
    </message>
    <message>
        <source>serves first</source>
        <translation>sert en premier</translation>
    </message>
    <message>
        <source>receives first</source>
        <translation>reçoit en premier</translation>
    </message>
    <message>
        <source>Round %1, continued</source>
        <translation>Tour %1, suite</translation>
    </message>
    <message>
        <source>Round %1</source>
        <translation>Tour %1</translation>
    </message>
    <message>
        <source>Substitutions · %1 of %2</source>
        <translation>Remplacements · %1 sur %2</translation>
    </message>
    <message>
        <source>First referee</source>
        <translation>Premier arbitre</translation>
    </message>
    <message>
        <source>Second referee</source>
        <translation>Second arbitre</translation>
    </message>
    <message>
        <source>Scorer</source>
        <translation>Marqueur</translation>
    </message>
    <message>
        <source>Assistant scorer (libero)</source>
        <translation>Marqueur assistant</translation>
    </message>
    <message>
        <source>Timer</source>
        <translation>Chronométreur</translation>
    </message>
    <message>
        <source>Line judge</source>
        <translation>Juge de ligne</translation>
    </message>
    <message>
        <source>%1 min</source>
        <translation>%1&#xa0;min</translation>
    </message>
    <message>
        <source>continued on page %1</source>
        <translation>suite à la page %1</translation>
    </message>
    <message>
        <source>and %1 more</source>
        <translation>et %1 de plus</translation>
    </message>
    <message>
        <source>en</source>
        <comment>the language that the sheet&apos;s words are in, by its BCP 47 tag</comment>
        <translation>fr</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <comment>a signer&apos;s role and the team</comment>
        <translation>%1 de %2</translation>
    </message>
    <message>
        <source>In full: %1</source>
        <translation>En entier&#xa0;: %1</translation>
    </message>
    <message>
        <source>%1 slot %2, after the starter: %3; then as in the slot.</source>
        <translation>%1, rang %2, après le joueur de départ&#xa0;: %3&#x202f;; puis comme au rang.</translation>
    </message>
    <message>
        <source>%1 forfeits set %2, points kept: %3</source>
        <translation>%1 perd le set %2 par forfait, points gardés&#xa0;: %3</translation>
    </message>
    <message>
        <source>%1 forfeits set %2, all points kept</source>
        <translation>%1 perd le set %2 par forfait, garde tous ses points</translation>
    </message>
    <message>
        <source>Set cancelled: match won before</source>
        <translation>Set annulé&#xa0;: match déjà gagné</translation>
    </message>
</context>
<context>
    <name>Table</name>
    <message>
        <source>Who</source>
        <translation>Qui</translation>
    </message>
    <message>
        <source>What for</source>
        <translation>Motif</translation>
    </message>
    <message>
        <source>Card or delay %1</source>
        <translation>Carton ou retard %1</translation>
    </message>
    <message>
        <source>Misconduct</source>
        <translation>Conduite incorrecte</translation>
    </message>
    <message>
        <source>Delay</source>
        <translation>Retard</translation>
    </message>
    <message>
        <source>Improper request</source>
        <translation>Demande non fondée</translation>
    </message>
    <message>
        <source>Late libero</source>
        <translation>Libéro tardif</translation>
    </message>
    <message>
        <source>let pass</source>
        <translation>toléré</translation>
    </message>
    <message>
        <source>Who? A number, or someone of the bench.</source>
        <translation>Qui&#x202f;? Un numéro, ou une personne du banc.</translation>
    </message>
    <message>
        <source>Refused and written down; the next one is a delay.</source>
        <translation>Refusée et notée&#x202f;; la prochaine sera un retard.</translation>
    </message>
    <message>
        <source>The rulebook makes this a delay.</source>
        <translation>Pour le règlement, c’est un retard.</translation>
    </message>
    <message>
        <source>Let pass and written down; the next late one is a delay.</source>
        <translation>Toléré et noté&#x202f;; le prochain remplacement tardif sera un retard.</translation>
    </message>
    <message>
        <source>Server?</source>
        <translation>Qui&#x202f;?</translation>
    </message>
    <message>
        <source>Space</source>
        <translation>Espace</translation>
    </message>
    <message>
        <source>Backspace</source>
        <translation>Ret. arr.</translation>
    </message>
    <message>
        <source>Enter</source>
        <translation>Entrée</translation>
    </message>
    <message>
        <source>Home</source>
        <translation>Début</translation>
    </message>
    <message>
        <source>Page up</source>
        <translation>Page préc.</translation>
    </message>
    <message>
        <source>Page down</source>
        <translation>Page suiv.</translation>
    </message>
    <message>
        <source>Next step</source>
        <translation>Étape suivante</translation>
    </message>
    <message>
        <source>Left side wins the rally</source>
        <translation>Échange gagné à gauche</translation>
    </message>
    <message>
        <source>Right side wins the rally</source>
        <translation>Échange gagné à droite</translation>
    </message>
    <message>
        <source>Serve contacted</source>
        <translation>Service frappé</translation>
    </message>
    <message>
        <source>Replay</source>
        <translation>Rejouer</translation>
    </message>
    <message>
        <source>Re-serve</source>
        <translation>Resservir</translation>
    </message>
    <message>
        <source>No serve</source>
        <translation>Sans service</translation>
    </message>
    <message>
        <source>Substitution, left side</source>
        <translation>Remplacement, côté gauche</translation>
    </message>
    <message>
        <source>Time-out, left side</source>
        <translation>Temps mort, côté gauche</translation>
    </message>
    <message>
        <source>Libero, left side</source>
        <translation>Libéro, côté gauche</translation>
    </message>
    <message>
        <source>Substitution, right side</source>
        <translation>Remplacement, côté droit</translation>
    </message>
    <message>
        <source>Time-out, right side</source>
        <translation>Temps mort, côté droit</translation>
    </message>
    <message>
        <source>Libero, right side</source>
        <translation>Libéro, côté droit</translation>
    </message>
    <message>
        <source>Who is at the line?</source>
        <translation>Qui est à la ligne&#x202f;?</translation>
    </message>
    <message>
        <source>Card or delay, left side</source>
        <translation>Carton ou retard, côté gauche</translation>
    </message>
    <message>
        <source>Card or delay, right side</source>
        <translation>Carton ou retard, côté droit</translation>
    </message>
    <message>
        <source>Penalty point to the left side…</source>
        <translation>Point de pénalité au côté gauche…</translation>
    </message>
    <message>
        <source>Penalty point to the right side…</source>
        <translation>Point de pénalité au côté droit…</translation>
    </message>
    <message>
        <source>Playing captain, left side…</source>
        <translation>Capitaine en jeu, côté gauche…</translation>
    </message>
    <message>
        <source>Playing captain, right side…</source>
        <translation>Capitaine en jeu, côté droit…</translation>
    </message>
    <message>
        <source>New libero, left side…</source>
        <translation>Nouveau libéro, côté gauche…</translation>
    </message>
    <message>
        <source>New libero, right side…</source>
        <translation>Nouveau libéro, côté droit…</translation>
    </message>
    <message>
        <source>Sides changed</source>
        <translation>Changement de terrain</translation>
    </message>
    <message>
        <source>Compared with the scoreboard: agrees</source>
        <translation>Comparé au tableau d’affichage&#xa0;: conforme</translation>
    </message>
    <message>
        <source>Compared with the scoreboard: differs…</source>
        <translation>Comparé au tableau d’affichage&#xa0;: écart…</translation>
    </message>
    <message>
        <source>Suspend play…</source>
        <translation>Interrompre le jeu…</translation>
    </message>
    <message>
        <source>Forfeit…</source>
        <translation>Forfait…</translation>
    </message>
    <message>
        <source>Remark…</source>
        <translation>Remarque…</translation>
    </message>
    <message>
        <source>Correct…</source>
        <translation>Corriger…</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Annuler</translation>
    </message>
    <message>
        <source>Redo</source>
        <translation>Rétablir</translation>
    </message>
    <message>
        <source>Go to live</source>
        <translation>Au direct</translation>
    </message>
    <message>
        <source>Page back</source>
        <translation>Page précédente</translation>
    </message>
    <message>
        <source>Page on</source>
        <translation>Page suivante</translation>
    </message>
    <message>
        <source>Live band</source>
        <translation>En direct</translation>
    </message>
    <message>
        <source>Whole page</source>
        <translation>Page entière</translation>
    </message>
    <message>
        <source>Page width</source>
        <translation>Largeur</translation>
    </message>
    <message>
        <source>Larger</source>
        <translation>Plus grand</translation>
    </message>
    <message>
        <source>Smaller</source>
        <translation>Plus petit</translation>
    </message>
    <message>
        <source>New match…</source>
        <translation>Nouveau match…</translation>
    </message>
    <message>
        <source>Open…</source>
        <translation>Ouvrir…</translation>
    </message>
    <message>
        <source>Toss…</source>
        <translation>Tirage au sort…</translation>
    </message>
    <message>
        <source>Line-up, left side…</source>
        <translation>Formation, côté gauche…</translation>
    </message>
    <message>
        <source>Line-up, right side…</source>
        <translation>Formation, côté droit…</translation>
    </message>
    <message>
        <source>Roster, left side…</source>
        <translation>Effectif, côté gauche…</translation>
    </message>
    <message>
        <source>Roster, right side…</source>
        <translation>Effectif, côté droit…</translation>
    </message>
    <message>
        <source>Print…</source>
        <translation>Imprimer…</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Fermer</translation>
    </message>
    <message>
        <source>Against the rulebook: the referee decides</source>
        <translation>Contraire au règlement&#xa0;: l’arbitre décide</translation>
    </message>
    <message>
        <source>The referee allows it: why</source>
        <translation>L’arbitre l’autorise&#xa0;: motif</translation>
    </message>
    <message>
        <source>Allowed</source>
        <translation>Autorisé</translation>
    </message>
    <message>
        <source>%1 has named no libero for this set: its line-up says who serves.</source>
        <translation>%1 n’a désigné aucun libéro pour ce set&#xa0;: sa formation indique qui sert.</translation>
    </message>
    <message>
        <source>Playing captain of %1</source>
        <translation>Capitaine en jeu de %1</translation>
    </message>
    <message>
        <source>Who is captain on court from now on?</source>
        <translation>Qui est désormais capitaine sur le terrain&#x202f;?</translation>
    </message>
    <message>
        <source>Suspend play</source>
        <translation>Interrompre le jeu</translation>
    </message>
    <message>
        <source>Nothing is played until the first referee resumes play.</source>
        <translation>On ne joue plus tant que le premier arbitre n’a pas fait reprendre le jeu.</translation>
    </message>
    <message>
        <source>Why is play broken off?</source>
        <translation>Pourquoi le jeu est-il interrompu&#x202f;?</translation>
    </message>
    <message>
        <source>Suspend</source>
        <translation>Interrompre</translation>
    </message>
    <message>
        <source>Compared with the scoreboard</source>
        <translation>Comparé au tableau d’affichage</translation>
    </message>
    <message>
        <source>The sheet stands until the referees have settled it.</source>
        <translation>La feuille fait foi tant que les arbitres n’ont pas tranché.</translation>
    </message>
    <message>
        <source>What differs</source>
        <translation>Ce qui diffère</translation>
    </message>
    <message>
        <source>Record</source>
        <translation>Inscrire</translation>
    </message>
    <message>
        <source>Penalty point to %1</source>
        <translation>Point de pénalité à %1</translation>
    </message>
    <message>
        <source>A point without a rally, on the referee&apos;s word.</source>
        <translation>Un point sans échange, sur décision de l’arbitre.</translation>
    </message>
    <message>
        <source>Remark</source>
        <translation>Remarque</translation>
    </message>
    <message>
        <source>It is written among the remarks of this set.</source>
        <translation>Elle figure parmi les remarques de ce set.</translation>
    </message>
    <message>
        <source>One sentence</source>
        <translation>Une phrase</translation>
    </message>
    <message>
        <source>Players on court</source>
        <translation>Joueurs sur le terrain</translation>
    </message>
    <message>
        <source>Left, by court position: %1. Right: %2.</source>
        <translation>À gauche, par position sur le terrain&#xa0;: %1. À droite&#xa0;: %2.</translation>
    </message>
    <message>
        <source>Sub</source>
        <translation>Rempl.</translation>
    </message>
    <message>
        <source>Time-out</source>
        <translation>T. mort</translation>
    </message>
    <message>
        <source>Libero</source>
        <translation>Libéro</translation>
    </message>
    <message>
        <source>Card</source>
        <translation>Carton</translation>
    </message>
    <message>
        <source>Not recorded.</source>
        <translation>Non inscrit.</translation>
    </message>
    <message>
        <source>Last entries</source>
        <translation>Dernières saisies</translation>
    </message>
    <message>
        <source>Close  Esc</source>
        <translation>Fermer  Échap</translation>
    </message>
    <message>
        <source>In for</source>
        <translation>Pour</translation>
    </message>
    <message>
        <source>Libero %1 · %2</source>
        <translation>Libéro %1 · %2</translation>
    </message>
    <message>
        <source>In</source>
        <translation>Entre</translation>
    </message>
    <message>
        <source>Out</source>
        <translation>Sort</translation>
    </message>
    <message>
        <source>Exchange</source>
        <translation>Permuter</translation>
    </message>
    <message>
        <source>the other libero</source>
        <translation>l’autre libéro</translation>
    </message>
    <message>
        <source>Serves no more</source>
        <translation>Ne sert plus</translation>
    </message>
    <message>
        <source>Serves</source>
        <translation>Sert</translation>
    </message>
    <message>
        <source>only the mark</source>
        <translation>le signe seul</translation>
    </message>
    <message>
        <source>Enter records.</source>
        <translation>Entrée pour inscrire.</translation>
    </message>
    <message>
        <source>Which libero?</source>
        <translation>Quel libéro&#x202f;?</translation>
    </message>
    <message>
        <source>Understood</source>
        <translation>Compris</translation>
    </message>
    <message>
        <source>%1 %2–%3 %4</source>
        <translation>%1 %2–%3 %4</translation>
    </message>
    <message>
        <source>The score stays %1.</source>
        <translation>Le score reste %1.</translation>
    </message>
    <message>
        <source>The score becomes %1.</source>
        <translation>Le score devient %1.</translation>
    </message>
    <message>
        <source>%1 serves next, not %2.</source>
        <translation>Prochain service&#xa0;: %1, et non %2.</translation>
    </message>
    <message>
        <source>The set is won by %1.</source>
        <translation>Le set est gagné par %1.</translation>
    </message>
    <message>
        <source>No later entry becomes questionable.</source>
        <translation>Aucune saisie suivante ne devient douteuse.</translation>
    </message>
    <message>
        <source>Later entries that become questionable: %1.</source>
        <translation>Saisies suivantes qui deviennent douteuses&#xa0;: %1.</translation>
    </message>
    <message>
        <source>The first is “%1”: %2</source>
        <translation>La première est «&#xa0;%1&#xa0;»&#xa0;: %2</translation>
    </message>
    <message>
        <source>Entries, the newest first</source>
        <translation>Saisies, la plus récente d’abord</translation>
    </message>
    <message>
        <source>Why, for the remarks</source>
        <translation>Motif, pour les remarques</translation>
    </message>
    <message>
        <source>Rally to %1</source>
        <translation>Échange à %1</translation>
    </message>
    <message>
        <source>Sub %1</source>
        <translation>Rempl. %1</translation>
    </message>
    <message>
        <source>Time-out %1</source>
        <translation>Temps mort %1</translation>
    </message>
    <message>
        <source>This entry is struck already: choose another one.</source>
        <translation>Cette saisie est déjà rayée&#xa0;: choisissez-en une autre.</translation>
    </message>
    <message>
        <source>Enter records the correction.</source>
        <translation>Entrée pour inscrire la correction.</translation>
    </message>
    <message>
        <source>Number in and number out, as it was.</source>
        <translation>Numéro entrant et numéro sortant, tels qu’ils étaient.</translation>
    </message>
    <message>
        <source>What was missed?</source>
        <translation>Qu’est-ce qui a été oublié&#x202f;?</translation>
    </message>
    <message>
        <source>Strike it</source>
        <translation>La rayer</translation>
    </message>
    <message>
        <source>Put in before it</source>
        <translation>Insérer avant</translation>
    </message>
    <message>
        <source>Other winner</source>
        <translation>Autre gagnant</translation>
    </message>
    <message>
        <source>Other numbers</source>
        <translation>Autres numéros</translation>
    </message>
    <message>
        <source>Correct an entry · substitution %1</source>
        <translation>Corriger une saisie · remplacement %1</translation>
    </message>
    <message>
        <source>Correct an entry</source>
        <translation>Corriger une saisie</translation>
    </message>
    <message>
        <source>Number</source>
        <translation>Numéro</translation>
    </message>
    <message>
        <source>Points</source>
        <translation>Points</translation>
    </message>
    <message>
        <source>Points taken back</source>
        <translation>Points retirés</translation>
    </message>
    <message>
        <source>Only note it</source>
        <translation>Noter seulement</translation>
    </message>
    <message>
        <source>say nothing yet</source>
        <translation>ne rien dire encore</translation>
    </message>
    <message>
        <source>Ruling: wrong server</source>
        <translation>Décision&#xa0;: mauvais serveur</translation>
    </message>
    <message>
        <source>point and serve lost</source>
        <translation>point et service perdus</translation>
    </message>
    <message>
        <source>%1 serves</source>
        <translation>%1 sert</translation>
    </message>
    <message>
        <source>%1 served before</source>
        <translation>%1 a servi avant</translation>
    </message>
    <message>
        <source>Who is at the line? %1 %2 should serve</source>
        <translation>Qui est à la ligne&#x202f;? %1 %2 devrait servir</translation>
    </message>
    <message>
        <source>libero</source>
        <translation>libéro</translation>
    </message>
    <message>
        <source>all</source>
        <translation>tous</translation>
    </message>
    <message>
        <source>Which number stands there?</source>
        <translation>Quel numéro est là&#x202f;?</translation>
    </message>
    <message>
        <source>She is the right server.</source>
        <translation>C’est le bon serveur.</translation>
    </message>
    <message>
        <source>Sheet of set %1</source>
        <translation>Feuille du set %1</translation>
    </message>
    <message>
        <source>Set %1, page %2 of %3. Press here or Home to go back to live.</source>
        <translation>Set %1, page %2 sur %3. Appuyez ici ou sur Début pour revenir au direct.</translation>
    </message>
    <message>
        <source>Time of day</source>
        <translation>Heure</translation>
    </message>
    <message>
        <source>vacant</source>
        <translation>vacante</translation>
    </message>
    <message>
        <source>What happened: hurt, sent off</source>
        <translation>Ce qui s’est passé&#xa0;: blessé, exclu</translation>
    </message>
    <message>
        <source>Exceptional</source>
        <translation>Exceptionnel</translation>
    </message>
    <message>
        <source>Place stays vacant</source>
        <translation>Place laissée vacante</translation>
    </message>
    <message>
        <source>Substitution %1 · %2</source>
        <translation>Remplacement %1 · %2</translation>
    </message>
    <message>
        <source>Who leaves the court?</source>
        <translation>Qui quitte le terrain&#x202f;?</translation>
    </message>
    <message>
        <source>Number in, number out, Enter.</source>
        <translation>Numéro entrant, numéro sortant, Entrée.</translation>
    </message>
    <message>
        <source>Who goes out?</source>
        <translation>Qui sort&#x202f;?</translation>
    </message>
    <message>
        <source>This is the only place for the number. Enter records.</source>
        <translation>C’est la seule place possible pour ce numéro. Entrée pour inscrire.</translation>
    </message>
    <message>
        <source>&amp;Match</source>
        <translation>&amp;Match</translation>
    </message>
    <message>
        <source>&amp;Set</source>
        <translation>&amp;Set</translation>
    </message>
    <message>
        <source>&amp;Rally</source>
        <translation>É&amp;change</translation>
    </message>
    <message>
        <source>S&amp;heet</source>
        <translation>&amp;Feuille</translation>
    </message>
    <message>
        <source>&amp;View</source>
        <translation>&amp;Vue</translation>
    </message>
    <message>
        <source>Look as the system</source>
        <translation>Thème du système</translation>
    </message>
    <message>
        <source>Light look</source>
        <translation>Thème clair</translation>
    </message>
    <message>
        <source>Dark look</source>
        <translation>Thème sombre</translation>
    </message>
    <message>
        <source>left side</source>
        <translation>côté gauche</translation>
    </message>
    <message>
        <source>right side</source>
        <translation>côté droit</translation>
    </message>
    <message>
        <source>Which libero cannot play on?</source>
        <translation>Quel libéro ne peut pas continuer&#x202f;?</translation>
    </message>
    <message>
        <source>%1 is libero from now on. Enter records.</source>
        <translation>Le %1 est désormais libéro. Entrée pour inscrire.</translation>
    </message>
    <message>
        <source>Nobody takes her part. Enter records.</source>
        <translation>Personne ne prend son rôle. Entrée pour inscrire.</translation>
    </message>
    <message>
        <source>Forfeit: which team, and what does it lose?</source>
        <translation>Forfait&#xa0;: quelle équipe, et que perd-elle&#x202f;?</translation>
    </message>
    <message>
        <source>All sets</source>
        <translation>Tous les sets</translation>
    </message>
    <message>
        <source>does not come, or refuses</source>
        <translation>absente, ou refuse de jouer</translation>
    </message>
    <message>
        <source>The match</source>
        <translation>Le match</translation>
    </message>
    <message>
        <source>cannot play on</source>
        <translation>ne peut pas continuer</translation>
    </message>
    <message>
        <source>This set</source>
        <translation>Ce set</translation>
    </message>
    <message>
        <source>Why, on the referee&apos;s word</source>
        <translation>Motif, selon l’arbitre</translation>
    </message>
    <message>
        <source>Only the first referee declares a forfeit.</source>
        <translation>Seul le premier arbitre prononce un forfait.</translation>
    </message>
    <message>
        <source>Resume play</source>
        <translation>Reprendre le jeu</translation>
    </message>
    <message>
        <source>As it stood</source>
        <translation>En l’état</translation>
    </message>
    <message>
        <source>same score and players</source>
        <translation>même score, mêmes joueurs</translation>
    </message>
    <message>
        <source>The set again</source>
        <translation>Set à rejouer</translation>
    </message>
    <message>
        <source>from nothing, same line-ups</source>
        <translation>à zéro, mêmes formations</translation>
    </message>
    <message>
        <source>The broken-off set is cancelled and keeps its sheet. Enter records.</source>
        <translation>Le set interrompu est annulé et garde sa feuille. Entrée pour inscrire.</translation>
    </message>
    <message>
        <source>Play goes on where it stopped. Enter records.</source>
        <translation>Le jeu reprend où il s’est arrêté. Entrée pour inscrire.</translation>
    </message>
    <message>
        <source>New libero %1</source>
        <translation>Nouveau libéro %1</translation>
    </message>
    <message>
        <source>New</source>
        <translation>Nouv.</translation>
    </message>
    <message>
        <source>Why she cannot play on</source>
        <translation>Pourquoi il ne peut pas continuer</translation>
    </message>
    <message>
        <source>warning at %1</source>
        <translation>avertir à %1</translation>
    </message>
    <message>
        <source>sound the warning</source>
        <translation>donner le signal</translation>
    </message>
    <message>
        <source>time-out is over</source>
        <translation>temps mort terminé</translation>
    </message>
    <message>
        <source>%1 %2, slot %3</source>
        <translation>%1 %2, rang %3</translation>
    </message>
    <message>
        <source>Agrees</source>
        <translation>Juste</translation>
    </message>
    <message>
        <source>Differs…</source>
        <translation>Écart…</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>OK</translation>
    </message>
    <message>
        <source>Compare</source>
        <translation>Comparer</translation>
    </message>
    <message>
        <source>Score</source>
        <translation>Score</translation>
    </message>
    <message>
        <source>Substitutions</source>
        <translation>Remplacements</translation>
    </message>
    <message>
        <source>Time-outs</source>
        <translation>Temps morts</translation>
    </message>
    <message>
        <source>Serves next</source>
        <translation>Prochain service</translation>
    </message>
    <message>
        <source>a point to %1</source>
        <translation>un point à %1</translation>
    </message>
    <message>
        <source>point and serve to %1</source>
        <translation>point et service à %1</translation>
    </message>
    <message>
        <source>out for the rest of the set</source>
        <translation>exclu pour le reste du set</translation>
    </message>
    <message>
        <source>out for the rest of the match</source>
        <translation>exclu pour le reste du match</translation>
    </message>
    <message>
        <source>no point</source>
        <translation>pas de point</translation>
    </message>
    <message>
        <source>%1: %2. Enter records.</source>
        <translation>%1&#xa0;: %2. Entrée pour inscrire.</translation>
    </message>
    <message>
        <source>Exceptional: anybody but a libero may come in.</source>
        <translation>Exceptionnel&#xa0;: n’importe qui peut entrer, sauf un libéro.</translation>
    </message>
    <message>
        <source>Exceptional: anybody may come in, a libero last.</source>
        <translation>Exceptionnel&#xa0;: n’importe qui peut entrer, un libéro en dernier.</translation>
    </message>
    <message>
        <source>%1 stays out for the rest of the match.</source>
        <translation>Le %1 ne joue plus du match.</translation>
    </message>
    <message>
        <source>%1 stays out for the rest of the set.</source>
        <translation>Le %1 ne joue plus du set.</translation>
    </message>
    <message>
        <source>Exceptional substitution %1, %2 in for %3: %4</source>
        <translation>Remplacement exceptionnel %1, %2 pour %3&#xa0;: %4</translation>
    </message>
    <message>
        <source>%1 would be incomplete and has lost: record the forfeit.</source>
        <translation>%1 serait incomplète et a perdu&#xa0;: inscrivez le forfait.</translation>
    </message>
    <message>
        <source>She leaves and nobody comes in. When her place is to serve, the rally is lost.</source>
        <translation>Il sort et personne n’entre. Quand ce sera à sa place de servir, l’échange sera perdu.</translation>
    </message>
    <message>
        <source>Recorded: %1 plays on with a vacant place. Tell the second referee.</source>
        <translation>Inscrit&#xa0;: %1 continue avec une place vacante. Prévenez le second arbitre.</translation>
    </message>
    <message>
        <source>%1 on court for %2</source>
        <translation>%1 en jeu pour %2</translation>
    </message>
    <message>
        <source>not on court</source>
        <translation>hors du terrain</translation>
    </message>
    <message>
        <source>%1 comes back</source>
        <translation>le %1 revient</translation>
    </message>
    <message>
        <source>Tell the second referee now: %1 %2 has served, %3 should have.</source>
        <translation>Prévenez le second arbitre maintenant&#xa0;: %1 %2 a servi, c’était au %3.</translation>
    </message>
    <message>
        <source>Tell the second referee: %1 %2 is at the line, %3 should serve.</source>
        <translation>Prévenez le second arbitre&#xa0;: %1 %2 est à la ligne, c’est au %3 de servir.</translation>
    </message>
    <message>
        <source>%1 %2 is at the line, %3 should serve. Say nothing before the contact.</source>
        <translation>%1 %2 est à la ligne, c’est au %3 de servir. Ne dites rien avant la frappe.</translation>
    </message>
    <message>
        <source>Point and serve to %1</source>
        <translation>Point et service à %1</translation>
    </message>
    <message>
        <source>%1 has the serve already</source>
        <translation>%1 a déjà le service</translation>
    </message>
    <message>
        <source>; no point is taken back.</source>
        <translation>&#x202f;; aucun point n’est retiré.</translation>
    </message>
    <message>
        <source>; points of %1 taken back: %2.</source>
        <translation>&#x202f;; points retirés à %1&#xa0;: %2.</translation>
    </message>
    <message>
        <source>The first referee rules.</source>
        <translation>Le premier arbitre tranche.</translation>
    </message>
    <message>
        <source>yellow</source>
        <translation>jaune</translation>
    </message>
    <message>
        <source>red</source>
        <translation>rouge</translation>
    </message>
    <message>
        <source>red and yellow together</source>
        <translation>rouge et jaune ensemble</translation>
    </message>
    <message>
        <source>red and yellow apart</source>
        <translation>rouge et jaune séparés</translation>
    </message>
    <message>
        <source>%1 loses every set to nothing; %2 wins the match.</source>
        <translation>%1 perd tous les sets à zéro&#x202f;; %2 gagne le match.</translation>
    </message>
    <message>
        <source>%1 keeps its points; %2 gets what it needs for this set.</source>
        <translation>%1 garde ses points&#x202f;; %2 reçoit ce qu’il lui faut pour gagner ce set.</translation>
    </message>
    <message>
        <source>%1 keeps its points and sets; %2 gets what it needs for the match.</source>
        <translation>%1 garde ses points et ses sets&#x202f;; %2 reçoit ce qu’il lui faut pour gagner le match.</translation>
    </message>
    <message>
        <source>match opened</source>
        <translation>match ouvert</translation>
    </message>
    <message>
        <source>roster</source>
        <translation>effectif</translation>
    </message>
    <message>
        <source>officials</source>
        <translation>officiels</translation>
    </message>
    <message>
        <source>match closed</source>
        <translation>match clos</translation>
    </message>
    <message>
        <source>play suspended</source>
        <translation>jeu interrompu</translation>
    </message>
    <message>
        <source>play resumed</source>
        <translation>jeu repris</translation>
    </message>
    <message>
        <source>line-up</source>
        <translation>formation</translation>
    </message>
    <message>
        <source>sides changed</source>
        <translation>changement de terrain</translation>
    </message>
    <message>
        <source>late replacement let pass</source>
        <translation>remplacement tardif de libéro toléré</translation>
    </message>
    <message>
        <source>penalty</source>
        <translation>pénalité</translation>
    </message>
    <message>
        <source>point %1, %2</source>
        <translation>point %1, %2</translation>
    </message>
    <message>
        <source>serves first; %1 on the left</source>
        <translation>sert en premier&#x202f;; %1 à gauche</translation>
    </message>
    <message>
        <source>set %1 started %2</source>
        <translation>début du set %1 à %2</translation>
    </message>
    <message>
        <source>set %1 ended %2</source>
        <translation>fin du set %1 à %2</translation>
    </message>
    <message>
        <source>own serve</source>
        <translation>son service</translation>
    </message>
    <message>
        <source>wins the serve</source>
        <translation>gagne le service</translation>
    </message>
    <message>
        <source>replay</source>
        <translation>échange à rejouer</translation>
    </message>
    <message>
        <source>re-serve</source>
        <translation>service à refaire</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>no serve</source>
        <translation>sans service</translation>
    </message>
    <message>
        <source>%1 in for %2</source>
        <translation>%1 pour %2</translation>
    </message>
    <message>
        <source>time-out at %1–%2</source>
        <translation>temps mort à %1–%2</translation>
    </message>
    <message>
        <source>libero %1 serves</source>
        <translation>libéro %1 sert</translation>
    </message>
    <message>
        <source>libero %1 serves no more</source>
        <translation>libéro %1 ne sert plus</translation>
    </message>
    <message>
        <source>forfeits the set</source>
        <translation>perd le set par forfait</translation>
    </message>
    <message>
        <source>forfeits the match</source>
        <translation>perd le match par forfait</translation>
    </message>
    <message>
        <source>%1 at the service line</source>
        <translation>%1 à la ligne de service</translation>
    </message>
    <message>
        <source>wrong server %1</source>
        <translation>mauvais serveur %1</translation>
    </message>
    <message>
        <source>illegal substitution, %1</source>
        <translation>remplacement illégal, %1</translation>
    </message>
    <message>
        <source>illegal libero replacement, %1</source>
        <translation>remplacement illégal de libéro, %1</translation>
    </message>
    <message>
        <source>%1 leaves, place vacant</source>
        <translation>%1 sort, place vacante</translation>
    </message>
    <message>
        <source>libero %1 in for %2</source>
        <translation>libéro %1 pour %2</translation>
    </message>
    <message>
        <source>libero %1 out</source>
        <translation>libéro %1 sort</translation>
    </message>
    <message>
        <source>libero %1 for libero %2</source>
        <translation>libéro %1 pour libéro %2</translation>
    </message>
    <message>
        <source>libero %1 cannot play on</source>
        <translation>libéro %1 ne peut pas continuer</translation>
    </message>
    <message>
        <source>%1 is libero in place of %2</source>
        <translation>%1 libéro à la place de %2</translation>
    </message>
    <message>
        <source>captain %1</source>
        <translation>capitaine %1</translation>
    </message>
    <message>
        <source>improper request</source>
        <translation>demande non fondée</translation>
    </message>
    <message>
        <source>compared: agrees</source>
        <translation>comparaison&#xa0;: conforme</translation>
    </message>
    <message>
        <source>compared: %1</source>
        <translation>comparaison&#xa0;: %1</translation>
    </message>
    <message>
        <source>remark: %1</source>
        <translation>remarque&#xa0;: %1</translation>
    </message>
    <message>
        <source>%1: signed by the %2, under protest</source>
        <translation>%1&#xa0;: signé avec réclamation (%2)</translation>
    </message>
    <message>
        <source>%1: signed by the %2</source>
        <translation>%1&#xa0;: signé (%2)</translation>
    </message>
    <message>
        <source>%1: not signed by the %2</source>
        <translation>%1&#xa0;: non signé (%2)</translation>
    </message>
    <message>
        <source>%1: sealed</source>
        <translation>%1&#xa0;: scellé</translation>
    </message>
    <message>
        <source>%1: reopened by %2, %3</source>
        <translation>%1&#xa0;: rouvert par %2, %3</translation>
    </message>
    <message>
        <source>injury</source>
        <translation>blessure</translation>
    </message>
    <message>
        <source>interference</source>
        <translation>gêne extérieure</translation>
    </message>
    <message>
        <source>double fault</source>
        <translation>double faute</translation>
    </message>
    <message>
        <source>mistaken whistle</source>
        <translation>coup de sifflet par erreur</translation>
    </message>
    <message>
        <source>serve before the whistle</source>
        <translation>service avant le coup de sifflet</translation>
    </message>
    <message>
        <source>stands again: %1</source>
        <translation>rétabli&#xa0;: %1</translation>
    </message>
    <message>
        <source>struck: %1</source>
        <translation>rayé&#xa0;: %1</translation>
    </message>
    <message>
        <source>Language of the system</source>
        <translation>Langue du système</translation>
    </message>
    <message>
        <source>Next: toss for the deciding set</source>
        <translation>Ensuite&#xa0;: tirage au sort du set décisif</translation>
    </message>
    <message>
        <source>Next: the toss</source>
        <translation>Ensuite&#xa0;: le tirage au sort</translation>
    </message>
    <message>
        <source>Who serves first, and who stands left of the table?</source>
        <translation>Qui sert en premier, et qui est à gauche de la table&#x202f;?</translation>
    </message>
    <message>
        <source>Record the toss…</source>
        <translation>Inscrire le tirage…</translation>
    </message>
    <message>
        <source>Next: line-up of %1</source>
        <translation>Ensuite&#xa0;: formation de %1</translation>
    </message>
    <message>
        <source>Set %1. As on the slip, by court position 1 to 6.</source>
        <translation>Set %1. Comme sur la feuille de position, de la position 1 à la 6.</translation>
    </message>
    <message>
        <source>Type the line-up…</source>
        <translation>Saisir la formation…</translation>
    </message>
    <message>
        <source>Next: start of set %1</source>
        <translation>Ensuite&#xa0;: début du set %1</translation>
    </message>
    <message>
        <source>%1 serves first, number %2. Press at the whistle.</source>
        <translation>%1 sert en premier, numéro %2. Appuyez au coup de sifflet.</translation>
    </message>
    <message>
        <source>Start the set</source>
        <translation>Début du set</translation>
    </message>
    <message>
        <source>%1 wins set %2, %3–%4</source>
        <translation>%1 gagne le set %2, %3–%4</translation>
    </message>
    <message>
        <source>Confirm the score with the second referee, then end the set.</source>
        <translation>Confirmez le score avec le second arbitre, puis terminez le set.</translation>
    </message>
    <message>
        <source>End the set…</source>
        <translation>Fin du set…</translation>
    </message>
    <message>
        <source>%1 wins the match, %2–%3</source>
        <translation>%1 gagne le match, %2–%3</translation>
    </message>
    <message>
        <source>Read the remarks once more with the referee, then close the match.</source>
        <translation>Relisez les remarques avec l’arbitre, puis clôturez le match.</translation>
    </message>
    <message>
        <source>Close the match</source>
        <translation>Clôturer le match</translation>
    </message>
    <message>
        <source>Next: a match</source>
        <translation>Ensuite&#xa0;: un match</translation>
    </message>
    <message>
        <source>Begin a new match, or open one.</source>
        <translation>Commencez un nouveau match, ou ouvrez-en un.</translation>
    </message>
    <message>
        <source>Serving now</source>
        <translation>Au service</translation>
    </message>
    <message>
        <source>Rally: who wins it?</source>
        <translation>Échange&#xa0;: qui le gagne&#x202f;?</translation>
    </message>
    <message>
        <source>Play is suspended</source>
        <translation>Le jeu est interrompu</translation>
    </message>
    <message>
        <source>Go on when the first referee resumes play.</source>
        <translation>Continuez quand le premier arbitre fait reprendre le jeu.</translation>
    </message>
    <message>
        <source>Resume play…</source>
        <translation>Reprendre le jeu…</translation>
    </message>
    <message>
        <source>The match is closed</source>
        <translation>Le match est clos</translation>
    </message>
    <message>
        <source>The record is complete. Print it for the signatures.</source>
        <translation>La feuille est complète. Imprimez-la pour les signatures.</translation>
    </message>
    <message>
        <source>%1 wins the set %2–%3: confirm with the second referee.</source>
        <translation>%1 gagne le set %2–%3&#xa0;: confirmez avec le second arbitre.</translation>
    </message>
    <message>
        <source>Tell the second referee: %1 has used %2 of %3 substitutions.</source>
        <translation>Prévenez le second arbitre&#xa0;: %1 a utilisé %2 remplacements sur %3.</translation>
    </message>
    <message>
        <source>Tell the second referee: %1 has taken its last time-out.</source>
        <translation>Prévenez le second arbitre&#xa0;: %1 a pris son dernier temps mort.</translation>
    </message>
    <message>
        <source>Set point %1</source>
        <translation>Balle de set %1</translation>
    </message>
    <message>
        <source>Match point %1</source>
        <translation>Balle de match %1</translation>
    </message>
    <message>
        <source>Tell the referees: %1 has %2 points, and the teams change sides.</source>
        <translation>Prévenez les arbitres&#xa0;: %1 a %2 points, les équipes changent de terrain.</translation>
    </message>
    <message>
        <source>Number %2 of %1 is at the service line for number %3: say nothing before the serve.</source>
        <translation>Le numéro %2 de %1 est à la ligne de service à la place du %3&#xa0;: ne dites rien avant le service.</translation>
    </message>
    <message>
        <source>Tell the second referee now: number %2 of %1 is at serve for number %3.</source>
        <translation>Prévenez le second arbitre maintenant&#xa0;: le numéro %2 de %1 est au service à la place du %3.</translation>
    </message>
    <message>
        <source>The vacant place of %1 is to serve, in slot %2: the rally is lost, record no serve.</source>
        <translation>C’est à la place vacante de %1 de servir, au rang %2&#xa0;: l’échange est perdu, inscrivez «&#xa0;sans service&#xa0;».</translation>
    </message>
    <message>
        <source>Libero %2 of %1 has come to the front row: she goes out before the serve.</source>
        <translation>Le libéro %2 de %1 arrive en ligne avant&#xa0;: il sort avant le service.</translation>
    </message>
    <message>
        <source>%1 has had its improper request: the next one is a delay.</source>
        <translation>%1 a déjà fait une demande non fondée&#xa0;: la prochaine sera un retard.</translation>
    </message>
    <message>
        <source>Recorded: %1 #%2 in for #%3. Signal the second referee.</source>
        <translation>Inscrit&#xa0;: %1, n°&#xa0;%2 pour n°&#xa0;%3. Faites signe au second arbitre.</translation>
    </message>
    <message>
        <source>line-up awaited</source>
        <translation>formation attendue</translation>
    </message>
    <message>
        <source>line-up stands</source>
        <translation>formation inscrite</translation>
    </message>
    <message>
        <source>wins the rally</source>
        <translation>gagne l’échange</translation>
    </message>
    <message>
        <source>wins the set</source>
        <translation>gagne le set</translation>
    </message>
    <message>
        <source>wins the match</source>
        <translation>gagne le match</translation>
    </message>
    <message>
        <source>serves</source>
        <translation>sert</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 sur %2</translation>
    </message>
    <message>
        <source>%1 left</source>
        <translation>reste %1</translation>
    </message>
    <message>
        <source>none left</source>
        <translation>reste 0</translation>
    </message>
    <message>
        <source>%1 given</source>
        <translation>reçus&#xa0;: %1</translation>
    </message>
    <message>
        <source>none</source>
        <translation>aucun</translation>
    </message>
    <message>
        <source>%1 on</source>
        <translation>%1 joue</translation>
    </message>
    <message>
        <source>not on</source>
        <translation>sorti</translation>
    </message>
    <message>
        <source>in %1</source>
        <translation>rang %1</translation>
    </message>
    <message>
        <source>Set %1    Sets won: %2 %3–%4 %5</source>
        <translation>Set %1    Sets gagnés&#xa0;: %2 %3–%4 %5</translation>
    </message>
    <message>
        <source>Set %1, best of %2</source>
        <translation>Set %1, max. %2</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>Rally %1</source>
        <translation>Échange %1</translation>
    </message>
    <message>
        <source>Slot %1 · libero for %2</source>
        <translation>Rang %1 · libéro pour %2</translation>
    </message>
    <message>
        <source>Slot %1 · captain</source>
        <translation>Rang %1 · capitaine</translation>
    </message>
    <message>
        <source>Slot %1</source>
        <translation>Rang %1</translation>
    </message>
    <message>
        <source>If the rally is lost, next server</source>
        <translation>Si l’échange est perdu, prochain serveur</translation>
    </message>
    <message>
        <source>slot %1</source>
        <translation>rang %1</translation>
    </message>
    <message>
        <source>then %1 %2</source>
        <translation>puis %1 %2</translation>
    </message>
    <message>
        <source>Interval %1</source>
        <translation>Intervalle %1</translation>
    </message>
    <message>
        <source>Line-ups late</source>
        <translation>Hors délai</translation>
    </message>
    <message>
        <source>Line-ups due %1</source>
        <translation>Délai %1</translation>
    </message>
    <message>
        <source>Warm-up %1</source>
        <translation>Échauffement %1</translation>
    </message>
    <message>
        <source>Saved %1</source>
        <translation>Enregistré %1</translation>
    </message>
    <message>
        <source>Not saved</source>
        <translation>Non enregistré</translation>
    </message>
    <message>
        <source>Saved</source>
        <translation>Enregistré</translation>
    </message>
    <message>
        <source>Read only</source>
        <translation>Lecture seule</translation>
    </message>
    <message>
        <source>Not recorded. %1 The sheet stands as it did before.</source>
        <translation>Non inscrit. %1 La feuille reste comme avant.</translation>
    </message>
    <message>
        <source>This match is open for reading only: nothing can be recorded in this window.</source>
        <translation>Ce match est ouvert en lecture seule&#xa0;: rien ne peut être inscrit dans cette fenêtre.</translation>
    </message>
    <message>
        <source>Another window holds this match (%1): nothing can be recorded in this one.</source>
        <translation>Une autre fenêtre tient ce match (%1)&#xa0;: rien ne peut être inscrit dans celle-ci.</translation>
    </message>
    <message>
        <source>Replay and its cause…</source>
        <translation>À rejouer, avec la cause…</translation>
    </message>
    <message>
        <source>Illegal player found, left side…</source>
        <translation>Joueur illégal, côté gauche…</translation>
    </message>
    <message>
        <source>Illegal player found, right side…</source>
        <translation>Joueur illégal, côté droit…</translation>
    </message>
    <message>
        <source>Officials…</source>
        <translation>Officiels…</translation>
    </message>
    <message>
        <source>Sign off…</source>
        <translation>Faire signer…</translation>
    </message>
    <message>
        <source>Reopen what is sealed…</source>
        <translation>Rouvrir ce qui est scellé…</translation>
    </message>
    <message>
        <source>Team book…</source>
        <translation>Carnet d’équipes…</translation>
    </message>
    <message>
        <source>How things are entered…</source>
        <translation>Comment saisir…</translation>
    </message>
    <message>
        <source>Change keys…</source>
        <translation>Changer les touches…</translation>
    </message>
    <message>
        <source>Hel&amp;p</source>
        <translation>Ai&amp;de</translation>
    </message>
    <message>
        <source>There is nothing to sign yet: a set is signed after its end, the match when it is closed.</source>
        <translation>Il n’y a encore rien à signer&#xa0;: un set se signe après sa fin, le match quand il est clos.</translation>
    </message>
    <message>
        <source>Nothing is sealed: it can be changed as it is.</source>
        <translation>Rien n’est scellé&#xa0;: on peut le changer tel quel.</translation>
    </message>
    <message>
        <source>Press for her replacement</source>
        <translation>Appuyez pour son remplacement de libéro</translation>
    </message>
    <message>
        <source>Press for a substitution in her place</source>
        <translation>Appuyez pour un remplacement à sa place</translation>
    </message>
    <message>
        <source>%1 is the key of “%2”: choose another one, or change that one first.</source>
        <translation>%1 est la touche de «&#xa0;%2&#xa0;»&#xa0;: choisissez-en une autre, ou changez d’abord celle-là.</translation>
    </message>
    <message>
        <source>Shirt numbers are typed with %1: choose another key.</source>
        <translation>%1 sert à taper les numéros de maillot&#xa0;: choisissez une autre touche.</translation>
    </message>
    <message>
        <source>The window needs %1 to find one’s way in it: choose another key.</source>
        <translation>La fenêtre a besoin de %1 pour qu’on s’y déplace&#xa0;: choisissez une autre touche.</translation>
    </message>
    <message>
        <source>In for %1, at the place of the server? Enter records it, or type another number.</source>
        <translation>À la place du %1, au service&#x202f;? Entrée pour inscrire, ou tapez un autre numéro.</translation>
    </message>
    <message>
        <source>In for whom? Those who may go are offered.</source>
        <translation>À la place de qui&#x202f;? Ceux qui peuvent sortir sont proposés.</translation>
    </message>
    <message>
        <source>Before “%1”</source>
        <translation>Avant «&#xa0;%1&#xa0;»</translation>
    </message>
    <message>
        <source>In place of “%1”</source>
        <translation>À la place de «&#xa0;%1&#xa0;»</translation>
    </message>
    <message>
        <source>%1: the table stands as it did then. Record what belongs there, or press Esc.</source>
        <translation>%1&#xa0;: la table est comme à ce moment-là. Inscrivez ce qui doit y être, ou appuyez sur Échap.</translation>
    </message>
    <message>
        <source>%1: %2 %3</source>
        <translation>%1&#xa0;: %2 %3</translation>
    </message>
    <message>
        <source>Something else</source>
        <translation>Autre chose</translation>
    </message>
    <message>
        <source>record it at the table</source>
        <translation>à inscrire à la table</translation>
    </message>
    <message>
        <source>Record it anew</source>
        <translation>L’inscrire à nouveau</translation>
    </message>
    <message>
        <source>As before: %1 in for %2. Enter records it, or type another number.</source>
        <translation>Comme avant&#xa0;: %1 pour %2. Entrée pour inscrire, ou tapez un autre numéro.</translation>
    </message>
    <message>
        <source>High contrast</source>
        <translation>Contraste élevé</translation>
    </message>
    <message>
        <source>&amp;Look</source>
        <translation>&amp;Thème</translation>
    </message>
    <message>
        <source>Size of &amp;words</source>
        <translation>&amp;Taille du texte</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1&#xa0;%</translation>
    </message>
    <message>
        <source>Replay: what for?</source>
        <translation>À rejouer&#xa0;: pourquoi&#x202f;?</translation>
    </message>
    <message>
        <source>from outside</source>
        <translation>venue de l’extérieur</translation>
    </message>
    <message>
        <source>Enter records a replay without its cause.</source>
        <translation>Entrée pour inscrire sans la cause.</translation>
    </message>
    <message>
        <source>Illegal player of %1, found after play went on</source>
        <translation>Joueur illégal de %1, vu après la reprise du jeu</translation>
    </message>
    <message>
        <source>Substitution</source>
        <translation>Remplacement</translation>
    </message>
    <message>
        <source>came in illegally</source>
        <translation>entré illégalement</translation>
    </message>
    <message>
        <source>Libero replacement</source>
        <translation>Remplacement de libéro</translation>
    </message>
    <message>
        <source>an illegal one</source>
        <translation>illégal</translation>
    </message>
    <message>
        <source>Who has no right to be on court?</source>
        <translation>Qui n’a pas le droit d’être sur le terrain&#x202f;?</translation>
    </message>
    <message>
        <source>Then record who goes out and who comes in.</source>
        <translation>Inscrivez ensuite qui sort et qui entre.</translation>
    </message>
    <message>
        <source>Next: sign-off of the match</source>
        <translation>Ensuite&#xa0;: signature du match</translation>
    </message>
    <message>
        <source>Show it to the referee, then have it signed and seal it. It can wait.</source>
        <translation>Montrez-le à l’arbitre, puis faites signer et scellez. Cela peut attendre.</translation>
    </message>
    <message>
        <source>Next: sign-off of set %1</source>
        <translation>Ensuite&#xa0;: signature du set %1</translation>
    </message>
    <message>
        <source>The record is signed and sealed. Print it.</source>
        <translation>La feuille est signée et scellée. Imprimez-la.</translation>
    </message>
    <message>
        <source>%1 has taken its last time-out.</source>
        <translation>%1 a pris son dernier temps mort.</translation>
    </message>
    <message>
        <source>%1 has %2 points, and the teams change sides.</source>
        <translation>%1 a %2 points, les équipes changent de terrain.</translation>
    </message>
    <message>
        <source>Ctrl</source>
        <comment>a key</comment>
        <translation>Ctrl</translation>
    </message>
    <message>
        <source>Alt</source>
        <comment>a key</comment>
        <translation>Alt</translation>
    </message>
    <message>
        <source>Shift</source>
        <comment>a key</comment>
        <translation>Maj</translation>
    </message>
    <message>
        <source>Save a copy…</source>
        <translation>Enregistrer une copie…</translation>
    </message>
    <message>
        <source>If the referees gave the point, by the rulebook it stands: correct only a slip of the table.</source>
        <translation>Si les arbitres ont donné ce point, le règlement le maintient&#xa0;: ne corrigez qu’une erreur de la table.</translation>
    </message>
    <message>
        <source>An earlier set</source>
        <translation>Un set antérieur</translation>
    </message>
    <message>
        <source>has no right to it</source>
        <translation>n’y a pas droit</translation>
    </message>
    <message>
        <source>Which team and set, and how many points does it keep there? Empty: all.</source>
        <translation>Quelle équipe, quel set, et combien de points y garde-t-elle&#x202f;? Vide&#xa0;: tous.</translation>
    </message>
    <message>
        <source>Set</source>
        <translation>Set</translation>
    </message>
    <message>
        <source>Set %1 is to be played.</source>
        <translation>Le set %1 est à jouer.</translation>
    </message>
    <message>
        <source>%1 wins the match.</source>
        <translation>%1 gagne le match.</translation>
    </message>
    <message>
        <source>%1 loses set %2, %3–%4.</source>
        <translation>%1 perd le set %2, %3–%4.</translation>
    </message>
    <message>
        <source>forfeits set %1</source>
        <translation>perd le set %1 par forfait</translation>
    </message>
    <message>
        <source>set %1 started</source>
        <translation>début du set %1</translation>
    </message>
    <message>
        <source>set %1 ended</source>
        <translation>fin du set %1</translation>
    </message>
</context>
<context>
    <name>setfolio</name>
    <message>
        <source>Close</source>
        <translation>Fermer</translation>
    </message>
</context>
<context>
    <name>setfolio::AppearanceChoice</name>
    <message>
        <source>Look</source>
        <translation>Thème</translation>
    </message>
    <message>
        <source>Size of words</source>
        <translation>Taille du texte</translation>
    </message>
    <message>
        <source>Words at %1 %</source>
        <translation>Texte à %1&#xa0;%</translation>
    </message>
</context>
<context>
    <name>setfolio::CommandWords</name>
    <message>
        <source>There is no option %1 here. A file of that name is written ./%1.</source>
        <translation>Il n’y a pas d’option %1 ici. Un fichier de ce nom s’écrit ./%1.</translation>
    </message>
    <message>
        <source>The option %1 is given twice: give it once.</source>
        <translation>L’option %1 est donnée deux fois&#xa0;: ne la donnez qu’une fois.</translation>
    </message>
    <message>
        <source>The option %1 needs a value after it.</source>
        <translation>L’option %1 doit être suivie d’une valeur.</translation>
    </message>
    <message>
        <source>There is no paper %1: choose letter or a4.</source>
        <translation>Il n’y a pas de papier %1&#xa0;: choisissez letter ou a4.</translation>
    </message>
    <message>
        <source>There is no sheet %1: choose among match, set, hand-over, libero, coach, entries, slips, blank-slips and blank-set.</source>
        <translation>Il n’y a pas de feuille %1&#xa0;: choisissez parmi match, set, hand-over, libero, coach, entries, slips, blank-slips et blank-set.</translation>
    </message>
    <message>
        <source>%1 is no seal: type the 24 signs of the code from the paper, without I, O, 0 or 1, or all 64 digits.</source>
        <translation>%1 n’est pas un sceau&#xa0;: tapez les 24 caractères du code imprimé, sans I, O, 0 ni 1, ou les 64 chiffres au complet.</translation>
    </message>
    <message>
        <source>A PDF cannot be made as %1: choose archive or plain.</source>
        <translation>Un PDF ne peut pas être produit en %1&#xa0;: choisissez archive ou plain.</translation>
    </message>
    <message>
        <source>The option %1 is missing.</source>
        <translation>Il manque l’option %1.</translation>
    </message>
    <message>
        <source>%1 needs to be told which file.</source>
        <translation>Il faut indiquer à %1 quel fichier.</translation>
    </message>
    <message>
        <source>%1 is one file too many here.</source>
        <translation>%1 est un fichier de trop ici.</translation>
    </message>
    <message>
        <source>Entries: %1.</source>
        <translation>Saisies&#xa0;: %1.</translation>
    </message>
    <message>
        <source>Entries: %1, findings: %2.</source>
        <translation>Saisies&#xa0;: %1, constats&#xa0;: %2.</translation>
    </message>
    <message>
        <source>setfolio --help lists the commands.</source>
        <translation>setfolio --help donne la liste des commandes.</translation>
    </message>
    <message>
        <source>%1, line %2: %3</source>
        <translation>%1, ligne %2&#xa0;: %3</translation>
    </message>
    <message>
        <source>The referee let it stand.</source>
        <translation>L’arbitre l’a maintenu.</translation>
    </message>
    <message>
        <source>The referee let it stand: %1</source>
        <translation>L’arbitre l’a maintenu&#xa0;: %1</translation>
    </message>
    <message>
        <source>%1: whole and lawful. %2</source>
        <translation>%1&#xa0;: intact et conforme. %2</translation>
    </message>
    <message>
        <source>%1: whole. %2</source>
        <translation>%1&#xa0;: intact. %2</translation>
    </message>
    <message>
        <source>%1: damaged or altered. %2</source>
        <translation>%1&#xa0;: endommagé ou modifié. %2</translation>
    </message>
    <message>
        <source>%1: cut short. %2</source>
        <translation>%1&#xa0;: tronqué. %2</translation>
    </message>
    <message>
        <source>%1: written. %2</source>
        <translation>%1&#xa0;: écrit. %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>standard input</source>
        <translation>entrée standard</translation>
    </message>
    <message>
        <source>%1 holds no match yet: open one in it first.</source>
        <translation>%1 ne contient pas encore de match&#xa0;: ouvrez-y d’abord un match.</translation>
    </message>
    <message>
        <source>%1 is not written: the sheets could not be drawn. Print each match by itself.</source>
        <translation>%1 n’est pas écrit&#xa0;: les feuilles n’ont pas pu être dessinées. Imprimez chaque match séparément.</translation>
    </message>
    <message>
        <source>%1: written. Pages: %2.</source>
        <translation>%1&#xa0;: écrit. Pages&#xa0;: %2.</translation>
    </message>
    <message>
        <source>Standard output cannot be written to its end: what was said there is not whole.</source>
        <translation>La sortie standard n’a pas pu être écrite jusqu’au bout&#xa0;: ce qui y figure est incomplet.</translation>
    </message>
    <message>
        <source>There is no screen to open the window on. The commands print, check, enter and export need none: setfolio --help lists them.</source>
        <translation>Il n’y a pas d’écran où ouvrir la fenêtre. Les commandes print, check, enter et export n’en ont pas besoin&#xa0;: setfolio --help en donne la liste.</translation>
    </message>
    <message>
        <source>The sheet&apos;s typeface %1 is not installed in all its weights: install the package %2.</source>
        <translation>La police %1 de la feuille n’est pas installée dans toutes ses graisses&#xa0;: installez le paquet %2.</translation>
    </message>
    <message>
        <source>There are no inks %1: choose among cobalt-and-rust, heather-and-gorse, greys and black-only.</source>
        <translation>Il n’y a pas d’encres %1&#xa0;: choisissez parmi cobalt-and-rust, heather-and-gorse, greys et black-only.</translation>
    </message>
    <message>
        <source>A match cannot be exported as %1: choose json, csv or match-file.</source>
        <translation>Un match ne peut pas être exporté en %1&#xa0;: choisissez json, csv ou match-file.</translation>
    </message>
    <message>
        <source>Setfolio keeps the score sheet of a volleyball match.

setfolio [FILE]                          open the window, at the match in FILE
setfolio print FILE... --to PDF          print the sheets of all sets of all FILEs into one PDF
               [--paper letter|a4]       on this paper; your country&apos;s own if none is named
               [--sheets NAME,NAME...]   these: match, set, hand-over, libero, coach, entries, slips,
                                         blank-slips, blank-set; those of the sets, and of the match once
                                         it is decided, if none is named
               [--inks NAME]             in cobalt-and-rust, heather-and-gorse, greys or black-only
               [--as archive|plain]      as PDF/A-1b for the archive, or plain; archive if not named
               [--numbers-only]          without anybody&apos;s name
setfolio check FILE...                   say whether each FILE is whole and lawful
               [--seal CODE]             whether it is what was signed under the CODE from the paper
setfolio enter LIST --to FILE            judge a list of entries and write it as a new match file
setfolio export FILE --as json|csv       write what stands on the sheets as JSON, or the entries as CSV,
               [--to PATH]               to PATH, or else to standard output
               [--numbers-only]          without anybody&apos;s name
setfolio export FILE --as match-file --numbers-only --to COPY
                                         write a match file without names, with a chain of its own
setfolio --help                          this text
setfolio --version                       name and version

A LIST holds one entry a line, each a JSON object; - is standard input. An existing match file is never
overwritten. Words after -- are files, even if they begin with -. Only the window needs a screen.
A CSV cell that a spreadsheet would run as a formula begins with an apostrophe. Names that the match knows
are taken out of remarks and reasons too; what else is written there stays.

It ends with one of these codes; of several, with the highest:
  0   done; the file is whole and lawful, and what was signed
  1   done, and something was found against the rulebook, or the seal was reopened; or there is no match in
      the file yet
  2   the file is damaged, altered, cut short or not what was signed; or a line of the list cannot be recorded
  64  the command was not understood
  66  a file cannot be opened
  69  there is no screen for the window, or the sheet&apos;s typeface is not installed
  73  a file cannot be made
  74  a file cannot be written to its end

Rules differ by state and league, and the referee is right.
</source>
        <translation>Setfolio tient la feuille de match d’une rencontre de volley-ball.

setfolio [FICHIER]                       ouvrir la fenêtre, sur le match de FICHIER
setfolio print FICHIER... --to PDF       imprimer les feuilles de tous les sets des FICHIERS dans un seul PDF
               [--paper letter|a4]       sur ce papier&#x202f;; celui de votre pays si aucun n’est nommé
               [--sheets NOM,NOM...]     celles-ci&#xa0;: match, set, hand-over, libero, coach, entries, slips,
                                         blank-slips, blank-set&#x202f;; si aucune n’est nommée, celles des sets,
                                         et celle du match dès qu’il est décidé
               [--inks NOM]              en cobalt-and-rust, heather-and-gorse, greys ou black-only
               [--as archive|plain]      en PDF/A-1b pour l’archive, ou simple&#x202f;; archive si rien n’est nommé
               [--numbers-only]          sans le nom de personne
setfolio check FICHIER...                dire si chaque FICHIER est intact et conforme
               [--seal CODE]             et s’il est bien ce qui a été signé sous le CODE du papier
setfolio enter LISTE --to FICHIER        juger une liste de saisies et en faire un nouveau fichier de match
setfolio export FICHIER --as json|csv    écrire en JSON ce qui figure sur les feuilles, ou les saisies en CSV,
               [--to CHEMIN]             dans CHEMIN, ou sinon sur la sortie standard
               [--numbers-only]          sans le nom de personne
setfolio export FICHIER --as match-file --numbers-only --to COPIE
                                         écrire un fichier de match sans noms, avec sa propre chaîne
setfolio --help                          ce texte
setfolio --version                       nom et version

Une LISTE contient une saisie par ligne, chacune un objet JSON&#x202f;; - désigne l’entrée standard. Un fichier
de match existant n’est jamais écrasé. Les mots après -- sont des fichiers, même s’ils commencent par -.
Seule la fenêtre a besoin d’un écran.
Une cellule CSV qu’un tableur exécuterait comme formule commence par une apostrophe. Les noms que le match
connaît sont aussi retirés des remarques et des motifs&#x202f;; le reste de leur texte demeure.

Le programme se termine par l’un de ces codes&#x202f;; s’il y en a plusieurs, par le plus élevé&#xa0;:
  0   fait&#x202f;; le fichier est intact, conforme, et tel qu’il a été signé
  1   fait, mais quelque chose est contraire au règlement, ou le sceau a été rouvert&#x202f;; ou il n’y a pas
      encore de match dans le fichier
  2   le fichier est endommagé, modifié, tronqué ou n’est pas ce qui a été signé&#x202f;; ou une ligne de la
      liste ne peut pas être inscrite
  64  la commande n’a pas été comprise
  66  un fichier ne peut pas être ouvert
  69  il n’y a pas d’écran pour la fenêtre, ou la police de la feuille n’est pas installée
  73  un fichier ne peut pas être créé
  74  un fichier ne peut pas être écrit jusqu’au bout

Les règles varient selon l’État et la ligue, et l’arbitre a raison.
</translation>
    </message>
    <message>
        <source>%1: written without names. It is a match file of its own: the seals of the original do not hold for it, and free text holds no name that the match knows, but read it before you pass it on.</source>
        <translation>%1&#xa0;: écrit sans les noms. C’est un fichier de match à part&#xa0;: les sceaux de l’original ne valent pas pour lui, et le texte libre ne contient aucun nom connu du match, mais relisez-le avant de le transmettre.</translation>
    </message>
</context>
<context>
    <name>setfolio::ComparisonDialog</name>
    <message>
        <source>Your sheet and the right one</source>
        <translation>Votre feuille et la feuille juste</translation>
    </message>
    <message>
        <source>Show the right sheet…</source>
        <translation>Montrer la feuille juste…</translation>
    </message>
    <message>
        <source>Print your sheet…</source>
        <translation>Imprimer sa feuille…</translation>
    </message>
    <message>
        <source>Go back to the table</source>
        <translation>Revenir à la table</translation>
    </message>
    <message>
        <source>What differs</source>
        <translation>Ce qui diffère</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>Où</translation>
    </message>
    <message>
        <source>The right sheet</source>
        <translation>La feuille juste</translation>
    </message>
    <message>
        <source>Your sheet</source>
        <translation>Votre feuille</translation>
    </message>
    <message>
        <source>Times of day, captains and remarks are not compared.</source>
        <translation>Les heures, les capitaines et les remarques ne sont pas comparés.</translation>
    </message>
</context>
<context>
    <name>setfolio::CopyDialog</name>
    <message>
        <source>Save a copy</source>
        <translation>Enregistrer une copie</translation>
    </message>
    <message>
        <source>For the league, a coach or a spreadsheet; the match itself stays as it is.</source>
        <translation>Pour la ligue, un entraîneur ou un tableur&#x202f;; le match lui-même reste tel quel.</translation>
    </message>
    <message>
        <source>Save…</source>
        <translation>Enregistrer…</translation>
    </message>
    <message>
        <source>Numbers only</source>
        <translation>Numéros seuls</translation>
    </message>
    <message>
        <source>Leaves out all names of persons</source>
        <translation>Omet tous les noms de personnes</translation>
    </message>
    <message>
        <source>Saved: %1</source>
        <translation>Enregistré&#xa0;: %1</translation>
    </message>
</context>
<context>
    <name>setfolio::ErrorWords</name>
    <message>
        <source>%1 cannot be opened%3: check that the file is there and that you may read it.</source>
        <translation>%1 ne peut pas être ouvert%3&#xa0;: vérifiez que le fichier existe et que vous avez le droit de le lire.</translation>
    </message>
    <message>
        <source>%1 cannot be made%3: choose another name, or a folder that you may write to.</source>
        <translation>%1 ne peut pas être créé%3&#xa0;: choisissez un autre nom, ou un dossier où vous avez le droit d’écrire.</translation>
    </message>
    <message>
        <source>%1 cannot be written%3: the last entry is not recorded, all before it are. Make room on the disk and enter it again.</source>
        <translation>%1 ne peut pas être écrit%3&#xa0;: la dernière saisie n’est pas inscrite, toutes les précédentes le sont. Libérez de la place sur le disque et refaites la saisie.</translation>
    </message>
    <message>
        <source>%1 is open for reading only%3: close the window that holds it, or go on in a copy.</source>
        <translation>%1 est ouvert en lecture seule%3&#xa0;: fermez la fenêtre qui le tient, ou continuez dans une copie.</translation>
    </message>
    <message>
        <source>%1 is not a match file%3: it does not begin with the opening of a match.</source>
        <translation>%1 n’est pas un fichier de match%3&#xa0;: il ne commence pas par l’ouverture d’un match.</translation>
    </message>
    <message>
        <source>%1 was written by a newer version of Setfolio%3: open it with that version.</source>
        <translation>%1 a été écrit par une version plus récente de Setfolio%3&#xa0;: ouvrez-le avec cette version.</translation>
    </message>
    <message>
        <source>Line %2 of %1 is damaged%3: the lines before it are whole, go on in a copy of them.</source>
        <translation>La ligne %2 de %1 est endommagée%3&#xa0;: les lignes précédentes sont intactes, continuez dans une copie de celles-ci.</translation>
    </message>
    <message>
        <source>Line %2 of %1 holds a kind of entry that this version does not know%3: open it with a newer version of Setfolio.</source>
        <translation>La ligne %2 de %1 contient une sorte de saisie que cette version ne connaît pas%3&#xa0;: ouvrez le fichier avec une version plus récente de Setfolio.</translation>
    </message>
    <message>
        <source>Line %2 of %1 is not the one that belongs there%3: a line is missing, doubled or moved. The lines before it are whole, go on in a copy of them.</source>
        <translation>La ligne %2 de %1 n’est pas celle qui doit s’y trouver%3&#xa0;: une ligne manque, est en double ou a été déplacée. Les lignes précédentes sont intactes, continuez dans une copie de celles-ci.</translation>
    </message>
    <message>
        <source>Line %2 of %1 was altered after it was written%3: the lines before it are whole, go on in a copy of them.</source>
        <translation>La ligne %2 de %1 a été modifiée après son écriture%3&#xa0;: les lignes précédentes sont intactes, continuez dans une copie de celles-ci.</translation>
    </message>
    <message>
        <source>The seal in line %2 of %1 is not over the lines before it%3: they were altered after they were signed. Compare the file with another copy, and with the seal on the paper.</source>
        <translation>Le sceau de la ligne %2 de %1 ne correspond pas aux lignes qui le précèdent%3&#xa0;: elles ont été modifiées après la signature. Comparez le fichier avec une autre copie, et avec le sceau sur le papier.</translation>
    </message>
    <message>
        <source>%1 goes beyond what a match file may hold, in line %2%3: the lines before it are whole, go on in a copy of them.</source>
        <translation>%1 dépasse ce qu’un fichier de match peut contenir, à la ligne %2%3&#xa0;: les lignes précédentes sont intactes, continuez dans une copie de celles-ci.</translation>
    </message>
    <message>
        <source>This entry cannot be recorded in %1%3: correct it and enter it again.</source>
        <translation>Cette saisie ne peut pas être inscrite dans %1%3&#xa0;: corrigez-la et refaites-la.</translation>
    </message>
    <message>
        <source>%1 was changed by another program%3, so the entry was not recorded: open the file again and look at its end.</source>
        <translation>%1 a été modifié par un autre programme%3, la saisie n’a donc pas été inscrite&#xa0;: rouvrez le fichier et regardez-en la fin.</translation>
    </message>
    <message>
        <source>%1 cannot be read to its end%3: copy it to another disk, if that can still be done.</source>
        <translation>%1 ne peut pas être lu jusqu’au bout%3&#xa0;: copiez-le sur un autre disque, si c’est encore possible.</translation>
    </message>
    <message>
        <source>%1 cannot be written%3: make room on the disk, or choose another one, and try again.</source>
        <translation>%1 ne peut pas être écrit%3&#xa0;: libérez de la place sur le disque, ou choisissez-en un autre, et réessayez.</translation>
    </message>
    <message>
        <source>%1 cannot be replaced%3, and is as it was: choose another name or folder.</source>
        <translation>%1 ne peut pas être remplacé%3, et reste tel quel&#xa0;: choisissez un autre nom ou un autre dossier.</translation>
    </message>
    <message>
        <source>%1 is written, but might not outlast a power cut%3: write it once more, or to another disk.</source>
        <translation>%1 est écrit, mais pourrait ne pas survivre à une coupure de courant%3&#xa0;: écrivez-le encore une fois, ou sur un autre disque.</translation>
    </message>
    <message>
        <source>%1 is too long%3: choose another file.</source>
        <translation>%1 est trop long%3&#xa0;: choisissez un autre fichier.</translation>
    </message>
    <message>
        <source>%1 was changed by another program%3: open it again.</source>
        <translation>%1 a été modifié par un autre programme%3&#xa0;: rouvrez-le.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; names no kind of entry that this version knows: check how the kind is spelled.</source>
        <translation>«&#xa0;%1&#xa0;» n’est pas une sorte de saisie que cette version connaît&#xa0;: vérifiez son orthographe.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; does not belong in this entry: check how it is spelled, or leave it out.</source>
        <translation>«&#xa0;%1&#xa0;» n’a pas sa place dans cette saisie&#xa0;: vérifiez son orthographe, ou retirez-le.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is missing from this entry: add it.</source>
        <translation>«&#xa0;%1&#xa0;» manque dans cette saisie&#xa0;: ajoutez-le.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not of the type it must have in this entry: a number, a word, a list or an object.</source>
        <translation>«&#xa0;%1&#xa0;» n’a pas le type voulu dans cette saisie&#xa0;: un nombre, un mot, une liste ou un objet.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is of a newer version of the format: use a newer version of Setfolio.</source>
        <translation>«&#xa0;%1&#xa0;» appartient à une version plus récente du format&#xa0;: utilisez une version plus récente de Setfolio.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no rulebook: name a published one, or correct the setting.</source>
        <translation>«&#xa0;%1&#xa0;» n’est pas un règlement&#xa0;: nommez un règlement publié, ou corrigez le paramètre.</translation>
    </message>
    <message>
        <source>The rulebook is not a JSON object: choose a rulebook file.</source>
        <translation>Le règlement n’est pas un objet JSON&#xa0;: choisissez un fichier de règlement.</translation>
    </message>
    <message>
        <source>The rulebook has a setting &quot;%1&quot; that this version does not know: check how it is spelled.</source>
        <translation>Le règlement a un paramètre «&#xa0;%1&#xa0;» que cette version ne connaît pas&#xa0;: vérifiez son orthographe.</translation>
    </message>
    <message>
        <source>The rulebook has no setting &quot;%1&quot;: add it, with its source.</source>
        <translation>Le règlement n’a pas de paramètre «&#xa0;%1&#xa0;»&#xa0;: ajoutez-le, avec sa source.</translation>
    </message>
    <message>
        <source>The rulebook&apos;s setting &quot;%1&quot; is not of the type it must have: compare it with a published rulebook.</source>
        <translation>Le paramètre «&#xa0;%1&#xa0;» du règlement n’a pas le type voulu&#xa0;: comparez-le avec un règlement publié.</translation>
    </message>
    <message>
        <source>The rulebook&apos;s setting &quot;%1&quot; has a value that it cannot have: compare it with a published rulebook.</source>
        <translation>Le paramètre «&#xa0;%1&#xa0;» du règlement a une valeur impossible&#xa0;: comparez-le avec un règlement publié.</translation>
    </message>
    <message>
        <source>Line %2 of %1 was cut short while it was being written: it is left out, and nothing that was recorded is lost.</source>
        <translation>La ligne %2 de %1 a été tronquée pendant son écriture&#xa0;: elle est laissée de côté, et rien de ce qui était inscrit n’est perdu.</translation>
    </message>
    <message>
        <source>Line %2 of %1 was cut short while it was being written: it was moved to %3, and nothing that was recorded is lost.</source>
        <translation>La ligne %2 de %1 a été tronquée pendant son écriture&#xa0;: elle a été déplacée dans %3, et rien de ce qui était inscrit n’est perdu.</translation>
    </message>
    <message>
        <source>This line is longer than any entry can be: shorten it.</source>
        <translation>Cette ligne est plus longue que ne peut l’être une saisie&#xa0;: raccourcissez-la.</translation>
    </message>
    <message>
        <source>From line %2 on, %1 was saved anew by another program%3, and is no longer what was written: use the file as it was, or another copy of it.</source>
        <translation>À partir de la ligne %2, %1 a été réenregistré par un autre programme%3 et n’est plus ce qui a été écrit&#xa0;: utilisez le fichier tel qu’il était, ou une autre copie.</translation>
    </message>
    <message>
        <source>Line 1 of %1 is damaged%3: look for another copy of the file.</source>
        <translation>La ligne 1 de %1 est endommagée%3&#xa0;: cherchez une autre copie du fichier.</translation>
    </message>
    <message>
        <source>Line 1 of %1 is not the one that belongs there%3: look for another copy of the file.</source>
        <translation>La ligne 1 de %1 n’est pas celle qui doit s’y trouver%3&#xa0;: cherchez une autre copie du fichier.</translation>
    </message>
    <message>
        <source>Line 1 of %1 was altered after it was written%3: look for another copy of the file.</source>
        <translation>La ligne 1 de %1 a été modifiée après son écriture%3&#xa0;: cherchez une autre copie du fichier.</translation>
    </message>
    <message>
        <source>%1 goes beyond what a match file may hold, in its first line%3: look for another copy of the file.</source>
        <translation>%1 dépasse ce qu’un fichier de match peut contenir, à sa première ligne%3&#xa0;: cherchez une autre copie du fichier.</translation>
    </message>
    <message>
        <source>This is not a JSON object: write one entry to a line, in braces, each member once, as UTF-8.</source>
        <translation>Ce n’est pas un objet JSON&#xa0;: écrivez une saisie par ligne, entre accolades, chaque membre une seule fois, en UTF-8.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; has a value that it cannot have in this entry: FORMAT.md lists those it can.</source>
        <translation>«&#xa0;%1&#xa0;» a une valeur impossible dans cette saisie&#xa0;: FORMAT.md indique les valeurs possibles.</translation>
    </message>
</context>
<context>
    <name>setfolio::FindingWords</name>
    <message>
        <source>No match is open: open it first, with its teams and its rulebook.</source>
        <translation>Aucun match n’est ouvert&#xa0;: ouvrez-le d’abord, avec ses équipes et son règlement.</translation>
    </message>
    <message>
        <source>The match is open already: another match goes into a file of its own.</source>
        <translation>Le match est déjà ouvert&#xa0;: un autre match va dans un fichier à part.</translation>
    </message>
    <message>
        <source>The match is closed: undo the closing to record more.</source>
        <translation>Le match est clos&#xa0;: annulez la clôture pour inscrire autre chose.</translation>
    </message>
    <message>
        <source>The match is won: close it, or undo the end of the last set.</source>
        <translation>Le match est gagné&#xa0;: clôturez-le, ou annulez la fin du dernier set.</translation>
    </message>
    <message>
        <source>The match is not won yet: play on, or record the end of the set that decides it.</source>
        <translation>Le match n’est pas encore gagné&#xa0;: jouez la suite, ou inscrivez la fin du set qui le décide.</translation>
    </message>
    <message>
        <source>Play is suspended: resume it first.</source>
        <translation>Le jeu est interrompu&#xa0;: reprenez-le d’abord.</translation>
    </message>
    <message>
        <source>Play has not been suspended: there is nothing to resume.</source>
        <translation>Le jeu n’a pas été interrompu&#xa0;: il n’y a rien à reprendre.</translation>
    </message>
    <message>
        <source>The set has started, and its toss and line-ups are settled: undo the start to change them.</source>
        <translation>Le set a commencé, son tirage au sort et ses formations sont fixés&#xa0;: annulez le début pour les changer.</translation>
    </message>
    <message>
        <source>The set is won: record its end, or undo the last point.</source>
        <translation>Le set est gagné&#xa0;: inscrivez sa fin, ou annulez le dernier point.</translation>
    </message>
    <message>
        <source>The set is not won yet: play on until the score decides it.</source>
        <translation>Le set n’est pas encore gagné&#xa0;: jouez jusqu’à ce que le score le décide.</translation>
    </message>
    <message>
        <source>It is not known who serves first: record the toss.</source>
        <translation>On ne sait pas qui sert en premier&#xa0;: inscrivez le tirage au sort.</translation>
    </message>
    <message>
        <source>%2 has no line-up yet: record it first.</source>
        <translation>%2 n’a pas encore de formation&#xa0;: inscrivez-la d’abord.</translation>
    </message>
    <message>
        <source>The rally is not decided: record who won it, or a replay, first.</source>
        <translation>L’échange n’est pas décidé&#xa0;: inscrivez d’abord qui l’a gagné, ou qu’il est à rejouer.</translation>
    </message>
    <message>
        <source>The serve is contacted already: record who won the rally, or a replay.</source>
        <translation>Le service est déjà frappé&#xa0;: inscrivez qui a gagné l’échange, ou qu’il est à rejouer.</translation>
    </message>
    <message>
        <source>Number %1 of %2 is not on court: name one of the six who are.</source>
        <translation>Le numéro %1 de %2 n’est pas sur le terrain&#xa0;: nommez l’un des six qui y sont.</translation>
    </message>
    <message>
        <source>The opening of the match cannot be struck: begin a new match instead.</source>
        <translation>L’ouverture du match ne peut pas être rayée&#xa0;: commencez plutôt un nouveau match.</translation>
    </message>
    <message>
        <source>The rulebook has no match of best of %5: choose a number of sets that it allows.</source>
        <translation>Le règlement n’a pas de match au meilleur des %5&#xa0;: choisissez un nombre de sets qu’il permet.</translation>
    </message>
    <message>
        <source>%1 is no shirt number: numbers go from 0 to 99.</source>
        <translation>%1 n’est pas un numéro de maillot&#xa0;: les numéros vont de 0 à 99.</translation>
    </message>
    <message>
        <source>No libero of %2 is serving: there is nothing to end.</source>
        <translation>Aucun libéro de %2 ne sert&#xa0;: il n’y a rien à terminer.</translation>
    </message>
    <message>
        <source>%2 does not have the serve: its libero can serve when it has won it back.</source>
        <translation>%2 n’a pas le service&#xa0;: son libéro pourra servir quand l’équipe l’aura regagné.</translation>
    </message>
    <message>
        <source>Libero %1 of %2 is not on court: there is nobody to go out.</source>
        <translation>Le libéro %1 de %2 n’est pas sur le terrain&#xa0;: il n’y a personne à faire sortir.</translation>
    </message>
    <message>
        <source>Entry %5 brought %2 no point in this set: name the first point to be taken back.</source>
        <translation>La saisie %5 n’a donné aucun point à %2 dans ce set&#xa0;: nommez le premier point à retirer.</translation>
    </message>
    <message>
        <source>%2 has not served in this set, so nobody of it has served wrongly: check the team.</source>
        <translation>%2 n’a pas servi dans ce set, personne n’y a donc servi à tort&#xa0;: vérifiez l’équipe.</translation>
    </message>
    <message>
        <source>This is signed and sealed: reopen it first, with the reason and the name of who says so.</source>
        <translation>C’est signé et scellé&#xa0;: rouvrez-le d’abord, avec le motif et le nom de qui le décide.</translation>
    </message>
    <message>
        <source>This is not sealed: there is nothing to reopen.</source>
        <translation>Ce n’est pas scellé&#xa0;: il n’y a rien à rouvrir.</translation>
    </message>
    <message>
        <source>This cannot be signed yet: end the set, or close the match, first.</source>
        <translation>On ne peut pas encore signer&#xa0;: terminez d’abord le set, ou clôturez le match.</translation>
    </message>
    <message>
        <source>Signatures still missing: %6. Let them sign, or record why they do not.</source>
        <translation>Signatures encore manquantes&#xa0;: %6. Faites signer, ou inscrivez pourquoi ce n’est pas signé.</translation>
    </message>
    <message>
        <source>A reason is needed here, and the name of who gives it: type them.</source>
        <translation>Il faut ici un motif, et le nom de qui le donne&#xa0;: saisissez-les.</translation>
    </message>
    <message>
        <source>The rulebook does not allow number %1 of %2: the player needs another shirt.</source>
        <translation>Le règlement n’admet pas le numéro %1 de %2&#xa0;: il faut un autre maillot à ce joueur.</translation>
    </message>
    <message>
        <source>Number %1 stands twice on the roster of %2: ask the coach which of the two is meant.</source>
        <translation>Le numéro %1 figure deux fois dans l’effectif de %2&#xa0;: demandez à l’entraîneur lequel des deux est le bon.</translation>
    </message>
    <message>
        <source>The match has begun, and the rulebook lets %2 change no number of its roster: tell the referee.</source>
        <translation>Le match a commencé, et le règlement ne permet plus à %2 de changer un numéro de son effectif&#xa0;: prévenez l’arbitre.</translation>
    </message>
    <message>
        <source>%2 names %5 as liberos, and the limit is %6: ask the coach who is not to be one.</source>
        <translation>%2 désigne %5 libéros, et la limite est de %6&#xa0;: demandez à l’entraîneur qui ne doit pas l’être.</translation>
    </message>
    <message>
        <source>Number %1 stands twice in the line-up of %2: ask the coach for the right slip.</source>
        <translation>Le numéro %1 figure deux fois dans la formation de %2&#xa0;: demandez à l’entraîneur la bonne feuille de position.</translation>
    </message>
    <message>
        <source>Number %1 in the line-up of %2 is not on the roster: check the slip, then the roster.</source>
        <translation>Le numéro %1 de la formation de %2 n’est pas dans l’effectif&#xa0;: vérifiez la feuille de position, puis l’effectif.</translation>
    </message>
    <message>
        <source>Number %1 is a libero of %2 and cannot be one of the six: ask the coach for the right slip.</source>
        <translation>Le numéro %1 est un libéro de %2 et ne peut pas être l’un des six&#xa0;: demandez à l’entraîneur la bonne feuille de position.</translation>
    </message>
    <message>
        <source>Libero %1 of %2 is not on the roster: check the slip, then the roster.</source>
        <translation>Le libéro %1 de %2 n’est pas dans l’effectif&#xa0;: vérifiez la feuille de position, puis l’effectif.</translation>
    </message>
    <message>
        <source>Number %1 of %2 is no libero of the match: ask the coach for the right slip.</source>
        <translation>Le numéro %1 de %2 n’est pas un libéro du match&#xa0;: demandez à l’entraîneur la bonne feuille de position.</translation>
    </message>
    <message>
        <source>Number %1 is named captain of %2 but is not in the team: check the slip.</source>
        <translation>Le numéro %1 est désigné capitaine de %2 mais n’est pas dans l’équipe&#xa0;: vérifiez la feuille de position.</translation>
    </message>
    <message>
        <source>Number %1 of %2 is not on court and cannot be playing captain: ask who is.</source>
        <translation>Le numéro %1 de %2 n’est pas sur le terrain et ne peut pas être capitaine en jeu&#xa0;: demandez qui l’est.</translation>
    </message>
    <message>
        <source>Number %1 of %2 is a libero and may not be playing captain: ask who is.</source>
        <translation>Le numéro %1 de %2 est libéro et n’a pas le droit d’être capitaine en jeu&#xa0;: demandez qui l’est.</translation>
    </message>
    <message>
        <source>%2 served first in the set before, and the first serve alternates: the other team serves.</source>
        <translation>%2 a servi en premier au set précédent, et le premier service alterne&#xa0;: c’est à l’autre équipe de servir.</translation>
    </message>
    <message>
        <source>By the rulebook %2 stands left of the table in this set: ask the second referee.</source>
        <translation>Selon le règlement, %2 est à gauche de la table dans ce set&#xa0;: demandez au second arbitre.</translation>
    </message>
    <message>
        <source>By the rulebook others sign before, still to sign: %5. Let them sign first.</source>
        <translation>Selon le règlement, d’autres signent avant&#x202f;; signatures encore attendues&#xa0;: %5. Faites-les signer d’abord.</translation>
    </message>
    <message>
        <source>Number %1 of %2 is out by %8 and may not play: tell the second referee.</source>
        <translation>Le numéro %1 de %2 est exclu du jeu (%8) et n’a pas le droit de jouer&#xa0;: prévenez le second arbitre.</translation>
    </message>
    <message>
        <source>Number %1 of %2 was replaced exceptionally and may not come back: tell the second referee.</source>
        <translation>Le numéro %1 de %2 a fait l’objet d’un remplacement exceptionnel et n’a pas le droit de revenir&#xa0;: prévenez le second arbitre.</translation>
    </message>
    <message>
        <source>Number %1 of %2 was given up as a libero and may not come back: tell the second referee.</source>
        <translation>Le numéro %1 de %2 n’est plus libéro et n’a pas le droit de revenir&#xa0;: prévenez le second arbitre.</translation>
    </message>
    <message>
        <source>Number %1 of %2 is not on the roster and may not come in: tell the second referee.</source>
        <translation>Le numéro %1 de %2 n’est pas dans l’effectif et n’a pas le droit d’entrer&#xa0;: prévenez le second arbitre.</translation>
    </message>
    <message>
        <source>Number %1 of %2 is on court already, in slot %3: check the number that comes in.</source>
        <translation>Le numéro %1 de %2 est déjà sur le terrain, au rang %3&#xa0;: vérifiez le numéro entrant.</translation>
    </message>
    <message>
        <source>Number %1 of %2 is a libero in this set and may not come in as a substitute.</source>
        <translation>Le numéro %1 de %2 est libéro dans ce set et n’a pas le droit d’entrer comme remplaçant.</translation>
    </message>
    <message>
        <source>Number %1 of %2 is one of the six, with a libero in her place: somebody else must come in.</source>
        <translation>Le numéro %1 de %2 est l’un des six, un libéro est à sa place&#xa0;: c’est un autre joueur qui doit entrer.</translation>
    </message>
    <message>
        <source>Number %1 of %2 is off court for libero %9: record the libero out first, then this.</source>
        <translation>Le numéro %1 de %2 est sorti pour le libéro %9&#xa0;: inscrivez d’abord la sortie du libéro, puis ceci.</translation>
    </message>
    <message>
        <source>Number %1 of %2 belongs to slot %3 and may not come in to slot %4: tell the second referee.</source>
        <translation>Le numéro %1 de %2 appartient au rang %3 et n’a pas le droit d’entrer au rang %4&#xa0;: prévenez le second arbitre.</translation>
    </message>
    <message>
        <source>Number %1 of %2 may not come in to slot %3: only number %9 may come back there.</source>
        <translation>Le numéro %1 de %2 n’a pas le droit d’entrer au rang %3&#xa0;: seul le numéro %9 peut y revenir.</translation>
    </message>
    <message>
        <source>Number %1 of %2 in slot %3 has no regular substitute left: tell the second referee.</source>
        <translation>Le numéro %1 de %2, au rang %3, n’a plus de remplaçant régulier&#xa0;: prévenez le second arbitre.</translation>
    </message>
    <message>
        <source>Number %1 would be player %5 of %2 in slot %3, and the limit is %6: tell the second referee.</source>
        <translation>Le numéro %1 serait le joueur n°&#xa0;%5 de %2 au rang %3, et la limite est de %6&#xa0;: prévenez le second arbitre.</translation>
    </message>
    <message>
        <source>This is substitution %5 of %2, and the limit is %6: tell the second referee.</source>
        <translation>C’est le remplacement n°&#xa0;%5 de %2, et la limite est de %6&#xa0;: prévenez le second arbitre.</translation>
    </message>
    <message>
        <source>%2 has substituted in this interruption and may not ask again yet: tell the second referee.</source>
        <translation>%2 a déjà fait un remplacement pendant cette interruption et n’a pas encore le droit d’en redemander&#xa0;: prévenez le second arbitre.</translation>
    </message>
    <message>
        <source>%2 was sanctioned for delay and may not substitute before a rally is completed: tell the referee.</source>
        <translation>%2 a été sanctionnée pour retard et n’a pas droit à un remplacement avant la fin d’un échange&#xa0;: prévenez l’arbitre.</translation>
    </message>
    <message>
        <source>The rulebook has no substitution before the start: %2 begins with its line-up.</source>
        <translation>Le règlement ne prévoit pas de remplacement avant le début&#xa0;: %2 commence avec sa formation.</translation>
    </message>
    <message>
        <source>The serve is repeated, and %2 may ask for nothing before it: tell the second referee.</source>
        <translation>Le service est à refaire, et %2 n’a droit à aucune demande avant&#xa0;: prévenez le second arbitre.</translation>
    </message>
    <message>
        <source>Number %1 of %2 can be replaced by a regular substitution: number %9 may come in.</source>
        <translation>Le numéro %1 de %2 peut faire l’objet d’un remplacement régulier&#xa0;: le numéro %9 peut entrer.</translation>
    </message>
    <message>
        <source>Libero %1 of %2 may come in only when nobody else can: number %9 may.</source>
        <translation>Le libéro %1 de %2 ne peut entrer que si personne d’autre ne le peut&#xa0;: le numéro %9 le peut.</translation>
    </message>
    <message>
        <source>%2 may not play with fewer than six: number %1 is replaced, or the team is incomplete.</source>
        <translation>%2 n’a pas le droit de jouer à moins de six&#xa0;: le numéro %1 est remplacé, ou l’équipe est incomplète.</translation>
    </message>
    <message>
        <source>Number %1 of %2 leaves no vacant place while number %9 may come in: record who does.</source>
        <translation>Le numéro %1 de %2 ne laisse pas de place vacante tant que le numéro %9 peut entrer&#xa0;: inscrivez qui entre.</translation>
    </message>
    <message>
        <source>This is time-out %5 of %2, and the limit is %6: tell the second referee.</source>
        <translation>C’est le temps mort n°&#xa0;%5 de %2, et la limite est de %6&#xa0;: prévenez le second arbitre.</translation>
    </message>
    <message>
        <source>Slot %3 of %2 is vacant and cannot serve: the rally is lost, record no serve.</source>
        <translation>Le rang %3 de %2 est vacant et ne peut pas servir&#xa0;: l’échange est perdu, inscrivez «&#xa0;sans service&#xa0;».</translation>
    </message>
    <message>
        <source>Number %1 of %2 is out by %8 and still on court: record who came in for her.</source>
        <translation>Le numéro %1 de %2 est exclu du jeu (%8) et encore sur le terrain&#xa0;: inscrivez qui est entré à sa place.</translation>
    </message>
    <message>
        <source>Libero %1 of %2 is in the front row, in slot %3: tell the second referee, and record her out.</source>
        <translation>Le libéro %1 de %2 est en ligne avant, au rang %3&#xa0;: prévenez le second arbitre, et inscrivez sa sortie.</translation>
    </message>
    <message>
        <source>Number %1 of %2 is a libero and may not serve: the player of the slot serves.</source>
        <translation>Le numéro %1 de %2 est libéro et n’a pas le droit de servir&#xa0;: c’est au joueur du rang de servir.</translation>
    </message>
    <message>
        <source>A libero of %2 has served in slot %3, so number %1 may not serve in slot %4: tell the second referee.</source>
        <translation>Un libéro de %2 a servi au rang %3, le numéro %1 n’a donc pas le droit de servir au rang %4&#xa0;: prévenez le second arbitre.</translation>
    </message>
    <message>
        <source>Number %1 is not a libero of %2 in this set: check the number.</source>
        <translation>Le numéro %1 n’est pas un libéro de %2 dans ce set&#xa0;: vérifiez le numéro.</translation>
    </message>
    <message>
        <source>Number %1 was seen serving for %2 in place of number %9: ask for the ruling, and record it.</source>
        <translation>Le numéro %1 a été vu au service pour %2 à la place du numéro %9&#xa0;: demandez la décision, et inscrivez-la.</translation>
    </message>
    <message>
        <source>Number %1 of %2 was the right server: check the number that served.</source>
        <translation>Le numéro %1 de %2 était le bon serveur&#xa0;: vérifiez le numéro qui a servi.</translation>
    </message>
    <message>
        <source>No serve of %2 is contacted in this term: say nothing before the contact, then tell the referee.</source>
        <translation>Aucun service de %2 n’est frappé dans ce passage&#xa0;: ne dites rien avant la frappe, puis prévenez l’arbitre.</translation>
    </message>
    <message>
        <source>The rulebook takes no points back from %2: record the ruling without them.</source>
        <translation>Le règlement ne retire aucun point à %2&#xa0;: inscrivez la décision sans retrait.</translation>
    </message>
    <message>
        <source>The opponents have contacted their next serve: the points of %2 stand.</source>
        <translation>L’équipe adverse a frappé son service suivant&#xa0;: les points de %2 sont acquis.</translation>
    </message>
    <message>
        <source>This is re-serve %5 in this term of %2, and the limit is %6: the rally is lost, record no serve.</source>
        <translation>C’est le service à refaire n°&#xa0;%5 dans ce passage de %2, et la limite est de %6&#xa0;: l’échange est perdu, inscrivez «&#xa0;sans service&#xa0;».</translation>
    </message>
    <message>
        <source>Number %1 of %2 is not named a libero here: check the number, or ask the coach.</source>
        <translation>Le numéro %1 de %2 n’est pas désigné libéro ici&#xa0;: vérifiez le numéro, ou demandez à l’entraîneur.</translation>
    </message>
    <message>
        <source>Libero %9 of %2 is on court already: record her out first, or one for the other.</source>
        <translation>Le libéro %9 de %2 est déjà sur le terrain&#xa0;: inscrivez d’abord sa sortie, ou l’un pour l’autre.</translation>
    </message>
    <message>
        <source>Number %1 of %2 stands in the front row, and a libero replaces the back row only.</source>
        <translation>Le numéro %1 de %2 est en ligne avant, et un libéro ne remplace qu’un arrière.</translation>
    </message>
    <message>
        <source>No rally lies between two replacements of liberos of %2 (number %1): tell the second referee.</source>
        <translation>Il n’y a pas d’échange entre deux remplacements de libéro de %2 (numéro %1)&#xa0;: prévenez le second arbitre.</translation>
    </message>
    <message>
        <source>Libero %1 of %2 may not come in for a libero: only number %9 may.</source>
        <translation>Le libéro %1 de %2 n’a pas le droit d’entrer pour un libéro&#xa0;: seul le numéro %9 le peut.</translation>
    </message>
    <message>
        <source>%2 may have no new libero for number %1: it plays on with whom it has left.</source>
        <translation>%2 n’a pas droit à un nouveau libéro pour le numéro %1&#xa0;: l’équipe continue avec ceux qui lui restent.</translation>
    </message>
    <message>
        <source>Number %1 of %2 is one of the six and may not become a libero: name one of the bench.</source>
        <translation>Le numéro %1 de %2 est l’un des six et n’a pas le droit de devenir libéro&#xa0;: nommez quelqu’un du banc.</translation>
    </message>
    <message>
        <source>The rulebook has no such sanction (%7 of %2, %8): ask the referee which one was given.</source>
        <translation>Le règlement n’a pas cette sanction (%2, %7&#xa0;: %8)&#xa0;: demandez à l’arbitre laquelle a été donnée.</translation>
    </message>
    <message>
        <source>%7 of %2 has had as much; the next sanction is %8: ask the referee which one was given.</source>
        <translation>%2, %7&#xa0;: cette sanction a déjà été donnée&#x202f;; la suivante est&#xa0;: %8. Demandez à l’arbitre laquelle a été donnée.</translation>
    </message>
    <message>
        <source>%2 has had its warning: the next sanction is %8, so ask the referee which one was given.</source>
        <translation>%2 a déjà eu son avertissement. La sanction suivante est&#xa0;: %8. Demandez à l’arbitre laquelle a été donnée.</translation>
    </message>
    <message>
        <source>%7 of %2 is out already by %8: ask the referee who was meant.</source>
        <translation>%2, %7&#xa0;: déjà exclu du jeu (%8). Demandez à l’arbitre qui est visé.</translation>
    </message>
    <message>
        <source>Number %1 is not on the roster of %2: ask the referee who was sanctioned.</source>
        <translation>Le numéro %1 n’est pas dans l’effectif de %2&#xa0;: demandez à l’arbitre qui a été sanctionné.</translation>
    </message>
    <message>
        <source>The next sanction of %2 for delay is the %8: ask the referee which one was given.</source>
        <translation>Pour %2, la sanction suivante est&#xa0;: %8. Demandez à l’arbitre laquelle a été donnée.</translation>
    </message>
    <message>
        <source>Such a request of %2 is a delay, and the next sanction is the %8: tell the second referee.</source>
        <translation>Une telle demande de %2 est un retard, et la sanction suivante est&#xa0;: %8. Prévenez le second arbitre.</translation>
    </message>
    <message>
        <source>Sides change in the deciding set when a team has %5 points: wait until then.</source>
        <translation>Dans le set décisif, on change de terrain quand une équipe a %5 points&#xa0;: attendez ce moment.</translation>
    </message>
    <message>
        <source>The teams have changed sides in this set already: ask the second referee.</source>
        <translation>Les équipes ont déjà changé de terrain dans ce set&#xa0;: demandez au second arbitre.</translation>
    </message>
    <message>
        <source>A default loses the match, not one set: record it for the match, or %2 as incomplete.</source>
        <translation>Le forfait d’une équipe absente fait perdre le match, pas un set&#xa0;: inscrivez-le pour le match, ou %2 comme incomplète.</translation>
    </message>
    <message>
        <source>No set has begun, and %2 has nothing to keep: a team that cannot begin loses by default.</source>
        <translation>Aucun set n’a commencé, et %2 n’a rien à garder&#xa0;: une équipe qui ne peut pas commencer est forfait.</translation>
    </message>
    <message>
        <source>By the rulebook the set goes on as it stood: ask the referee before it is played again.</source>
        <translation>Selon le règlement, le set reprend en l’état&#xa0;: demandez à l’arbitre avant de le rejouer.</translation>
    </message>
    <message>
        <source>Play was broken off %5 hours ago, more than %6: the match is played anew, in a file of its own.</source>
        <translation>Le jeu a été interrompu il y a %5 heures, plus de %6&#xa0;: le match est à rejouer, dans un fichier à part.</translation>
    </message>
    <message>
        <source>A late replacement of %2 is not let pass now, and the sanction is the %8: tell the second referee.</source>
        <translation>Un remplacement tardif de libéro de %2 n’est plus toléré, et la sanction est&#xa0;: %8. Prévenez le second arbitre.</translation>
    </message>
    <message>
        <source>Libero %1 of %2 may not come in for number %9, who was sent off: ask who else comes in.</source>
        <translation>Le libéro %1 de %2 n’a pas le droit d’entrer pour le numéro %9, qui a été exclu&#xa0;: demandez qui d’autre entre.</translation>
    </message>
    <message>
        <source>The slip of %2 named a libero, %1, whom nobody wears: the team has no libero in this set.</source>
        <translation>La feuille de position de %2 nommait un libéro %1, numéro que personne ne porte&#xa0;: l’équipe n’a pas de libéro dans ce set.</translation>
    </message>
    <message>
        <source>Number %1</source>
        <translation>numéro %1</translation>
    </message>
    <message>
        <source>The %1</source>
        <translation>%1</translation>
    </message>
    <message>
        <source>The set has not started: record its start first, or, for the set before, undo its end.</source>
        <translation>Le set n’a pas commencé&#xa0;: inscrivez d’abord son début ou, pour le set précédent, annulez sa fin.</translation>
    </message>
    <message>
        <source>There is no entry %5 that stands: name one that does.</source>
        <translation>Il n’y a pas de saisie %5 en vigueur&#xa0;: indiquez-en une qui l’est.</translation>
    </message>
    <message>
        <source>Play has not been resumed with number %1 of %2 on court: tell the referee, nothing is lost yet.</source>
        <translation>Le jeu n’a pas repris avec le numéro %1 de %2 sur le terrain&#xa0;: prévenez l’arbitre, rien n’est encore perdu.</translation>
    </message>
    <message>
        <source>The set is played again with the same line-ups: put the six of %2 where they stood before.</source>
        <translation>Le set est rejoué avec les mêmes formations&#xa0;: remettez les six de %2 là où elles se tenaient.</translation>
    </message>
    <message>
        <source>Number %1 is not on the roster of %2: look again who serves.</source>
        <translation>Le numéro %1 n’est pas dans l’effectif de %2&#xa0;: regardez à nouveau qui sert.</translation>
    </message>
    <message>
        <source>The match has begun: by the rulebook other numbers on the roster of %2 cost a point, so tell the referee.</source>
        <translation>Le match a commencé&#xa0;: selon le règlement, d’autres numéros dans l’effectif de %2 coûtent un point&#x202f;; prévenez l’arbitre.</translation>
    </message>
    <message>
        <source>Only points of this term of %2 may be taken back, those from entry %5 on.</source>
        <translation>Seuls les points de ce passage de %2 peuvent être retirés, à partir de la saisie %5.</translation>
    </message>
    <message>
        <source>The rulebook has no change of sides within this set: ask the second referee.</source>
        <translation>Le règlement ne prévoit pas de changement de terrain pendant ce set&#xa0;: demandez au second arbitre.</translation>
    </message>
    <message>
        <source>Only points of this term of %2 may be taken back, and it has won none: record the ruling alone.</source>
        <translation>Seuls les points de ce passage de %2 peuvent être retirés, et il n’en a aucun&#xa0;: notez la décision seule.</translation>
    </message>
    <message>
        <source>There is no set %5 that has ended: name one that has, or record a forfeit of this set.</source>
        <translation>Aucun set %5 n’est terminé&#xa0;: indiquez un set terminé, ou inscrivez un forfait pour ce set.</translation>
    </message>
    <message>
        <source>%2 cannot keep %5 points of a set it loses: here it keeps %6 at most.</source>
        <translation>%2 ne peut pas garder %5 points d’un set perdu&#xa0;: ici, %6 au plus.</translation>
    </message>
    <message>
        <source>Number %1 of %2 was ruled illegal and still stands in slot %3: strike her substitution, entry %5.</source>
        <translation>Le numéro %1 de %2 a été jugé irrégulier et se tient encore au rang %3&#xa0;: rayez son remplacement, la saisie %5.</translation>
    </message>
    <message>
        <source>This line-up of %2 has been changed since: strike the changes, or correct the line-up in its place.</source>
        <translation>Cette formation de %2 a changé depuis&#xa0;: rayez les changements, ou corrigez la formation à sa place.</translation>
    </message>
    <message>
        <source>Time-outs and substitutions since then go too: strike entry %5 and those after it, then rule.</source>
        <translation>Les temps morts et les remplacements depuis lors tombent aussi&#xa0;: rayez la saisie %5 et celles qui suivent, puis notez la décision.</translation>
    </message>
    <message>
        <source>Number %1 of %2, ruled illegal, still stands in slot %3: strike entry %5, or record number %9 in for her.</source>
        <translation>Le numéro %1 de %2, jugé irrégulier, se tient encore au rang %3&#xa0;: rayez la saisie %5, ou notez que le numéro %9 entre pour elle.</translation>
    </message>
</context>
<context>
    <name>setfolio::FrameDialog</name>
    <message>
        <source>Cancel</source>
        <translation>Annuler</translation>
    </message>
</context>
<context>
    <name>setfolio::HelpDialog</name>
    <message>
        <source>How things are entered</source>
        <translation>Comment saisir</translation>
    </message>
    <message>
        <source>Print…</source>
        <translation>Imprimer…</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Fermer</translation>
    </message>
    <message>
        <source>Print</source>
        <translation>Imprimer</translation>
    </message>
</context>
<context>
    <name>setfolio::KeysDialog</name>
    <message>
        <source>Change keys</source>
        <translation>Changer les touches</translation>
    </message>
    <message>
        <source>They are kept on this machine and shown wherever they act.</source>
        <translation>Elles sont gardées sur cet ordinateur et affichées partout où elles agissent.</translation>
    </message>
    <message>
        <source>Keep these keys</source>
        <translation>Garder ces touches</translation>
    </message>
    <message>
        <source>What can be asked of the table, and its keys</source>
        <translation>Ce qu’on peut demander à la table, et ses touches</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Objet</translation>
    </message>
    <message>
        <source>Key</source>
        <translation>Touche</translation>
    </message>
    <message>
        <source>New key: press it here</source>
        <translation>Nouvelle touche&#xa0;: appuyez ici</translation>
    </message>
    <message>
        <source>No key</source>
        <translation>Aucune touche</translation>
    </message>
    <message>
        <source>Built-in key</source>
        <translation>Touche d’origine</translation>
    </message>
    <message>
        <source>All built-in keys</source>
        <translation>Toutes d’origine</translation>
    </message>
    <message>
        <source>It has no key now; its menu has it.</source>
        <translation>Plus de touche maintenant&#x202f;; la commande reste au menu.</translation>
    </message>
    <message>
        <source>Its key is %1 now.</source>
        <translation>Sa touche est maintenant %1.</translation>
    </message>
    <message>
        <source>All keys are the built-in ones again.</source>
        <translation>Toutes les touches sont de nouveau celles d’origine.</translation>
    </message>
</context>
<context>
    <name>setfolio::LadderField</name>
    <message>
        <source>The levels in use, the cards shown, and whether the opponents get a point.</source>
        <translation>Les degrés employés, les cartons montrés, et si l’équipe adverse reçoit un point.</translation>
    </message>
    <message>
        <source>point</source>
        <translation>point</translation>
    </message>
    <message>
        <source>Cards shown, %1</source>
        <translation>Cartons montrés, %1</translation>
    </message>
    <message>
        <source>The opponents get a point, %1</source>
        <translation>L’équipe adverse reçoit un point, %1</translation>
    </message>
</context>
<context>
    <name>setfolio::LineUpDialog</name>
    <message>
        <source>Line-ups for set %1</source>
        <translation>Formations du set %1</translation>
    </message>
    <message>
        <source>As on the slip, by court position, seen from behind the team. A whole number goes on to the next place by itself.</source>
        <translation>Comme sur la feuille de position, vu de derrière l’équipe. Un numéro complet passe de lui-même à la case suivante.</translation>
    </message>
    <message>
        <source>Record line-up</source>
        <translation>Inscrire la formation</translation>
    </message>
    <message>
        <source>Record both line-ups</source>
        <translation>Inscrire les deux formations</translation>
    </message>
    <message>
        <source>Record line-up of %1</source>
        <translation>Inscrire la formation de %1</translation>
    </message>
    <message>
        <source>%1: 00 is no shirt number.</source>
        <translation>%1&#xa0;: 00 n’est pas un numéro de maillot.</translation>
    </message>
    <message>
        <source>%1: still empty: %2.</source>
        <translation>%1&#xa0;: encore vide&#xa0;: %2.</translation>
    </message>
</context>
<context>
    <name>setfolio::LineUpPanel</name>
    <message>
        <source>Roster’s liberos</source>
        <translation>Libéros</translation>
    </message>
    <message>
        <source>Puts in the liberos that the roster marks</source>
        <translation>Met les libéros indiqués dans l’effectif</translation>
    </message>
    <message>
        <source>As in set %1</source>
        <translation>Comme au set %1</translation>
    </message>
    <message>
        <source>Puts in the six, the captain and the liberos with which the team began set %1</source>
        <translation>Met les six, le capitaine et les libéros avec lesquels l’équipe a commencé le set %1</translation>
    </message>
    <message>
        <source>net</source>
        <translation>filet</translation>
    </message>
    <message>
        <source>Left empty: the captain of the roster</source>
        <translation>Laissé vide&#xa0;: le capitaine de l’effectif</translation>
    </message>
    <message>
        <source>Captain</source>
        <translation>Capitaine</translation>
    </message>
    <message>
        <source>Libero</source>
        <translation>Libéro</translation>
    </message>
    <message>
        <source>Libero %1</source>
        <translation>Libéro %1</translation>
    </message>
    <message>
        <source>Rotate</source>
        <translation>Tourner</translation>
    </message>
    <message>
        <source>Turns the six by one place, as when the team wins the serve</source>
        <translation>Tourne les six d’une place, comme quand l’équipe gagne le service</translation>
    </message>
</context>
<context>
    <name>setfolio::MatchCloseDialog</name>
    <message>
        <source>Set</source>
        <translation>Set</translation>
    </message>
    <message>
        <source>Started</source>
        <translation>Début</translation>
    </message>
    <message>
        <source>Finished</source>
        <translation>Fin</translation>
    </message>
    <message>
        <source>Minutes</source>
        <translation>Minutes</translation>
    </message>
    <message>
        <source>Close the match</source>
        <translation>Clôturer le match</translation>
    </message>
    <message>
        <source>Read result and remarks once more with the referee. After this, only an undo opens the match again.</source>
        <translation>Relisez le résultat et les remarques avec l’arbitre. Ensuite, seule une annulation rouvre le match.</translation>
    </message>
    <message>
        <source>wins the match, in sets</source>
        <translation>gagne le match, en sets</translation>
    </message>
    <message>
        <source>sets</source>
        <translation>sets</translation>
    </message>
</context>
<context>
    <name>setfolio::MatchPage</name>
    <message>
        <source>Competition</source>
        <translation>Compétition</translation>
    </message>
    <message>
        <source>Division</source>
        <translation>Division</translation>
    </message>
    <message>
        <source>Match number</source>
        <translation>Numéro du match</translation>
    </message>
    <message>
        <source>Venue</source>
        <translation>Lieu</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Date</translation>
    </message>
    <message>
        <source>Scheduled time (may be empty)</source>
        <translation>Heure prévue (facultatif)</translation>
    </message>
    <message>
        <source>Best of</source>
        <translation>Au meilleur des</translation>
    </message>
    <message>
        <source>Best of %1 sets</source>
        <translation>Au meilleur des %1 sets</translation>
    </message>
</context>
<context>
    <name>setfolio::Names</name>
    <message>
        <source>home team</source>
        <translation>domicile</translation>
    </message>
    <message>
        <source>visitors</source>
        <translation>visiteurs</translation>
    </message>
</context>
<context>
    <name>setfolio::NewMatchDialog</name>
    <message>
        <source>New match</source>
        <translation>Nouveau match</translation>
    </message>
    <message>
        <source>Start the match</source>
        <translation>Commencer le match</translation>
    </message>
    <message>
        <source>Begin empty</source>
        <translation>Repartir à vide</translation>
    </message>
    <message>
        <source>Drops what was typed for the match that was cancelled</source>
        <translation>Efface ce qui avait été saisi pour le match abandonné</translation>
    </message>
    <message>
        <source>The home team needs a name.</source>
        <translation>L’équipe à domicile doit avoir un nom.</translation>
    </message>
    <message>
        <source>The visitors need a name.</source>
        <translation>Les visiteurs doivent avoir un nom.</translation>
    </message>
    <message>
        <source>The home team’s short name needs two to five letters or digits.</source>
        <translation>Le nom court de l’équipe à domicile doit avoir de deux à cinq lettres ou chiffres.</translation>
    </message>
    <message>
        <source>The visitors’ short name needs two to five letters or digits.</source>
        <translation>Le nom court des visiteurs doit avoir de deux à cinq lettres ou chiffres.</translation>
    </message>
    <message>
        <source>Both teams have the same short name: change one of them.</source>
        <translation>Les deux équipes ont le même nom court&#xa0;: changez l’un des deux.</translation>
    </message>
    <message>
        <source>Home roster. %1</source>
        <translation>Effectif de l’équipe à domicile. %1</translation>
    </message>
    <message>
        <source>Visitors’ roster. %1</source>
        <translation>Effectif des visiteurs. %1</translation>
    </message>
    <message>
        <source>Match</source>
        <translation>Match</translation>
    </message>
    <message>
        <source>Home team</source>
        <translation>Domicile</translation>
    </message>
    <message>
        <source>Visitors</source>
        <translation>Visiteurs</translation>
    </message>
    <message>
        <source>Officials and crew</source>
        <translation>Officiels et table</translation>
    </message>
    <message>
        <source>Alt+%1</source>
        <translation>Alt+%1</translation>
    </message>
    <message>
        <source>Other file…</source>
        <translation>Autre fichier…</translation>
    </message>
    <message>
        <source>Next</source>
        <translation>Suivant</translation>
    </message>
    <message>
        <source>Keep the match in</source>
        <translation>Garder le match dans</translation>
    </message>
    <message>
        <source>Matches (*.setfolio)</source>
        <translation>Matchs (*.setfolio)</translation>
    </message>
    <message>
        <source>The scheduled time cannot be read: type it like 18:30 or 6:30 pm, or leave it empty.</source>
        <translation>L’heure prévue est illisible&#xa0;: écrivez-la comme 18:30 ou 6:30 pm, ou laissez-la vide.</translation>
    </message>
    <message>
        <source>A file of that name is there already: choose another one.</source>
        <translation>Un fichier de ce nom existe déjà&#xa0;: choisissez-en un autre.</translation>
    </message>
    <message numerus="yes">
        <source>%n to mend</source>
        <translation>
            <numerusform>%n à corriger</numerusform>
            <numerusform>%n à corriger</numerusform>
        </translation>
    </message>
    <message>
        <source>Kept in %1</source>
        <translation>Gardé dans %1</translation>
    </message>
    <message>
        <source>Give the team a name first: the book finds it by that.</source>
        <translation>Donnez d’abord un nom à l’équipe&#xa0;: c’est par lui que le carnet la retrouve.</translation>
    </message>
    <message>
        <source>%1 is in the team book now.</source>
        <translation>%1 est maintenant dans le carnet d’équipes.</translation>
    </message>
    <message>
        <source>The match cannot start yet. %1</source>
        <translation>Le match ne peut pas encore commencer. %1</translation>
    </message>
</context>
<context>
    <name>setfolio::NumberStepper</name>
    <message>
        <source>One less</source>
        <translation>Un de moins</translation>
    </message>
    <message>
        <source>One more</source>
        <translation>Un de plus</translation>
    </message>
    <message>
        <source>Number, %1</source>
        <translation>Nombre, %1</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 à %2</translation>
    </message>
    <message>
        <source>%1 seconds</source>
        <translation>%1 secondes</translation>
    </message>
</context>
<context>
    <name>setfolio::OfficialsDialog</name>
    <message>
        <source>Officials</source>
        <translation>Officiels</translation>
    </message>
    <message>
        <source>They take the place of those named before.</source>
        <translation>Ils remplacent ceux nommés auparavant.</translation>
    </message>
    <message>
        <source>Record the officials</source>
        <translation>Inscrire les officiels</translation>
    </message>
</context>
<context>
    <name>setfolio::OfficialsPage</name>
    <message>
        <source>Every name may be left out, and written by pen on the printed sheet.</source>
        <translation>Chaque nom peut être omis, puis écrit au stylo sur la feuille imprimée.</translation>
    </message>
    <message>
        <source>none named</source>
        <translation>aucun nom</translation>
    </message>
    <message numerus="yes">
        <source>%n named</source>
        <translation>
            <numerusform>%n nom</numerusform>
            <numerusform>%n noms</numerusform>
        </translation>
    </message>
    <message>
        <source>As in the last match</source>
        <translation>Comme au dernier match</translation>
    </message>
</context>
<context>
    <name>setfolio::OneOfWords</name>
    <message>
        <source>yes</source>
        <translation>oui</translation>
    </message>
    <message>
        <source>no</source>
        <translation>non</translation>
    </message>
</context>
<context>
    <name>setfolio::OpenWords</name>
    <message>
        <source>%1 – %2</source>
        <translation>%1 – %2</translation>
    </message>
    <message>
        <source>%1 %2–%3 %4 in sets</source>
        <translation>%1 %2–%3 %4 en sets</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>The file stays as it is. Lines before the damage can be saved as a new match file, to go on in.</source>
        <translation>Le fichier reste tel quel. Les lignes avant le dommage peuvent être enregistrées dans un nouveau fichier de match, pour y continuer.</translation>
    </message>
    <message>
        <source>Save a copy of the whole lines…</source>
        <translation>Copier les lignes intactes…</translation>
    </message>
    <message>
        <source>Save a copy of the whole lines</source>
        <translation>Copier les lignes intactes</translation>
    </message>
    <message>
        <source>%1-whole.%2</source>
        <translation>%1-intact.%2</translation>
    </message>
    <message>
        <source>Open a match file</source>
        <translation>Ouvrir un fichier de match</translation>
    </message>
    <message>
        <source>Matches (*.setfolio)</source>
        <translation>Matchs (*.setfolio)</translation>
    </message>
</context>
<context>
    <name>setfolio::OrderStrip</name>
    <message>
        <source>empty</source>
        <translation>vide</translation>
    </message>
    <message>
        <source>Serving order: %1</source>
        <translation>Ordre au service&#xa0;: %1</translation>
    </message>
    <message>
        <source>The serving order is known after the toss</source>
        <translation>L’ordre au service est connu après le tirage au sort</translation>
    </message>
    <message>
        <source>Serving order</source>
        <translation>Ordre au service</translation>
    </message>
    <message>
        <source>The serving order is known after the toss.</source>
        <translation>L’ordre au service est connu après le tirage au sort.</translation>
    </message>
</context>
<context>
    <name>setfolio::PageView</name>
    <message>
        <source>Page %1 of %2</source>
        <translation>Page %1 sur %2</translation>
    </message>
</context>
<context>
    <name>setfolio::PositionField</name>
    <message>
        <source>Number in court position %1</source>
        <translation>Numéro en position %1</translation>
    </message>
    <message>
        <source>slot %1</source>
        <translation>rang %1</translation>
    </message>
</context>
<context>
    <name>setfolio::PracticeDialog</name>
    <message>
        <source>Practice</source>
        <translation>Exercice</translation>
    </message>
    <message>
        <source>A set is told to you as it would be seen from the table. Enter it; then compare your sheet with the right one.</source>
        <translation>Un set vous est raconté comme on le verrait de la table. Saisissez-le, puis comparez votre feuille avec la feuille juste.</translation>
    </message>
    <message>
        <source>Begin</source>
        <translation>Commencer</translation>
    </message>
    <message>
        <source>Print the story…</source>
        <translation>Imprimer le récit…</translation>
    </message>
    <message>
        <source>How fast</source>
        <translation>À quelle vitesse</translation>
    </message>
    <message>
        <source>Step by step</source>
        <translation>Pas à pas</translation>
    </message>
    <message>
        <source>12 seconds each</source>
        <translation>Toutes les 12 secondes</translation>
    </message>
    <message>
        <source>7 seconds each</source>
        <translation>Toutes les 7 secondes</translation>
    </message>
    <message>
        <source>4 seconds each</source>
        <translation>Toutes les 4 secondes</translation>
    </message>
</context>
<context>
    <name>setfolio::Preview</name>
    <message>
        <source>Print</source>
        <translation>Imprimer</translation>
    </message>
    <message>
        <source>Sent to %1.</source>
        <translation>Envoyé à %1.</translation>
    </message>
    <message>
        <source>The printer %1 did not take the sheets: look whether it is ready, or save them as a PDF.</source>
        <translation>L’imprimante %1 n’a pas pris les feuilles&#xa0;: regardez si elle est prête, ou enregistrez-les en PDF.</translation>
    </message>
    <message>
        <source>Paper</source>
        <translation>Papier</translation>
    </message>
    <message>
        <source>Letter</source>
        <translation>Lettre</translation>
    </message>
    <message>
        <source>A4</source>
        <translation>A4</translation>
    </message>
    <message>
        <source>Inks</source>
        <translation>Encres</translation>
    </message>
    <message>
        <source>PDF</source>
        <translation>PDF</translation>
    </message>
    <message>
        <source>Archive</source>
        <translation>Archive</translation>
    </message>
    <message>
        <source>PDF/A-1b: reads the same in many years</source>
        <translation>PDF/A-1b&#xa0;: se lira pareil dans bien des années</translation>
    </message>
    <message>
        <source>Plain</source>
        <translation>Simple</translation>
    </message>
    <message>
        <source>Print…</source>
        <translation>Imprimer…</translation>
    </message>
    <message>
        <source>Save as PDF…</source>
        <translation>Enregistrer en PDF…</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Fermer</translation>
    </message>
    <message>
        <source>Save as PDF</source>
        <translation>Enregistrer en PDF</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>%1 is set to %2, and the sheets are drawn for %3. Which paper is in it?</source>
        <translation>%1 est réglée sur %2, et les feuilles sont dessinées pour %3. Quel papier contient-elle&#x202f;?</translation>
    </message>
    <message>
        <source>%1 cannot print near enough to the edge of this paper: up to %2 mm of the sheet would be missing there. Another paper or printer may have room for all of it.</source>
        <translation>%1 ne peut pas imprimer assez près du bord de ce papier&#xa0;: il y manquerait jusqu’à %2 mm de la feuille. Un autre papier ou une autre imprimante aura peut-être la place.</translation>
    </message>
    <message>
        <source>Print all the same</source>
        <translation>Imprimer quand même</translation>
    </message>
    <message>
        <source>Saved: %1</source>
        <translation>Enregistré&#xa0;: %1</translation>
    </message>
    <message>
        <source>The PDF could not be made: nothing was saved.</source>
        <translation>Le PDF n’a pas pu être produit&#xa0;: rien n’a été enregistré.</translation>
    </message>
    <message>
        <source>Numbers only</source>
        <translation>Numéros seuls</translation>
    </message>
    <message>
        <source>Leaves out all names of persons</source>
        <translation>Omet tous les noms de personnes</translation>
    </message>
</context>
<context>
    <name>setfolio::QrView</name>
    <message>
        <source>QR code: %1</source>
        <translation>Code QR&#xa0;: %1</translation>
    </message>
</context>
<context>
    <name>setfolio::ReopenDialog</name>
    <message>
        <source>Who says so</source>
        <translation>Qui le décide</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Motif</translation>
    </message>
</context>
<context>
    <name>setfolio::ReviewPage</name>
    <message>
        <source>What stands on the sheet</source>
        <translation>Ce qui figure sur la feuille</translation>
    </message>
</context>
<context>
    <name>setfolio::ReviewWords</name>
    <message>
        <source>Against the rulebook, and let stand by nobody</source>
        <translation>Contraire au règlement, et maintenu par personne</translation>
    </message>
    <message>
        <source>Nothing is open against the rulebook</source>
        <translation>Rien ne reste contraire au règlement</translation>
    </message>
    <message>
        <source>Let stand on the referee&apos;s word</source>
        <translation>Maintenu par décision de l’arbitre</translation>
    </message>
    <message>
        <source>Nothing was let stand against the rulebook</source>
        <translation>Rien n’a été maintenu contre le règlement</translation>
    </message>
    <message>
        <source>%1 Reason: %2.</source>
        <translation>%1 Motif&#xa0;: %2.</translation>
    </message>
    <message>
        <source>Points taken back</source>
        <translation>Points retirés</translation>
    </message>
    <message>
        <source>No points were taken back</source>
        <translation>Aucun point n’a été retiré</translation>
    </message>
    <message>
        <source>%1: point %2</source>
        <translation>%1&#xa0;: point %2</translation>
    </message>
    <message>
        <source>Corrections</source>
        <translation>Corrections</translation>
    </message>
    <message>
        <source>Nothing was corrected</source>
        <translation>Rien n’a été corrigé</translation>
    </message>
    <message>
        <source>Sanctions</source>
        <translation>Sanctions</translation>
    </message>
    <message>
        <source>No sanctions</source>
        <translation>Pas de sanctions</translation>
    </message>
    <message>
        <source>%1 Struck.</source>
        <translation>%1 Rayé.</translation>
    </message>
    <message>
        <source>Order of service</source>
        <translation>Ordre au service</translation>
    </message>
    <message>
        <source>vacant</source>
        <translation>vacante</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>%1: libero %2 has served in slot %3</source>
        <translation>%1&#xa0;: le libéro %2 a servi au rang %3</translation>
    </message>
    <message>
        <source>Substitutions</source>
        <translation>Remplacements</translation>
    </message>
    <message>
        <source>No substitutions</source>
        <translation>Pas de remplacements</translation>
    </message>
    <message>
        <source>%1: %2 for %3, at %4</source>
        <translation>%1&#xa0;: %2 pour %3, à %4</translation>
    </message>
    <message>
        <source>%1: %2 for %3, at %4, exceptional</source>
        <translation>%1&#xa0;: %2 pour %3, à %4, exceptionnel</translation>
    </message>
    <message>
        <source>Time-outs</source>
        <translation>Temps morts</translation>
    </message>
    <message>
        <source>No time-outs</source>
        <translation>Pas de temps morts</translation>
    </message>
    <message>
        <source>%1: at %2</source>
        <translation>%1&#xa0;: à %2</translation>
    </message>
    <message>
        <source>Remarks</source>
        <translation>Remarques</translation>
    </message>
    <message>
        <source>No other remarks</source>
        <translation>Pas d’autres remarques</translation>
    </message>
    <message>
        <source>Set %1, cancelled at %2</source>
        <translation>Set %1, annulé à %2</translation>
    </message>
    <message>
        <source>Set %1, not decided, %2</source>
        <translation>Set %1, non décidé, %2</translation>
    </message>
    <message>
        <source>Set %1: %2, won by %3</source>
        <translation>Set %1&#xa0;: %2, gagné par %3</translation>
    </message>
    <message>
        <source>%1 wins the match</source>
        <translation>%1 gagne le match</translation>
    </message>
    <message>
        <source>%1 wins set %2</source>
        <translation>%1 gagne le set %2</translation>
    </message>
    <message>
        <source>Before the sets</source>
        <translation>Avant les sets</translation>
    </message>
</context>
<context>
    <name>setfolio::RosterDialog</name>
    <message>
        <source>Roster of %1</source>
        <translation>Effectif de %1</translation>
    </message>
    <message>
        <source>It takes the place of the earlier one; what is on the sheet of a set already stays.</source>
        <translation>Il remplace l’effectif précédent&#x202f;; ce qui figure déjà sur la feuille d’un set reste.</translation>
    </message>
    <message>
        <source>Record the roster</source>
        <translation>Inscrire l’effectif</translation>
    </message>
    <message>
        <source>may be empty</source>
        <translation>facultatif</translation>
    </message>
    <message>
        <source>Coach</source>
        <translation>Entraîneur</translation>
    </message>
</context>
<context>
    <name>setfolio::RosterEditor</name>
    <message>
        <source>Roster</source>
        <translation>Effectif</translation>
    </message>
    <message>
        <source>Line %1: “%2” is no shirt number. Numbers go from 0 to 99.</source>
        <translation>Ligne %1&#xa0;: «&#xa0;%2&#xa0;» n’est pas un numéro de maillot. Les numéros vont de 0 à 99.</translation>
    </message>
    <message>
        <source>Line %1: 00 is no shirt number, 0 is one.</source>
        <translation>Ligne %1&#xa0;: 00 n’est pas un numéro de maillot, 0 en est un.</translation>
    </message>
    <message>
        <source>Line %1: the rulebook does not allow number %2, only %3 to %4.</source>
        <translation>Ligne %1&#xa0;: le règlement n’admet pas le numéro %2, seulement de %3 à %4.</translation>
    </message>
    <message>
        <source>Line %1: the name is longer than %2 characters.</source>
        <translation>Ligne %1&#xa0;: le nom dépasse %2 caractères.</translation>
    </message>
    <message>
        <source>The text had more than %1 players: those from line %2 on were left out.</source>
        <translation>Le texte avait plus de %1 joueurs&#xa0;: ceux à partir de la ligne %2 ont été laissés de côté.</translation>
    </message>
    <message>
        <source>The text opens a quotation mark in line %1 that is never closed: check the last player.</source>
        <translation>Le texte ouvre à la ligne %1 un guillemet jamais fermé&#xa0;: vérifiez le dernier joueur.</translation>
    </message>
    <message>
        <source>There is no player in that text.</source>
        <translation>Il n’y a aucun joueur dans ce texte.</translation>
    </message>
    <message>
        <source>Paste a roster</source>
        <translation>Coller un effectif</translation>
    </message>
    <message>
        <source>Read a CSV file…</source>
        <translation>Lire un fichier CSV…</translation>
    </message>
    <message>
        <source>Bring back the roster before</source>
        <translation>Reprendre l’effectif précédent</translation>
    </message>
    <message>
        <source>Copy the rows in a spreadsheet: number, name, captain, libero. Numbers alone are a proper roster.</source>
        <translation>Copiez les lignes d’un tableur&#xa0;: numéro, nom, capitaine, libéro. Des numéros seuls suffisent pour un effectif.</translation>
    </message>
    <message>
        <source>Read a roster</source>
        <translation>Lire un effectif</translation>
    </message>
    <message>
        <source>Text with columns (*.csv *.tsv *.txt);;All files (*)</source>
        <translation>Texte en colonnes (*.csv *.tsv *.txt);;Tous les fichiers (*)</translation>
    </message>
    <message>
        <source>%1 is too large to be a roster.</source>
        <translation>%1 est trop gros pour être un effectif.</translation>
    </message>
    <message>
        <source>%1 cannot be read (%2).</source>
        <translation>%1 ne peut pas être lu (%2).</translation>
    </message>
    <message>
        <source>Save as CSV…</source>
        <translation>Enregistrer en CSV…</translation>
    </message>
    <message>
        <source>Save the roster</source>
        <translation>Enregistrer l’effectif</translation>
    </message>
    <message>
        <source>Text with columns (*.csv)</source>
        <translation>Texte en colonnes (*.csv)</translation>
    </message>
    <message>
        <source>Saved: %1</source>
        <translation>Enregistré&#xa0;: %1</translation>
    </message>
    <message>
        <source>Line %1 has no number: give it one, or empty the line.</source>
        <translation>La ligne %1 n’a pas de numéro&#xa0;: donnez-lui-en un, ou videz-la.</translation>
    </message>
    <message>
        <source>Line %1: %2 has no number: add one, or empty the line.</source>
        <translation>Ligne %1&#xa0;: %2 n’a pas de numéro&#xa0;: ajoutez-en un, ou videz la ligne.</translation>
    </message>
    <message>
        <source>Line %1: number %2 stands in line %3 too: change one of them.</source>
        <translation>Ligne %1&#xa0;: le numéro %2 figure aussi à la ligne %3&#xa0;: changez l’un des deux.</translation>
    </message>
    <message>
        <source>Line %1: the captain is named in line %2 already: take one of the marks away.</source>
        <translation>Ligne %1&#xa0;: le capitaine est déjà désigné à la ligne %2&#xa0;: retirez l’une des marques.</translation>
    </message>
</context>
<context>
    <name>setfolio::RosterModel</name>
    <message>
        <source>Number</source>
        <translation>Numéro</translation>
    </message>
    <message>
        <source>Name (may be empty)</source>
        <translation>Nom (facultatif)</translation>
    </message>
    <message>
        <source>Captain</source>
        <translation>Capitaine</translation>
    </message>
    <message>
        <source>Libero</source>
        <translation>Libéro</translation>
    </message>
</context>
<context>
    <name>setfolio::RulebookChoice</name>
    <message>
        <source>Rulebook</source>
        <translation>Règlement</translation>
    </message>
    <message>
        <source>Adapt…</source>
        <translation>Adapter…</translation>
    </message>
    <message>
        <source>Read from a file…</source>
        <translation>Lire dans un fichier…</translation>
    </message>
    <message>
        <source>All settings</source>
        <translation>Tous les paramètres</translation>
    </message>
    <message>
        <source>Open points</source>
        <translation>Points ouverts</translation>
    </message>
    <message>
        <source>Read a rulebook from a file</source>
        <translation>Lire un règlement dans un fichier</translation>
    </message>
    <message>
        <source>Rulebooks (*.json)</source>
        <translation>Règlements (*.json)</translation>
    </message>
    <message>
        <source>from a file</source>
        <translation>d’un fichier</translation>
    </message>
    <message>
        <source>adapted</source>
        <translation>adapté</translation>
    </message>
</context>
<context>
    <name>setfolio::RulebookDialog</name>
    <message>
        <source>Adapt a rulebook</source>
        <translation>Adapter un règlement</translation>
    </message>
    <message>
        <source>Keep this rulebook</source>
        <translation>Garder ce règlement</translation>
    </message>
    <message>
        <source>Find</source>
        <translation>Chercher</translation>
    </message>
    <message>
        <source>What you have changed is not kept yet: press Cancel or Escape once more to drop it.</source>
        <translation>Vos changements ne sont pas encore gardés&#xa0;: appuyez encore une fois sur Annuler ou Échap pour les abandonner.</translation>
    </message>
    <message>
        <source>All</source>
        <translation>Tous</translation>
    </message>
    <message>
        <source>Only what differs</source>
        <translation>Différences seules</translation>
    </message>
    <message>
        <source>Only open points</source>
        <translation>Points ouverts seuls</translation>
    </message>
    <message>
        <source>Find a setting</source>
        <translation>Chercher un paramètre</translation>
    </message>
    <message>
        <source>Name of your own, such as %1</source>
        <translation>Un nom à vous, comme %1</translation>
    </message>
    <message>
        <source>High school (NFHS), Estuary League</source>
        <translation>Lycées (NFHS), Ligue de l’Estuaire</translation>
    </message>
    <message>
        <source>Write to a file…</source>
        <translation>Écrire dans un fichier…</translation>
    </message>
    <message>
        <source>Remove from this machine</source>
        <translation>Retirer de cet ordinateur</translation>
    </message>
    <message>
        <source>Only what differs (%1)</source>
        <translation>Différences seules (%1)</translation>
    </message>
    <message>
        <source>Only open points (%1)</source>
        <translation>Points ouverts seuls (%1)</translation>
    </message>
    <message>
        <source>The rulebook needs a name of its own.</source>
        <translation>Le règlement doit avoir un nom à lui.</translation>
    </message>
    <message>
        <source>Another rulebook has that name: give this one a name of its own.</source>
        <translation>Un autre règlement porte ce nom&#xa0;: donnez à celui-ci un nom à lui.</translation>
    </message>
    <message>
        <source>Write the rulebook to</source>
        <translation>Écrire le règlement dans</translation>
    </message>
    <message>
        <source>Rulebooks (*.json)</source>
        <translation>Règlements (*.json)</translation>
    </message>
    <message>
        <source>The rulebook’s file cannot be removed.</source>
        <translation>Le fichier du règlement ne peut pas être supprimé.</translation>
    </message>
</context>
<context>
    <name>setfolio::RulebookRows</name>
    <message>
        <source>Setting, and where its value comes from</source>
        <translation>Paramètre, et d’où vient sa valeur</translation>
    </message>
    <message>
        <source>Published</source>
        <translation>Publié</translation>
    </message>
    <message>
        <source>Here</source>
        <translation>Ici</translation>
    </message>
    <message>
        <source>changed</source>
        <translation>changé</translation>
    </message>
    <message>
        <source>look it up before the season</source>
        <translation>à vérifier avant la saison</translation>
    </message>
</context>
<context>
    <name>setfolio::RulebookTable</name>
    <message>
        <source>changed</source>
        <translation>changé</translation>
    </message>
    <message>
        <source>look it up</source>
        <translation>à vérifier</translation>
    </message>
    <message>
        <source>Settings of the rulebook</source>
        <translation>Paramètres du règlement</translation>
    </message>
</context>
<context>
    <name>setfolio::RulebookView</name>
    <message>
        <source>What the rulebook says, with its sources</source>
        <translation>Ce que dit le règlement, avec ses sources</translation>
    </message>
</context>
<context>
    <name>setfolio::RulebookWords</name>
    <message>
        <source>Points that win a set</source>
        <translation>Points pour gagner un set</translation>
    </message>
    <message>
        <source>Points that win the deciding set</source>
        <translation>Points pour gagner le set décisif</translation>
    </message>
    <message>
        <source>Lead that is needed</source>
        <translation>Écart nécessaire</translation>
    </message>
    <message>
        <source>Cap: a set ends at this score</source>
        <translation>Plafond&#xa0;: un set s’arrête à ce score</translation>
    </message>
    <message>
        <source>Best of</source>
        <translation>Au meilleur des</translation>
    </message>
    <message>
        <source>Interval between sets</source>
        <translation>Intervalle entre les sets</translation>
    </message>
    <message>
        <source>Longer interval</source>
        <translation>Intervalle prolongé</translation>
    </message>
    <message>
        <source>The longer interval follows set</source>
        <translation>L’intervalle prolongé suit le set</translation>
    </message>
    <message>
        <source>Added to an interval for the check of line-ups</source>
        <translation>Ajouté à un intervalle pour contrôler les formations</translation>
    </message>
    <message>
        <source>The teams change sides</source>
        <translation>Les équipes changent de terrain</translation>
    </message>
    <message>
        <source>Change of sides in the deciding set, at</source>
        <translation>Changement de terrain dans le set décisif, à</translation>
    </message>
    <message>
        <source>A team that does not come or will not play</source>
        <translation>Une équipe qui ne vient pas ou refuse de jouer</translation>
    </message>
    <message>
        <source>A team that cannot play on</source>
        <translation>Une équipe qui ne peut pas continuer</translation>
    </message>
    <message>
        <source>Hours within which a match goes on where it stood</source>
        <translation>Heures dans lesquelles un match reprend en l’état</translation>
    </message>
    <message>
        <source>Resumed on another court</source>
        <translation>Reprise sur un autre terrain</translation>
    </message>
    <message>
        <source>Protest</source>
        <translation>Réclamation</translation>
    </message>
    <message>
        <source>Time to serve after the signal</source>
        <translation>Temps pour servir après le signal</translation>
    </message>
    <message>
        <source>Re-serves in a term of service</source>
        <translation>Services à refaire par passage au service</translation>
    </message>
    <message>
        <source>A serve before the signal</source>
        <translation>Un service avant le signal</translation>
    </message>
    <message>
        <source>Requests between a re-serve&apos;s signal and the serve</source>
        <translation>Demandes entre le signal d’un service à refaire et le service</translation>
    </message>
    <message>
        <source>Requests between a replay&apos;s signal and the serve</source>
        <translation>Demandes entre le signal d’un échange à rejouer et le service</translation>
    </message>
    <message>
        <source>Of a wrong server the scorer speaks</source>
        <translation>Le marqueur signale un mauvais serveur</translation>
    </message>
    <message>
        <source>A wrong server costs</source>
        <translation>Un mauvais serveur coûte</translation>
    </message>
    <message>
        <source>A wrong server&apos;s points are taken back</source>
        <translation>Les points d’un mauvais serveur sont retirés</translation>
    </message>
    <message>
        <source>Time-outs and substitutions meanwhile are taken back too</source>
        <translation>Les temps morts et remplacements faits entre-temps sont aussi annulés</translation>
    </message>
    <message>
        <source>A point given to the wrong team is put right</source>
        <translation>Un point donné à la mauvaise équipe se corrige</translation>
    </message>
    <message>
        <source>Substitutions, a team in a set</source>
        <translation>Remplacements, par équipe et par set</translation>
    </message>
    <message>
        <source>A player may come in</source>
        <translation>Un joueur peut entrer</translation>
    </message>
    <message>
        <source>Players who may share a slot in a set</source>
        <translation>Joueurs pouvant partager un rang dans un set</translation>
    </message>
    <message>
        <source>Substitutions told to the second referee</source>
        <translation>Remplacements annoncés au second arbitre</translation>
    </message>
    <message>
        <source>Substitutions before the set starts</source>
        <translation>Remplacements avant le début du set</translation>
    </message>
    <message>
        <source>A second request for substitution</source>
        <translation>Une seconde demande de remplacement</translation>
    </message>
    <message>
        <source>After a delay no substitution before a rally</source>
        <translation>Après un retard, pas de remplacement avant un échange</translation>
    </message>
    <message>
        <source>An illegal substitution, seen before play, is</source>
        <translation>Un remplacement illégal, vu avant le jeu, est</translation>
    </message>
    <message>
        <source>A substitution asked for when none is left is</source>
        <translation>Un remplacement demandé quand il n’en reste plus est</translation>
    </message>
    <message>
        <source>An illegal substitution costs</source>
        <translation>Un remplacement illégal coûte</translation>
    </message>
    <message>
        <source>Points of an illegal substitution are taken back</source>
        <translation>Les points d’un remplacement illégal sont retirés</translation>
    </message>
    <message>
        <source>An illegal substitution counts</source>
        <translation>Un remplacement illégal compte</translation>
    </message>
    <message>
        <source>An exceptional substitution counts</source>
        <translation>Un remplacement exceptionnel compte</translation>
    </message>
    <message>
        <source>After an exceptional substitution the player is out for</source>
        <translation>Après un remplacement exceptionnel, le joueur ne joue plus pour</translation>
    </message>
    <message>
        <source>A libero comes in by an exceptional substitution</source>
        <translation>Un libéro entre par remplacement exceptionnel</translation>
    </message>
    <message>
        <source>Players needed to start a set</source>
        <translation>Joueurs nécessaires pour commencer un set</translation>
    </message>
    <message>
        <source>A team that cannot have six on court</source>
        <translation>Une équipe qui ne peut pas aligner six joueurs</translation>
    </message>
    <message>
        <source>Time to decide about an injured player</source>
        <translation>Temps de décision pour un joueur blessé</translation>
    </message>
    <message>
        <source>Time-outs, a team in a set</source>
        <translation>Temps morts, par équipe et par set</translation>
    </message>
    <message>
        <source>Length of a time-out</source>
        <translation>Durée d’un temps mort</translation>
    </message>
    <message>
        <source>Warning in a time-out, after</source>
        <translation>Signal pendant un temps mort, après</translation>
    </message>
    <message>
        <source>A time-out may end early</source>
        <translation>Un temps mort peut être écourté</translation>
    </message>
    <message>
        <source>Time-outs told to the second referee</source>
        <translation>Temps morts annoncés au second arbitre</translation>
    </message>
    <message>
        <source>A time-out asked for when none is left is</source>
        <translation>Un temps mort demandé quand il n’en reste plus est</translation>
    </message>
    <message>
        <source>Liberos, at most</source>
        <translation>Libéros, au plus</translation>
    </message>
    <message>
        <source>Liberos are named for</source>
        <translation>Les libéros sont désignés pour</translation>
    </message>
    <message>
        <source>A libero may still be named at the check of the line-up</source>
        <translation>Un libéro peut encore être désigné au contrôle de la formation</translation>
    </message>
    <message>
        <source>The libero serves</source>
        <translation>Le libéro sert</translation>
    </message>
    <message>
        <source>A completed rally between two libero replacements</source>
        <translation>Un échange terminé entre deux remplacements de libéro</translation>
    </message>
    <message>
        <source>For the libero comes in</source>
        <translation>À la place du libéro entre</translation>
    </message>
    <message>
        <source>A libero replacement after the signal</source>
        <translation>Un remplacement de libéro après le signal</translation>
    </message>
    <message>
        <source>An illegal libero replacement, after the contact, is</source>
        <translation>Un remplacement illégal de libéro, après la frappe, est</translation>
    </message>
    <message>
        <source>Another player may be made libero</source>
        <translation>Un autre joueur peut devenir libéro</translation>
    </message>
    <message>
        <source>When a libero is disqualified the team goes on</source>
        <translation>Quand un libéro est disqualifié, l’équipe continue</translation>
    </message>
    <message>
        <source>A wrong libero&apos;s number on the line-up</source>
        <translation>Un numéro de libéro erroné sur la formation</translation>
    </message>
    <message>
        <source>A libero may be captain</source>
        <translation>Un libéro peut être capitaine</translation>
    </message>
    <message>
        <source>Sanctions for misconduct</source>
        <translation>Sanctions pour conduite incorrecte</translation>
    </message>
    <message>
        <source>A person&apos;s sanctions are remembered for</source>
        <translation>Les sanctions d’une personne valent pour</translation>
    </message>
    <message>
        <source>A warning is given once to</source>
        <translation>Un avertissement se donne une fois à</translation>
    </message>
    <message>
        <source>A person&apos;s next sanction is a step higher</source>
        <translation>La sanction suivante d’une personne monte d’un degré</translation>
    </message>
    <message>
        <source>The head coach stays seated</source>
        <translation>L’entraîneur principal reste assis</translation>
    </message>
    <message>
        <source>Sanctions for delay</source>
        <translation>Sanctions pour retard</translation>
    </message>
    <message>
        <source>Delays are counted for</source>
        <translation>Les retards comptent pour</translation>
    </message>
    <message>
        <source>A delay is written</source>
        <translation>Un retard s’écrit</translation>
    </message>
    <message>
        <source>An improper request</source>
        <translation>Une demande non fondée</translation>
    </message>
    <message>
        <source>Roster due before the end of the warm-up by</source>
        <translation>Effectif à remettre avant la fin de l’échauffement, délai</translation>
    </message>
    <message>
        <source>A late roster is</source>
        <translation>Un effectif tardif est</translation>
    </message>
    <message>
        <source>A late change of the roster</source>
        <translation>Un changement tardif de l’effectif</translation>
    </message>
    <message>
        <source>Captain and coach sign the team list</source>
        <translation>Capitaine et entraîneur signent la liste d’équipe</translation>
    </message>
    <message>
        <source>First line-up due before the end of the warm-up by</source>
        <translation>Première formation à remettre avant la fin de l’échauffement, délai</translation>
    </message>
    <message>
        <source>First line-up may be changed until before the end by</source>
        <translation>Première formation modifiable jusqu’avant la fin, délai</translation>
    </message>
    <message>
        <source>Later line-ups due before the end of the interval by</source>
        <translation>Formations suivantes à remettre avant la fin de l’intervalle, délai</translation>
    </message>
    <message>
        <source>A late line-up is</source>
        <translation>Une formation tardive est</translation>
    </message>
    <message>
        <source>Putting right a starter&apos;s number nobody wears counts</source>
        <translation>La correction d’un numéro de départ que personne ne porte compte</translation>
    </message>
    <message>
        <source>A player who is not on the roster</source>
        <translation>Un joueur qui n’est pas dans l’effectif</translation>
    </message>
    <message>
        <source>Lowest shirt number</source>
        <translation>Plus petit numéro de maillot</translation>
    </message>
    <message>
        <source>Highest shirt number</source>
        <translation>Plus grand numéro de maillot</translation>
    </message>
    <message>
        <source>Slot I of the receiving team holds</source>
        <translation>Le rang I de l’équipe en réception contient</translation>
    </message>
    <message>
        <source>Exit scores are written</source>
        <translation>Les scores de sortie s’écrivent</translation>
    </message>
    <message>
        <source>A re-serve is written RS</source>
        <translation>Un service à refaire s’écrit RS</translation>
    </message>
    <message>
        <source>A point on one&apos;s own serve is in the running score</source>
        <translation>Un point sur son propre service est, dans la marche du score,</translation>
    </message>
    <message>
        <source>The captain is marked by</source>
        <translation>Le capitaine est signalé par</translation>
    </message>
    <message>
        <source>The slot the libero serves in gets a triangle</source>
        <translation>Le rang où le libéro sert reçoit un triangle</translation>
    </message>
    <message>
        <source>A substitution is written with the score</source>
        <translation>Un remplacement s’écrit avec le score</translation>
    </message>
    <message>
        <source>Inks, taken in turn</source>
        <translation>Encres, à tour de rôle</translation>
    </message>
    <message>
        <source>Who signs, in this order</source>
        <translation>Qui signe, dans cet ordre</translation>
    </message>
    <message>
        <source>It is signed at the end of</source>
        <translation>On signe après</translation>
    </message>
    <message>
        <source>Set point is told to the second referee</source>
        <translation>La balle de set est annoncée au second arbitre</translation>
    </message>
    <message>
        <source>Match point is told to the second referee</source>
        <translation>La balle de match est annoncée au second arbitre</translation>
    </message>
    <message>
        <source>The change of sides in the deciding set is told</source>
        <translation>Le changement de terrain du set décisif est annoncé</translation>
    </message>
    <message>
        <source>The first serve alternates from set to set</source>
        <translation>Le premier service alterne d’un set à l’autre</translation>
    </message>
    <message>
        <source>The toss before the first set</source>
        <translation>Le tirage au sort avant le premier set</translation>
    </message>
    <message>
        <source>A new toss before the deciding set</source>
        <translation>Un nouveau tirage au sort avant le set décisif</translation>
    </message>
    <message>
        <source>A rally that is stopped is played over</source>
        <translation>Un échange arrêté est à rejouer</translation>
    </message>
    <message>
        <source>When scores disagree the score sheet counts</source>
        <translation>Si les scores diffèrent, la feuille de match fait foi</translation>
    </message>
    <message>
        <source>A wrong server costs one point and the serve, whoever won the rally</source>
        <translation>Un mauvais serveur coûte un point et le service, quel que soit le gagnant de l’échange</translation>
    </message>
    <message>
        <source>Six different numbers, all on the roster</source>
        <translation>Six numéros différents, tous dans l’effectif</translation>
    </message>
    <message>
        <source>No libero among the six</source>
        <translation>Pas de libéro parmi les six</translation>
    </message>
    <message>
        <source>The serving order is kept through the set</source>
        <translation>L’ordre au service est gardé pendant tout le set</translation>
    </message>
    <message>
        <source>A player comes back only to her own slot</source>
        <translation>Un joueur ne revient qu’à son propre rang</translation>
    </message>
    <message>
        <source>Only players of the roster come in</source>
        <translation>Seuls des joueurs de l’effectif entrent</translation>
    </message>
    <message>
        <source>Several substitutions are made pair by pair</source>
        <translation>Plusieurs remplacements se font paire par paire</translation>
    </message>
    <message>
        <source>An injured player is replaced lawfully if she can be, else by anyone off court</source>
        <translation>Un joueur blessé est remplacé légalement si c’est possible, sinon par n’importe qui hors du terrain</translation>
    </message>
    <message>
        <source>A libero plays in the back row only</source>
        <translation>Un libéro ne joue qu’en ligne arrière</translation>
    </message>
    <message>
        <source>A libero may come or go when a rally was broken off for an injury</source>
        <translation>Un libéro peut entrer ou sortir quand un échange a été interrompu pour blessure</translation>
    </message>
    <message>
        <source>The playing captain is on court</source>
        <translation>Le capitaine en jeu est sur le terrain</translation>
    </message>
    <message>
        <source>A libero who cannot play on is replaced</source>
        <translation>Un libéro qui ne peut pas continuer est remplacé</translation>
    </message>
    <message>
        <source>The libero&apos;s replacements are kept on a sheet of their own</source>
        <translation>Les remplacements de libéro se notent sur une feuille à part</translation>
    </message>
    <message>
        <source>Sanctions before and between sets count in the next set</source>
        <translation>Les sanctions avant et entre les sets comptent au set suivant</translation>
    </message>
    <message>
        <source>The score of a time-out is written with the team first that asked</source>
        <translation>Le score d’un temps mort s’écrit avec l’équipe demandeuse d’abord</translation>
    </message>
    <message>
        <source>No number stands twice on a roster</source>
        <translation>Aucun numéro ne figure deux fois dans un effectif</translation>
    </message>
    <message>
        <source>position 2</source>
        <translation>position 2</translation>
    </message>
    <message>
        <source>position 1</source>
        <translation>position 1</translation>
    </message>
    <message>
        <source>never</source>
        <translation>jamais</translation>
    </message>
    <message>
        <source>in one slot a set</source>
        <translation>à un seul rang par set</translation>
    </message>
    <message>
        <source>the set</source>
        <translation>le set</translation>
    </message>
    <message>
        <source>the match</source>
        <translation>le match</translation>
    </message>
    <message>
        <source>after each set</source>
        <translation>après chaque set</translation>
    </message>
    <message>
        <source>after each set, before the deciding one by toss</source>
        <translation>après chaque set, avant le décisif par tirage au sort</translation>
    </message>
    <message>
        <source>after the second set only</source>
        <translation>après le deuxième set seulement</translation>
    </message>
    <message>
        <source>keeps its points; the opponents get what they need</source>
        <translation>garde ses points&#x202f;; l’équipe adverse reçoit ce qu’il lui faut</translation>
    </message>
    <message>
        <source>loses every set to nought</source>
        <translation>perd tous les sets à zéro</translation>
    </message>
    <message>
        <source>a set goes on at its score</source>
        <translation>un set reprend à son score</translation>
    </message>
    <message>
        <source>a set is played anew</source>
        <translation>un set est à rejouer</translation>
    </message>
    <message>
        <source>none</source>
        <translation>néant</translation>
    </message>
    <message>
        <source>before the next serve</source>
        <translation>avant le service suivant</translation>
    </message>
    <message>
        <source>decided during the match</source>
        <translation>tranchée pendant le match</translation>
    </message>
    <message>
        <source>told at once, written after the match</source>
        <translation>annoncée aussitôt, écrite après le match</translation>
    </message>
    <message>
        <source>is a re-serve</source>
        <translation>est à refaire</translation>
    </message>
    <message>
        <source>is replayed</source>
        <translation>donne un échange à rejouer</translation>
    </message>
    <message>
        <source>after the contact</source>
        <translation>après la frappe</translation>
    </message>
    <message>
        <source>before the serve</source>
        <translation>avant le service</translation>
    </message>
    <message>
        <source>the points of the present term of service</source>
        <translation>les points du passage au service en cours</translation>
    </message>
    <message>
        <source>all points since the fault</source>
        <translation>tous les points depuis la faute</translation>
    </message>
    <message>
        <source>no points</source>
        <translation>aucun point</translation>
    </message>
    <message>
        <source>until the opponents contact their next serve</source>
        <translation>jusqu’à la frappe du service suivant par l’équipe adverse</translation>
    </message>
    <message>
        <source>as long as the moment is known</source>
        <translation>tant que le moment est connu</translation>
    </message>
    <message>
        <source>in one slot, again and again</source>
        <translation>à un seul rang, autant de fois que voulu</translation>
    </message>
    <message>
        <source>once out, once back, same partner</source>
        <translation>une sortie, un retour, même partenaire</translation>
    </message>
    <message>
        <source>is allowed in the same dead ball</source>
        <translation>permise dans la même interruption</translation>
    </message>
    <message>
        <source>is allowed after a completed rally</source>
        <translation>permise après un échange terminé</translation>
    </message>
    <message>
        <source>is allowed after a rally or a time-out</source>
        <translation>permise après un échange ou un temps mort</translation>
    </message>
    <message>
        <source>while any is left</source>
        <translation>tant qu’il en reste</translation>
    </message>
    <message>
        <source>only when nobody else may</source>
        <translation>seulement si personne d’autre ne le peut</translation>
    </message>
    <message>
        <source>only when nobody else may, and not for a player sent off</source>
        <translation>seulement si personne d’autre ne le peut, et pas pour un joueur exclu</translation>
    </message>
    <message>
        <source>plays on with a vacant place</source>
        <translation>continue avec une place vacante</translation>
    </message>
    <message>
        <source>is incomplete and loses</source>
        <translation>est incomplète et perd</translation>
    </message>
    <message>
        <source>a delay</source>
        <translation>un retard</translation>
    </message>
    <message>
        <source>an improper request</source>
        <translation>une demande non fondée</translation>
    </message>
    <message>
        <source>is a delay before the contact, a fault after it</source>
        <translation>est un retard avant la frappe, une faute après</translation>
    </message>
    <message>
        <source>is let pass once, then a delay penalty</source>
        <translation>toléré une fois, puis pénalité pour retard</translation>
    </message>
    <message>
        <source>is warned in words once, then a delay</source>
        <translation>avertissement verbal une fois, puis un retard</translation>
    </message>
    <message>
        <source>a fault of alignment</source>
        <translation>une faute de position</translation>
    </message>
    <message>
        <source>an illegal substitution</source>
        <translation>un remplacement illégal</translation>
    </message>
    <message>
        <source>only whom she replaced</source>
        <translation>seulement celui qu’il remplaçait</translation>
    </message>
    <message>
        <source>whom she replaced, or the other libero</source>
        <translation>celui qu’il remplaçait, ou l’autre libéro</translation>
    </message>
    <message>
        <source>when a libero cannot play on</source>
        <translation>quand un libéro ne peut pas continuer</translation>
    </message>
    <message>
        <source>when no libero is left</source>
        <translation>quand il ne reste plus de libéro</translation>
    </message>
    <message>
        <source>with the other libero, if any</source>
        <translation>avec l’autre libéro, s’il y en a un</translation>
    </message>
    <message>
        <source>with the other libero, or a new one</source>
        <translation>avec l’autre libéro, ou un nouveau</translation>
    </message>
    <message>
        <source>is corrected</source>
        <translation>est corrigé</translation>
    </message>
    <message>
        <source>means no libero that set</source>
        <translation>prive l’équipe de libéro dans ce set</translation>
    </message>
    <message>
        <source>warning</source>
        <translation>avertissement</translation>
    </message>
    <message>
        <source>penalty</source>
        <translation>pénalité</translation>
    </message>
    <message>
        <source>expulsion</source>
        <translation>expulsion</translation>
    </message>
    <message>
        <source>disqualification</source>
        <translation>disqualification</translation>
    </message>
    <message>
        <source>yellow</source>
        <translation>jaune</translation>
    </message>
    <message>
        <source>red</source>
        <translation>rouge</translation>
    </message>
    <message>
        <source>red and yellow together</source>
        <translation>rouge et jaune ensemble</translation>
    </message>
    <message>
        <source>red and yellow apart</source>
        <translation>rouge et jaune séparés</translation>
    </message>
    <message>
        <source>each person</source>
        <translation>chaque personne</translation>
    </message>
    <message>
        <source>the team</source>
        <translation>l’équipe</translation>
    </message>
    <message>
        <source>after a warning</source>
        <translation>après un avertissement</translation>
    </message>
    <message>
        <source>after a penalty</source>
        <translation>après une pénalité</translation>
    </message>
    <message>
        <source>YUD, RUD</source>
        <translation>YUD, RUD</translation>
    </message>
    <message>
        <source>D, by column</source>
        <translation>D, par colonne</translation>
    </message>
    <message>
        <source>is recorded once, then a delay</source>
        <translation>inscrite une fois, puis un retard</translation>
    </message>
    <message>
        <source>is a delay at once</source>
        <translation>est aussitôt un retard</translation>
    </message>
    <message>
        <source>told the second referee</source>
        <translation>à signaler au second arbitre</translation>
    </message>
    <message>
        <source>is free</source>
        <translation>est libre</translation>
    </message>
    <message>
        <source>costs a point</source>
        <translation>coûte un point</translation>
    </message>
    <message>
        <source>is not allowed</source>
        <translation>n’est pas permis</translation>
    </message>
    <message>
        <source>is added</source>
        <translation>est ajouté</translation>
    </message>
    <message>
        <source>is added, for a point</source>
        <translation>est ajouté, contre un point</translation>
    </message>
    <message>
        <source>may not play</source>
        <translation>n’a pas le droit de jouer</translation>
    </message>
    <message>
        <source>costs all that was won with her</source>
        <translation>coûte tout ce qui a été gagné avec lui</translation>
    </message>
    <message>
        <source>ringed</source>
        <translation>cerclé</translation>
    </message>
    <message>
        <source>slashed</source>
        <translation>barré</translation>
    </message>
    <message>
        <source>a C</source>
        <translation>un C</translation>
    </message>
    <message>
        <source>a ring</source>
        <translation>un cercle</translation>
    </message>
    <message>
        <source>a place of its own</source>
        <translation>une case à part</translation>
    </message>
    <message>
        <source>scorer</source>
        <translation>marqueur</translation>
    </message>
    <message>
        <source>assistant scorer</source>
        <translation>marqueur assistant</translation>
    </message>
    <message>
        <source>captains</source>
        <translation>capitaines</translation>
    </message>
    <message>
        <source>coaches</source>
        <translation>entraîneurs</translation>
    </message>
    <message>
        <source>second referee</source>
        <translation>second arbitre</translation>
    </message>
    <message>
        <source>first referee</source>
        <translation>premier arbitre</translation>
    </message>
    <message>
        <source>Sets and match</source>
        <translation>Sets et match</translation>
    </message>
    <message>
        <source>Serve and wrong server</source>
        <translation>Service et mauvais serveur</translation>
    </message>
    <message>
        <source>Substitutions</source>
        <translation>Remplacements</translation>
    </message>
    <message>
        <source>Time-outs</source>
        <translation>Temps morts</translation>
    </message>
    <message>
        <source>Libero</source>
        <translation>Libéro</translation>
    </message>
    <message>
        <source>Sanctions and requests</source>
        <translation>Sanctions et demandes</translation>
    </message>
    <message>
        <source>Rosters and line-ups</source>
        <translation>Effectifs et formations</translation>
    </message>
    <message>
        <source>Score sheet and notices</source>
        <translation>Feuille de match et annonces</translation>
    </message>
    <message>
        <source>Rules without a value</source>
        <translation>Règles sans valeur</translation>
    </message>
    <message>
        <source>any</source>
        <translation>au choix</translation>
    </message>
    <message>
        <source>no limit</source>
        <translation>pas de limite</translation>
    </message>
    <message>
        <source>%1 min</source>
        <translation>%1&#xa0;min</translation>
    </message>
    <message>
        <source>%1 s</source>
        <translation>%1&#xa0;s</translation>
    </message>
    <message>
        <source>%1, point</source>
        <translation>%1, point</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>oui</translation>
    </message>
    <message>
        <source>no</source>
        <translation>non</translation>
    </message>
    <message>
        <source>%1. Look it up before the season.</source>
        <translation>%1. À vérifier avant la saison.</translation>
    </message>
    <message>
        <source>Grade A: the rule-making body&apos;s own text.</source>
        <translation>Niveau A&#xa0;: texte de l’instance qui fait les règles.</translation>
    </message>
    <message>
        <source>Grade B: teaching text of an association.</source>
        <translation>Niveau B&#xa0;: texte de formation d’une association.</translation>
    </message>
    <message>
        <source>No open points: everything has its source.</source>
        <translation>Pas de point ouvert&#xa0;: tout a sa source.</translation>
    </message>
    <message>
        <source>choose at least one number.</source>
        <translation>choisissez au moins un nombre.</translation>
    </message>
    <message>
        <source>it cannot be below the points that win a set.</source>
        <translation>ce ne peut être moins que les points pour gagner un set.</translation>
    </message>
    <message>
        <source>it cannot come after the end of the time-out.</source>
        <translation>ce ne peut être après la fin du temps mort.</translation>
    </message>
    <message>
        <source>it cannot be below the lowest one.</source>
        <translation>ce ne peut être moins que le plus petit.</translation>
    </message>
    <message>
        <source>%1: this value cannot be used. Put it back, or choose another one.</source>
        <translation>%1&#xa0;: cette valeur ne convient pas. Remettez l’ancienne, ou choisissez-en une autre.</translation>
    </message>
    <message>
        <source>%1 is not a rulebook: choose a file that was written as one.</source>
        <translation>%1 n’est pas un règlement&#xa0;: choisissez un fichier écrit comme tel.</translation>
    </message>
    <message>
        <source>%1 cannot be used: this version does not know %2. Take it out of the file, or have the file written anew.</source>
        <translation>%1 ne peut pas servir&#xa0;: cette version ne connaît pas %2. Retirez-le du fichier, ou faites réécrire le fichier.</translation>
    </message>
    <message>
        <source>%1 cannot be used: %2 is missing. Put it into the file, or adapt a published rulebook instead.</source>
        <translation>%1 ne peut pas servir&#xa0;: il manque %2. Ajoutez-le au fichier, ou adaptez plutôt un règlement publié.</translation>
    </message>
    <message>
        <source>%1 cannot be used: %2 has a value that it cannot have. Put it right in the file, or adapt a published rulebook instead.</source>
        <translation>%1 ne peut pas servir&#xa0;: %2 a une valeur impossible. Corrigez-la dans le fichier, ou adaptez plutôt un règlement publié.</translation>
    </message>
    <message>
        <source>Rules differ by state and league, and the referee is right.</source>
        <translation>Les règles varient selon l’État et la ligue, et l’arbitre a raison.</translation>
    </message>
    <message>
        <source>Nothing has to be done now: the match can start with this rulebook as it is. One setting differs between leagues or is not published; look it up before the season. It stands under “Open points”.</source>
        <translation>Rien à faire maintenant&#xa0;: le match peut commencer avec ce règlement tel quel. Un paramètre varie selon les ligues ou n’est pas publié&#xa0;; à vérifier avant la saison. Il se trouve sous «&#xa0;Points ouverts&#xa0;».</translation>
    </message>
    <message>
        <source>Nothing has to be done now: the match can start with this rulebook as it is. %1 settings differ between leagues or are not published; look them up before the season. They stand under “Open points”.</source>
        <translation>Rien à faire maintenant&#xa0;: le match peut commencer avec ce règlement tel quel. %1 paramètres varient selon les ligues ou ne sont pas publiés&#xa0;; à vérifier avant la saison. Ils se trouvent sous «&#xa0;Points ouverts&#xa0;».</translation>
    </message>
    <message>
        <source>A libero may come or go once a serve was contacted, though the rally is played again</source>
        <translation>Un libéro peut entrer ou sortir dès qu’un service a été frappé, même si l’échange est rejoué</translation>
    </message>
</context>
<context>
    <name>setfolio::SealWords</name>
    <message>
        <source>line %1, of the original: %2, %3</source>
        <translation>ligne %1, de l’original&#xa0;: %2, %3</translation>
    </message>
    <message>
        <source>line %1: %2, %3</source>
        <translation>ligne %1&#xa0;: %2, %3</translation>
    </message>
    <message>
        <source>Line %1 reopens it (%2): %3, %4.</source>
        <translation>La ligne %1 le rouvre (%2)&#xa0;: %3, %4.</translation>
    </message>
    <message>
        <source>Line %1 strikes entry %2.</source>
        <translation>La ligne %1 raye la saisie %2.</translation>
    </message>
    <message>
        <source>Line %1 seals it anew: %2.</source>
        <translation>La ligne %1 le scelle à nouveau&#xa0;: %2.</translation>
    </message>
    <message>
        <source>Line %1 takes the place of entry %2.</source>
        <translation>La ligne %1 prend la place de la saisie %2.</translation>
    </message>
    <message>
        <source>Line %1 is put in before entry %2.</source>
        <translation>La ligne %1&#xa0;s’insère avant la saisie %2.</translation>
    </message>
    <message>
        <source>%1: this is not what was signed under this seal.</source>
        <translation>%1&#xa0;: ce n’est pas ce qui a été signé sous ce sceau.</translation>
    </message>
    <message>
        <source>%1: lines 1 to %2 are, byte for byte, what was signed under this seal.</source>
        <translation>%1&#xa0;: les lignes 1 à %2 sont, octet pour octet, ce qui a été signé sous ce sceau.</translation>
    </message>
    <message>
        <source>%1: lines 1 to %2 are what was signed under this seal, but the file is damaged or altered after them.</source>
        <translation>%1&#xa0;: les lignes 1 à %2 sont ce qui a été signé sous ce sceau, mais le fichier est endommagé ou modifié au-delà.</translation>
    </message>
    <message>
        <source>%1: lines 1 to %2 are what was signed under this seal; it was reopened or corrected later.</source>
        <translation>%1&#xa0;: les lignes 1 à %2 sont ce qui a été signé sous ce sceau&#x202f;; il a été rouvert ou corrigé plus tard.</translation>
    </message>
    <message>
        <source>The chain of the file is whole: it is another match, an older state of this one, or it was written anew from some line on. Compare the code with the paper, and the file with another copy.</source>
        <translation>La chaîne du fichier est intacte&#xa0;: c’est un autre match, un état plus ancien de celui-ci, ou il a été réécrit à partir d’une certaine ligne. Comparez le code avec le papier, et le fichier avec une autre copie.</translation>
    </message>
    <message>
        <source>Seal in the file, %1.</source>
        <translation>Sceau dans le fichier, %1.</translation>
    </message>
    <message>
        <source>No seal is recorded after them: its line was cut off, or never written.</source>
        <translation>Aucun sceau n’est inscrit après elles&#xa0;: sa ligne a été coupée, ou jamais écrite.</translation>
    </message>
    <message>
        <source>Entries after the seal that leave it alone: %1.</source>
        <translation>Saisies après le sceau qui n’y touchent pas&#xa0;: %1.</translation>
    </message>
</context>
<context>
    <name>setfolio::SetEndDialog</name>
    <message>
        <source>End of set %1</source>
        <translation>Fin du set %1</translation>
    </message>
    <message>
        <source>Confirm winner and score with the second referee.</source>
        <translation>Confirmez le vainqueur et le score avec le second arbitre.</translation>
    </message>
    <message>
        <source>Confirmed: end the set</source>
        <translation>Confirmé&#xa0;: terminer le set</translation>
    </message>
    <message>
        <source>wins the set</source>
        <translation>gagne le set</translation>
    </message>
    <message>
        <source>loses the set</source>
        <translation>perd le set</translation>
    </message>
    <message>
        <source>Finished at</source>
        <translation>Terminé à</translation>
    </message>
</context>
<context>
    <name>setfolio::SettingPanel</name>
    <message>
        <source>Put back</source>
        <translation>Remettre</translation>
    </message>
    <message>
        <source>Looked up: it is so</source>
        <translation>Vérifié&#xa0;: c’est exact</translation>
    </message>
    <message>
        <source>Where it comes from (may be empty)</source>
        <translation>D’où cela vient (facultatif)</translation>
    </message>
    <message>
        <source>Published: %1</source>
        <translation>Publié&#xa0;: %1</translation>
    </message>
    <message>
        <source>It differs between leagues or is not published: look it up before the season.</source>
        <translation>Cela varie selon les ligues ou n’est pas publié&#xa0;: à vérifier avant la saison.</translation>
    </message>
    <message>
        <source>Source: %1</source>
        <translation>Source&#xa0;: %1</translation>
    </message>
</context>
<context>
    <name>setfolio::SheetChooser</name>
    <message>
        <source>Match</source>
        <translation>Match</translation>
    </message>
    <message>
        <source>Sets</source>
        <translation>Sets</translation>
    </message>
    <message>
        <source>Hand-over</source>
        <translation>Passation</translation>
    </message>
    <message>
        <source>Liberos</source>
        <translation>Libéros</translation>
    </message>
    <message>
        <source>For the coach</source>
        <translation>Entraîneur</translation>
    </message>
    <message>
        <source>Entries</source>
        <translation>Saisies</translation>
    </message>
    <message>
        <source>Line-up slips</source>
        <translation>Positions</translation>
    </message>
    <message>
        <source>Blank slips</source>
        <translation>Pos. vierges</translation>
    </message>
    <message>
        <source>Blank set</source>
        <translation>Set vierge</translation>
    </message>
    <message>
        <source>Sheets</source>
        <translation>Feuilles</translation>
    </message>
    <message>
        <source>Of the sets</source>
        <translation>Des sets</translation>
    </message>
    <message>
        <source>Set %1</source>
        <translation>Set %1</translation>
    </message>
</context>
<context>
    <name>setfolio::SheetPane</name>
    <message>
        <source>Sheet of set %1</source>
        <translation>Feuille du set %1</translation>
    </message>
</context>
<context>
    <name>setfolio::SignOffDialog</name>
    <message>
        <source>Back</source>
        <translation>Retour</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Fermer</translation>
    </message>
    <message>
        <source>Later</source>
        <translation>Plus tard</translation>
    </message>
    <message>
        <source>Show the seal</source>
        <translation>Voir le sceau</translation>
    </message>
    <message>
        <source>To the seal</source>
        <translation>Au sceau</translation>
    </message>
    <message>
        <source>To the signatures</source>
        <translation>Aux signatures</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Terminé</translation>
    </message>
</context>
<context>
    <name>setfolio::SignOffWords</name>
    <message>
        <source>Home</source>
        <translation>Domicile</translation>
    </message>
    <message>
        <source>Visitors</source>
        <translation>Visiteurs</translation>
    </message>
    <message>
        <source>Signature, on screen</source>
        <translation>Signature, à l’écran</translation>
    </message>
    <message>
        <source>protest</source>
        <translation>réclamation</translation>
    </message>
    <message>
        <source>not signed</source>
        <translation>non signé</translation>
    </message>
    <message>
        <source>name left out</source>
        <translation>nom omis</translation>
    </message>
    <message>
        <source>Seal</source>
        <translation>Sceau</translation>
    </message>
    <message>
        <source>Seal of the original</source>
        <translation>Sceau de l’original</translation>
    </message>
    <message>
        <source>set %1</source>
        <translation>set %1</translation>
    </message>
    <message>
        <source>match</source>
        <translation>match</translation>
    </message>
    <message>
        <source>scorer</source>
        <translation>marqueur</translation>
    </message>
    <message>
        <source>assistant scorer</source>
        <translation>marqueur assistant</translation>
    </message>
    <message>
        <source>captain</source>
        <translation>capitaine</translation>
    </message>
    <message>
        <source>coach</source>
        <translation>entraîneur</translation>
    </message>
    <message>
        <source>second referee</source>
        <translation>second arbitre</translation>
    </message>
    <message>
        <source>first referee</source>
        <translation>premier arbitre</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>%1, under protest</source>
        <translation>%1, avec réclamation</translation>
    </message>
    <message>
        <source>names left out</source>
        <translation>noms omis</translation>
    </message>
    <message>
        <source>Names of persons were left out of this document.</source>
        <translation>Les noms de personnes ont été omis de ce document.</translation>
    </message>
    <message>
        <source>This document names persons.</source>
        <translation>Ce document nomme des personnes.</translation>
    </message>
    <message>
        <source>Nobody is named in this document.</source>
        <translation>Personne n’est nommé dans ce document.</translation>
    </message>
    <message>
        <source>%1: to sign</source>
        <translation>%1&#xa0;: à signer</translation>
    </message>
    <message>
        <source>%1: signed</source>
        <translation>%1&#xa0;: signé</translation>
    </message>
    <message>
        <source>%1: signed under protest</source>
        <translation>%1&#xa0;: signé avec réclamation</translation>
    </message>
    <message>
        <source>%1: left unsigned</source>
        <translation>%1&#xa0;: non signé</translation>
    </message>
    <message>
        <source>Sign-off of set %1</source>
        <translation>Signature du set %1</translation>
    </message>
    <message>
        <source>Sign-off of the match</source>
        <translation>Signature du match</translation>
    </message>
    <message>
        <source>Seal set %1</source>
        <translation>Sceller le set %1</translation>
    </message>
    <message>
        <source>Seal the match</source>
        <translation>Sceller le match</translation>
    </message>
    <message>
        <source>Nobody is still to sign. The seal closes set %1: whoever changes it later reopens it, with a name and a reason.</source>
        <translation>Plus personne n’a à signer. Le sceau ferme le set %1&#xa0;: qui le change ensuite le rouvre, avec un nom et un motif.</translation>
    </message>
    <message>
        <source>Nobody is still to sign. The seal closes the match: whoever changes it later reopens it, with a name and a reason.</source>
        <translation>Plus personne n’a à signer. Le sceau ferme le match&#xa0;: qui le change ensuite le rouvre, avec un nom et un motif.</translation>
    </message>
    <message>
        <source>Set %1 is sealed. This code is printed on its sheet: keep the paper, or write the code down, to check the file against it.</source>
        <translation>Le set %1 est scellé. Ce code est imprimé sur sa feuille&#xa0;: gardez le papier, ou notez le code, pour vérifier le fichier avec.</translation>
    </message>
    <message>
        <source>The match is sealed. This code is printed on its page: keep the paper, or write the code down, to check the file against it.</source>
        <translation>Le match est scellé. Ce code est imprimé sur sa page&#xa0;: gardez le papier, ou notez le code, pour vérifier le fichier avec.</translation>
    </message>
    <message>
        <source>Reopen set %1</source>
        <translation>Rouvrir le set %1</translation>
    </message>
    <message>
        <source>Reopen the match</source>
        <translation>Rouvrir le match</translation>
    </message>
    <message>
        <source>Set %1 is signed and sealed. To reopen it voids its seal and its signatures: they stay on the sheet, struck, and it is signed anew.</source>
        <translation>Le set %1 est signé et scellé. Le rouvrir annule son sceau et ses signatures&#xa0;: elles restent sur la feuille, rayées, et on le signe à nouveau.</translation>
    </message>
    <message>
        <source>The match is signed and sealed. To reopen it voids its seal and its signatures: they stay on its page, struck, and it is signed anew.</source>
        <translation>Le match est signé et scellé. Le rouvrir annule son sceau et ses signatures&#xa0;: elles restent sur sa page, rayées, et on le signe à nouveau.</translation>
    </message>
    <message>
        <source>persons named</source>
        <translation>avec noms</translation>
    </message>
</context>
<context>
    <name>setfolio::SignaturePad</name>
    <message>
        <source>Sign here by finger, pen or mouse</source>
        <translation>Signez ici au doigt, au stylet ou à la souris</translation>
    </message>
</context>
<context>
    <name>setfolio::SignerPage</name>
    <message>
        <source>Who signs, in the rulebook&apos;s order</source>
        <translation>Qui signe, dans l’ordre du règlement</translation>
    </message>
    <message>
        <source>Printed name</source>
        <translation>Nom en lettres</translation>
    </message>
    <message>
        <source>Clear the signature</source>
        <translation>Effacer la signature</translation>
    </message>
    <message>
        <source>Signs</source>
        <translation>Signe</translation>
    </message>
    <message>
        <source>Signs under protest</source>
        <translation>Avec réclamation</translation>
    </message>
    <message>
        <source>Left unsigned</source>
        <translation>Non signé</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Motif</translation>
    </message>
    <message>
        <source>Remark of the protest</source>
        <translation>Remarque de la réclamation</translation>
    </message>
    <message>
        <source>Leave unsigned</source>
        <translation>Laisser non signé</translation>
    </message>
    <message>
        <source>Record the signature</source>
        <translation>Inscrire la signature</translation>
    </message>
    <message>
        <source>such as: agreed by word</source>
        <translation>p. ex.&#xa0;: accord oral</translation>
    </message>
</context>
<context>
    <name>setfolio::SignersField</name>
    <message>
        <source>In the order in which they are pressed.</source>
        <translation>Dans l’ordre où on les presse.</translation>
    </message>
</context>
<context>
    <name>setfolio::StartPage</name>
    <message>
        <source>The file is no longer there: %1</source>
        <translation>Le fichier n’existe plus&#xa0;: %1</translation>
    </message>
    <message>
        <source>The score sheet of a volleyball match, kept at the table and printed for the signatures.</source>
        <translation>La feuille de match d’une rencontre de volley-ball, tenue à la table et imprimée pour les signatures.</translation>
    </message>
    <message>
        <source>New match…</source>
        <translation>Nouveau match…</translation>
    </message>
    <message>
        <source>Teams, rosters, officials and rulebook</source>
        <translation>Équipes, effectifs, officiels et règlement</translation>
    </message>
    <message>
        <source>Open a match file…</source>
        <translation>Ouvrir un fichier de match…</translation>
    </message>
    <message>
        <source>Go on with a match, or read and print it</source>
        <translation>Continuer un match, ou le lire et l’imprimer</translation>
    </message>
    <message>
        <source>Practice…</source>
        <translation>Exercice…</translation>
    </message>
    <message>
        <source>A set is told to you, and your sheet compared</source>
        <translation>Un set vous est raconté, votre feuille est comparée</translation>
    </message>
    <message>
        <source>Open the demo match</source>
        <translation>Ouvrir le match d’essai</translation>
    </message>
    <message>
        <source>Invented teams, to look round</source>
        <translation>Équipes inventées, pour découvrir</translation>
    </message>
    <message>
        <source>Recent matches</source>
        <translation>Matchs récents</translation>
    </message>
    <message>
        <source>None yet. Matches that you keep or open are listed here.</source>
        <translation>Aucun encore. Les matchs que vous tenez ou ouvrez s’affichent ici.</translation>
    </message>
    <message>
        <source>Open a match file</source>
        <translation>Ouvrir un fichier de match</translation>
    </message>
    <message>
        <source>Matches (*.setfolio)</source>
        <translation>Matchs (*.setfolio)</translation>
    </message>
    <message>
        <source>Team book…</source>
        <translation>Carnet d’équipes…</translation>
    </message>
    <message>
        <source>Help…</source>
        <translation>Aide…</translation>
    </message>
    <message>
        <source>How things are entered, F1</source>
        <translation>Comment saisir, F1</translation>
    </message>
</context>
<context>
    <name>setfolio::StoryBand</name>
    <message>
        <source>Practice: enter what you are told here.</source>
        <translation>Exercice&#xa0;: saisissez ce qui vous est raconté ici.</translation>
    </message>
    <message>
        <source>The teams are on court. Ask for what happens next.</source>
        <translation>Les équipes sont sur le terrain. Demandez la suite.</translation>
    </message>
    <message>
        <source>That was all: compare your sheet with the right one.</source>
        <translation>C’est tout&#xa0;: comparez votre feuille avec la feuille juste.</translation>
    </message>
    <message>
        <source>Next (F4)</source>
        <translation>Suite (F4)</translation>
    </message>
    <message>
        <source>Hold (F5)</source>
        <translation>Pause (F5)</translation>
    </message>
    <message>
        <source>Go on (F5)</source>
        <translation>Continuer (F5)</translation>
    </message>
    <message>
        <source>Compare (F9)</source>
        <translation>Comparer (F9)</translation>
    </message>
</context>
<context>
    <name>setfolio::TeamBookDialog</name>
    <message>
        <source>Team book</source>
        <translation>Carnet d’équipes</translation>
    </message>
    <message>
        <source>Teams kept on this machine, to begin a match with.</source>
        <translation>Équipes gardées sur cet ordinateur, pour commencer un match.</translation>
    </message>
    <message>
        <source>Keep the team book</source>
        <translation>Garder le carnet</translation>
    </message>
    <message>
        <source>There is no team in the book yet: add one.</source>
        <translation>Il n’y a encore aucune équipe dans le carnet&#xa0;: ajoutez-en une.</translation>
    </message>
    <message>
        <source>No team can be read from %1: it is left as it is.</source>
        <translation>Aucune équipe ne peut être lue dans %1&#xa0;: le fichier reste tel quel.</translation>
    </message>
    <message>
        <source>What you have changed is not kept yet: press Cancel or Escape once more to drop it.</source>
        <translation>Vos changements ne sont pas encore gardés&#xa0;: appuyez encore une fois sur Annuler ou Échap pour les abandonner.</translation>
    </message>
    <message>
        <source>Teams of the book</source>
        <translation>Équipes du carnet</translation>
    </message>
    <message>
        <source>New team</source>
        <translation>Nouvelle équipe</translation>
    </message>
    <message>
        <source>Take over %1</source>
        <translation>Reprendre %1</translation>
    </message>
    <message>
        <source>Delete the team</source>
        <translation>Supprimer l’équipe</translation>
    </message>
    <message>
        <source>Bring it back</source>
        <translation>La rétablir</translation>
    </message>
    <message>
        <source>%1 has the roster of the match now.</source>
        <translation>%1 a maintenant l’effectif du match.</translation>
    </message>
    <message>
        <source>%1 is out of the book once it is kept.</source>
        <translation>%1 sortira du carnet quand vous le garderez.</translation>
    </message>
    <message>
        <source>A team needs a name: type it, or delete the team.</source>
        <translation>Une équipe doit avoir un nom&#xa0;: saisissez-le, ou supprimez l’équipe.</translation>
    </message>
    <message>
        <source>Two teams are called %1: give one of them another name.</source>
        <translation>Deux équipes s’appellent %1&#xa0;: donnez un autre nom à l’une d’elles.</translation>
    </message>
    <message>
        <source>A line of the roster has no number: give it one, or empty the line.</source>
        <translation>Une ligne de l’effectif n’a pas de numéro&#xa0;: donnez-lui-en un, ou videz-la.</translation>
    </message>
    <message>
        <source>%1 could not be deleted: its file is still there.</source>
        <translation>%1 n’a pas pu être supprimée&#xa0;: son fichier est toujours là.</translation>
    </message>
</context>
<context>
    <name>setfolio::TeamPage</name>
    <message>
        <source>such as navy</source>
        <translation>p. ex. marine</translation>
    </message>
    <message>
        <source>may be empty</source>
        <translation>facultatif</translation>
    </message>
    <message>
        <source>no roster</source>
        <translation>pas d’effectif</translation>
    </message>
    <message numerus="yes">
        <source>%n players</source>
        <translation>
            <numerusform>%n joueur</numerusform>
            <numerusform>%n joueurs</numerusform>
        </translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nom</translation>
    </message>
    <message>
        <source>Short name, 2 to 5 letters</source>
        <translation>Nom court, 2 à 5 lettres</translation>
    </message>
    <message>
        <source>Shirt colour</source>
        <translation>Couleur du maillot</translation>
    </message>
    <message>
        <source>Coach</source>
        <translation>Entraîneur</translation>
    </message>
    <message>
        <source>Team book</source>
        <translation>Carnet d’équipes</translation>
    </message>
    <message>
        <source>Keep in it</source>
        <translation>Y garder</translation>
    </message>
    <message>
        <source>Keeps this team with its roster in the team book</source>
        <translation>Garde cette équipe et son effectif dans le carnet d’équipes</translation>
    </message>
</context>
<context>
    <name>setfolio::TossCourt</name>
    <message>
        <source>your table is on this side</source>
        <translation>votre table est de ce côté</translation>
    </message>
    <message>
        <source>Court: the sides are not chosen yet</source>
        <translation>Terrain&#xa0;: les côtés ne sont pas encore choisis</translation>
    </message>
    <message>
        <source>Court: %1 left, %2 right</source>
        <translation>Terrain&#xa0;: %1 à gauche, %2 à droite</translation>
    </message>
    <message>
        <source>Court: %1 left, %2 right, %3 serves first</source>
        <translation>Terrain&#xa0;: %1 à gauche, %2 à droite, %3 sert en premier</translation>
    </message>
</context>
<context>
    <name>setfolio::TossDialog</name>
    <message>
        <source>Toss for the deciding set</source>
        <translation>Tirage au sort du set décisif</translation>
    </message>
    <message>
        <source>Toss</source>
        <translation>Tirage au sort</translation>
    </message>
    <message>
        <source>Ask the referee. Left and right are as you see the court from your table.</source>
        <translation>Demandez à l’arbitre. La gauche et la droite sont celles du terrain vu de votre table.</translation>
    </message>
    <message>
        <source>Record the toss</source>
        <translation>Inscrire le tirage</translation>
    </message>
    <message>
        <source>Stands left of the scorer</source>
        <translation>À gauche du marqueur</translation>
    </message>
    <message>
        <source>1 2</source>
        <translation>1 2</translation>
    </message>
    <message>
        <source>Serves first</source>
        <translation>Sert en premier</translation>
    </message>
    <message>
        <source>3 4</source>
        <translation>3 4</translation>
    </message>
</context>
<context>
    <name>setfolio::VerdictView</name>
    <message>
        <source>Referee lets it stand</source>
        <translation>L’arbitre le maintient</translation>
    </message>
    <message>
        <source>for this reason</source>
        <translation>pour ce motif</translation>
    </message>
    <message>
        <source>Reason for which the referee lets it stand</source>
        <translation>Motif pour lequel l’arbitre le maintient</translation>
    </message>
</context>
<context>
    <name>setfolio::ViewBar</name>
    <message>
        <source>Page before</source>
        <translation>Page précédente</translation>
    </message>
    <message>
        <source>Next page</source>
        <translation>Page suivante</translation>
    </message>
    <message>
        <source>Smaller</source>
        <translation>Plus petit</translation>
    </message>
    <message>
        <source>Larger</source>
        <translation>Plus grand</translation>
    </message>
    <message>
        <source>Whole page</source>
        <translation>Page entière</translation>
    </message>
    <message>
        <source>Page width</source>
        <translation>Largeur</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 sur %2</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1&#xa0;%</translation>
    </message>
</context>
</TS>
