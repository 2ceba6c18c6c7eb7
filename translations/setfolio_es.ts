<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es" sourcelanguage="en">
<context>
    <name>Copy</name>
    <message>
        <source>The match as it is, entry by entry, with its signatures: the codes of its seals, on paper too, hold for the copy.</source>
        <translation>El partido tal como está, anotación por anotación, con sus firmas: los códigos de sus sellos, también en papel, valen para la copia.</translation>
    </message>
    <message>
        <source>A match file of its own: the same numbers, order and times, without anybody&apos;s name and without the strokes of signatures. The codes of the seals on paper do not hold for it.</source>
        <translation>Un archivo de partido propio: los mismos números, orden y horas, sin el nombre de nadie y sin los trazos de las firmas. Los códigos de los sellos en papel no valen para él.</translation>
    </message>
    <message>
        <source>The list of entries for a spreadsheet: a line for each, those that were struck too.</source>
        <translation>La lista de anotaciones para una hoja de cálculo: una línea para cada una, también las tachadas.</translation>
    </message>
    <message>
        <source>What stands on the sheets, for another program.</source>
        <translation>Lo que figura en las actas, para otro programa.</translation>
    </message>
    <message>
        <source>A match file</source>
        <translation>Un archivo de partido</translation>
    </message>
    <message>
        <source>A table (CSV)</source>
        <translation>Una tabla (CSV)</translation>
    </message>
    <message>
        <source>Data (JSON)</source>
        <translation>Datos (JSON)</translation>
    </message>
    <message>
        <source>Matches (*.setfolio)</source>
        <translation>Partidos (*.setfolio)</translation>
    </message>
    <message>
        <source>Text with columns (*.csv)</source>
        <translation>Texto con columnas (*.csv)</translation>
    </message>
    <message>
        <source>Data (*.json)</source>
        <translation>Datos (*.json)</translation>
    </message>
    <message>
        <source>Names that the match knows are taken out of remarks and reasons too; what else is written there stays: read it before you pass the copy on.</source>
        <translation>Los nombres que el partido conoce se quitan también de observaciones y motivos; lo demás que está escrito allí se queda: conviene leerlo antes de entregar la copia.</translation>
    </message>
</context>
<context>
    <name>Help</name>
    <message>
        <source>the %1 menu</source>
        <translation>el menú %1</translation>
    </message>
    <message>
        <source>A rally</source>
        <translation>Una jugada</translation>
    </message>
    <message>
        <source>%1 when the serve is contacted, then %2 if the side on your left wins the rally, or %3 if the side on your right does. The winner alone is enough. %4 is a replay, %5 a re-serve, %6 a serve that did not come.</source>
        <translation>%1 cuando se golpea el saque; luego %2 si gana la jugada el lado izquierdo, o %3 si la gana el derecho. Basta con el ganador. %4 es una repetición, %5 un re-saque, %6 un saque que no llegó.</translation>
    </message>
    <message>
        <source>A wrong server</source>
        <translation>Un sacador incorrecto</translation>
    </message>
    <message>
        <source>%1 as soon as another number than the one shown stands at the line; type that number. The bar says what to do before and after the contact.</source>
        <translation>%1 en cuanto esté en la línea otro número que el indicado; escribir ese número. La barra dice qué hacer antes y después del golpe.</translation>
    </message>
    <message>
        <source>A substitution</source>
        <translation>Una sustitución</translation>
    </message>
    <message>
        <source>%1 for the left side, %2 for the right side, then the number that comes in. The number that goes out is proposed. Enter records it; the next one begins with the same key.</source>
        <translation>%1 para el lado izquierdo, %2 para el derecho, luego el número que entra. El número que sale se propone. Enter la registra; la siguiente comienza con la misma tecla.</translation>
    </message>
    <message>
        <source>A libero</source>
        <translation>Un líbero</translation>
    </message>
    <message>
        <source>%1 for the left side, %2 for the right side: the bar says what is possible now, for whom she comes in and who comes back.</source>
        <translation>%1 para el lado izquierdo, %2 para el derecho: la barra dice qué es posible ahora, por quién entra y quién vuelve.</translation>
    </message>
    <message>
        <source>A time-out</source>
        <translation>Un tiempo</translation>
    </message>
    <message>
        <source>%1 for the left side, %2 for the right side. Its card counts down and shows what to compare with the scoreboard. %3 puts the card away.</source>
        <translation>%1 para el lado izquierdo, %2 para el derecho. Su ficha lleva la cuenta atrás y muestra qué comparar con el tablero. %3 quita la ficha.</translation>
    </message>
    <message>
        <source>A card or a delay</source>
        <translation>Una tarjeta o una demora</translation>
    </message>
    <message>
        <source>%1 for the left side, %2 for the right side, then the number or the letter of who it is given to. The next step of the rulebook’s ladder is proposed with its consequence.</source>
        <translation>%1 para el lado izquierdo, %2 para el derecho, luego el número o la letra de quien la recibe. Se propone el siguiente grado del reglamento con su consecuencia.</translation>
    </message>
    <message>
        <source>A correction</source>
        <translation>Una corrección</translation>
    </message>
    <message>
        <source>%1 takes back the last entry, %2 puts it in again. For an earlier one press %3, or click its mark on the sheet: strike it, change it, or put in what was missed before it. What that changes is shown before Enter records it.</source>
        <translation>%1 deshace la última anotación, %2 la rehace. Para una anterior, pulsar %3 o hacer clic en su marca en la hoja: tacharla, cambiarla, o insertar antes lo que faltó. Lo que eso cambia se muestra antes de que Enter lo registre.</translation>
    </message>
    <message>
        <source>Before and after a set</source>
        <translation>Antes y después de un set</translation>
    </message>
    <message>
        <source>%1 does what the amber card asks for: the toss, the line-ups, the start and the end of the set, the close of the match.</source>
        <translation>%1 hace lo que pide la ficha ámbar: el sorteo, las formaciones, el inicio y el fin del set, el cierre del partido.</translation>
    </message>
    <message>
        <source>Signing</source>
        <translation>Firmas</translation>
    </message>
    <message>
        <source>In a bar</source>
        <translation>En una barra</translation>
    </message>
    <message>
        <source>The letters on its buttons choose, Tab goes on, Enter records, Esc closes it. Everything can be clicked or tapped too.</source>
        <translation>Las letras de sus botones eligen, Tab avanza, Enter registra, Esc la cierra. Todo se puede hacer también con clic o con el dedo.</translation>
    </message>
    <message>
        <source>How things are entered</source>
        <translation>Cómo se anota</translation>
    </message>
    <message>
        <source>All keys</source>
        <translation>Todas las teclas</translation>
    </message>
    <message>
        <source>%1 shows what the referee looks over and signs on the screen, of a set or of the match. %2 prints the sheets, also at any time during a match.</source>
        <translation>%1 muestra lo que el árbitro revisa y firma en pantalla, de un set o del partido. %2 imprime las hojas, también en cualquier momento del partido.</translation>
    </message>
    <message>
        <source>A copy for others</source>
        <translation>Una copia para otros</translation>
    </message>
    <message>
        <source>%1 saves the match once more: as a match file, as a table for a spreadsheet or as data, with all names or with the numbers only. What is in it is said before it is saved.</source>
        <translation>%1 guarda el partido otra vez: como archivo de partido, como tabla para una hoja de cálculo o como datos, con todos los nombres o solo con los números. Antes de guardarlo se dice lo que contiene.</translation>
    </message>
</context>
<context>
    <name>Inks</name>
    <message>
        <source>Black, blue and rust</source>
        <translation>Negro, azul y óxido</translation>
    </message>
    <message>
        <source>Black, purple and ochre</source>
        <translation>Negro, púrpura y ocre</translation>
    </message>
    <message>
        <source>Black only</source>
        <translation>Solo negro</translation>
    </message>
    <message>
        <source>Shades of grey</source>
        <translation>Tonos de gris</translation>
    </message>
</context>
<context>
    <name>Practice</name>
    <message>
        <source>nothing</source>
        <translation>nada</translation>
    </message>
    <message>
        <source>an empty ring</source>
        <translation>un círculo vacío</translation>
    </message>
    <message>
        <source>%1 in a ring</source>
        <translation>%1 en un círculo</translation>
    </message>
    <message>
        <source>an empty triangle</source>
        <translation>un triángulo vacío</translation>
    </message>
    <message>
        <source>%1 in a triangle</source>
        <translation>%1 en un triángulo</translation>
    </message>
    <message>
        <source>%1 in a square</source>
        <translation>%1 en un cuadrado</translation>
    </message>
    <message>
        <source>%1, taken back</source>
        <translation>%1, anulado</translation>
    </message>
    <message>
        <source>slot %1</source>
        <translation>puesto %1</translation>
    </message>
    <message>
        <source>points</source>
        <translation>puntos</translation>
    </message>
    <message>
        <source>substitutions</source>
        <translation>sustituciones</translation>
    </message>
    <message>
        <source>time-outs</source>
        <translation>tiempos</translation>
    </message>
    <message>
        <source>libero replacements</source>
        <translation>reemplazos de líbero</translation>
    </message>
    <message>
        <source>team</source>
        <translation>equipo</translation>
    </message>
    <message>
        <source>%1, %2: %3 at %4–%5</source>
        <translation>%1, %2: %3 con %4–%5</translation>
    </message>
    <message>
        <source>%1, slot %2, round %3</source>
        <translation>%1, puesto %2, ronda %3</translation>
    </message>
    <message>
        <source>%1, numbers in slot %2</source>
        <translation>%1, números del puesto %2</translation>
    </message>
    <message>
        <source>%1, where the libero served</source>
        <translation>%1, dónde sacó el líbero</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Sanctions</source>
        <translation>Sanciones</translation>
    </message>
    <message>
        <source>Your sheet is as it should be: all %1 marks are right.</source>
        <translation>La hoja está como debe estar: las %1 marcas son correctas.</translation>
    </message>
    <message>
        <source>%1 of %2 marks are right.</source>
        <translation>%1 de %2 marcas son correctas.</translation>
    </message>
    <message>
        <source>The first line is where the two sheets part; what comes after may only follow from it.</source>
        <translation>La primera línea es donde las dos hojas se separan; lo que sigue puede ser solo su consecuencia.</translation>
    </message>
    <message>
        <source>The coach of %1 hands in a line-up.</source>
        <translation>El entrenador de %1 entrega una formación.</translation>
    </message>
    <message>
        <source>The match is over.</source>
        <translation>El partido ha terminado.</translation>
    </message>
    <message>
        <source>%1 cannot play on.</source>
        <translation>%1 no puede seguir jugando.</translation>
    </message>
    <message>
        <source>Play is suspended.</source>
        <translation>El juego está suspendido.</translation>
    </message>
    <message>
        <source>Play is resumed.</source>
        <translation>El juego se reanuda.</translation>
    </message>
    <message>
        <source>%1 by the clock on the wall: the first referee whistles, the set begins.</source>
        <translation>El reloj de pared marca %1: suena el silbato del primer árbitro y el set comienza.</translation>
    </message>
    <message>
        <source>The second referee confirms that the set is over. The clock says %1.</source>
        <translation>El segundo árbitro confirma que el set ha terminado. El reloj marca %1.</translation>
    </message>
    <message>
        <source>The teams change sides.</source>
        <translation>Los equipos cambian de cancha.</translation>
    </message>
    <message>
        <source>Number %1 of %2 serves.</source>
        <translation>Saca el número %1 de %2.</translation>
    </message>
    <message>
        <source>Number %1 goes to the service line.</source>
        <translation>El número %1 va a la línea de saque.</translation>
    </message>
    <message>
        <source>The second referee rules: number %1 of %2 had no right to be on court.</source>
        <translation>El segundo árbitro decide: el número %1 de %2 no tenía derecho a estar en cancha.</translation>
    </message>
    <message>
        <source>Number %1 of %2 leaves the court, and nobody comes in for her.</source>
        <translation>El número %1 de %2 sale de la cancha y nadie entra en su lugar.</translation>
    </message>
    <message>
        <source>%1 takes a time-out.</source>
        <translation>%1 pide un tiempo.</translation>
    </message>
    <message>
        <source>%1: libero %2 runs in, number %3 runs out.</source>
        <translation>%1: entra corriendo el líbero %2, sale el número %3.</translation>
    </message>
    <message>
        <source>%1: libero %2 runs out, and the player she stood in for comes back.</source>
        <translation>%1: sale corriendo el líbero %2 y vuelve el jugador al que reemplazaba.</translation>
    </message>
    <message>
        <source>%1: libero %2 runs in, libero %3 runs out.</source>
        <translation>%1: entra corriendo el líbero %2, sale el líbero %3.</translation>
    </message>
    <message>
        <source>A libero of %1 changes places after the whistle. The referee lets it pass, once.</source>
        <translation>Un líbero de %1 hace el reemplazo después del silbato. El árbitro lo tolera, una vez.</translation>
    </message>
    <message>
        <source>%1 names number %2 as its captain.</source>
        <translation>%1 designa capitán al número %2.</translation>
    </message>
    <message>
        <source>%1 makes a request that is not granted: improper, the second referee says.</source>
        <translation>%1 hace una solicitud que no se concede: improcedente, dice el segundo árbitro.</translation>
    </message>
    <message>
        <source>The first referee gives %1 a penalty point.</source>
        <translation>El primer árbitro concede a %1 un punto de castigo.</translation>
    </message>
    <message>
        <source>The second referee asks for a remark: “%1”</source>
        <translation>El segundo árbitro pide una observación: “%1”</translation>
    </message>
    <message>
        <source>The referees open the set again.</source>
        <translation>Los árbitros reabren el set.</translation>
    </message>
    <message>
        <source>The referees confer and change their last call: that rally goes the other way.</source>
        <translation>Los árbitros deliberan y cambian su última decisión: esa jugada es del otro equipo.</translation>
    </message>
    <message>
        <source>The referee&apos;s arm points to %1: they win the rally.</source>
        <translation>El brazo del árbitro señala a %1: gana la jugada.</translation>
    </message>
    <message>
        <source>The ball is down. The rally goes to %1.</source>
        <translation>El balón toca el suelo. La jugada es de %1.</translation>
    </message>
    <message>
        <source>A long rally, and %1 wins it.</source>
        <translation>Una jugada larga, y la gana %1.</translation>
    </message>
    <message>
        <source>A ball rolls onto the court: the rally is replayed.</source>
        <translation>Un balón entra rodando en la cancha: la jugada se repite.</translation>
    </message>
    <message>
        <source>She catches her toss. The referee lets her serve again.</source>
        <translation>El sacador atrapa el balón que lanzó. El árbitro permite otro saque.</translation>
    </message>
    <message>
        <source>The time to serve has run out, and nobody has hit the ball: it is a fault of %1.</source>
        <translation>Se agotó el plazo para sacar y nadie golpeó el balón: es falta de %1.</translation>
    </message>
    <message>
        <source>The second referee rules: number %1 of %2 was not the one to serve. The point and the serve go to %3.</source>
        <translation>El segundo árbitro decide: al número %1 de %2 no le tocaba sacar. El punto y el saque son de %3.</translation>
    </message>
    <message>
        <source>The points that she won at serve are taken back.</source>
        <translation>Los puntos que ganó al saque se anulan.</translation>
    </message>
    <message>
        <source>%1 asks for a substitution: number %2 in, number %3 out.</source>
        <translation>%1 pide una sustitución: entra el número %2, sale el número %3.</translation>
    </message>
    <message>
        <source>%1 has a player hurt, number %3, and nobody left who may lawfully replace her: number %2 comes in.</source>
        <translation>%1 tiene lesionado al número %3, y no queda nadie que pueda sustituirlo legalmente: entra el número %2.</translation>
    </message>
    <message>
        <source>%1: libero %2 goes to the service line.</source>
        <translation>%1: el líbero %2 va a la línea de saque.</translation>
    </message>
    <message>
        <source>%1: libero %2 leaves the service line.</source>
        <translation>%1: el líbero %2 deja la línea de saque.</translation>
    </message>
    <message>
        <source>Libero %1 of %2 cannot play on.</source>
        <translation>El líbero %1 de %2 no puede seguir jugando.</translation>
    </message>
    <message>
        <source>Libero %1 of %2 cannot play on; number %3 is libero from now on.</source>
        <translation>El líbero %1 de %2 no puede seguir jugando; desde ahora el líbero es el número %3.</translation>
    </message>
    <message>
        <source>The first referee shows number %1 of %2 a card: %3.</source>
        <translation>El primer árbitro muestra una tarjeta al número %1 de %2: %3.</translation>
    </message>
    <message>
        <source>The first referee shows a card to %2 (%1): %3.</source>
        <translation>El primer árbitro muestra una tarjeta a %2 (%1): %3.</translation>
    </message>
    <message>
        <source>%1 is slow to take the court. The first referee shows a card on the wrist: %2.</source>
        <translation>%1 tarda en entrar a la cancha. El primer árbitro muestra una tarjeta sobre la muñeca: %2.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>a court position and the number that stands there</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>A plain set</source>
        <translation>Un set sencillo</translation>
    </message>
    <message>
        <source>Substitutions</source>
        <translation>Sustituciones</translation>
    </message>
    <message>
        <source>A libero who serves</source>
        <translation>Un líbero que saca</translation>
    </message>
    <message>
        <source>A wrong server</source>
        <translation>Un sacador incorrecto</translation>
    </message>
    <message>
        <source>Corrected calls and cards</source>
        <translation>Decisiones corregidas y tarjetas</translation>
    </message>
    <message>
        <source>Serves, rallies and time-outs.</source>
        <translation>Saques, jugadas y tiempos.</translation>
    </message>
    <message>
        <source>Players come in to serve and go out again; a serve is taken again.</source>
        <translation>Entran jugadores a sacar y vuelven a salir; un saque se repite.</translation>
    </message>
    <message>
        <source>Liberos come and go and take one turn at serve; a rally is replayed.</source>
        <translation>Los líberos entran y salen y sacan en un solo puesto; una jugada se repite.</translation>
    </message>
    <message>
        <source>Watch the numbers at the service line: one of them should not be there. A delay.</source>
        <translation>Atención a los números en la línea de saque: uno no debería estar ahí. Una demora.</translation>
    </message>
    <message>
        <source>The referees change a call, twice; a coach is shown cards; liberos and substitutions.</source>
        <translation>Los árbitros cambian una decisión, dos veces; un entrenador recibe tarjetas; líberos y sustituciones.</translation>
    </message>
    <message>
        <source>%1 serves first. %2 stands on the left of the table.</source>
        <translation>%1 saca primero. %2 está a la izquierda de la mesa.</translation>
    </message>
    <message>
        <source>%1 by court position: %2.</source>
        <translation>%1 por posición en cancha: %2.</translation>
    </message>
    <message>
        <source>%1 loses a set that has ended.</source>
        <translation>%1 pierde un set ya terminado.</translation>
    </message>
</context>
<context>
    <name>Sanctions</name>
    <message>
        <source>coach</source>
        <translation>entrenador</translation>
    </message>
    <message>
        <source>assistant coach</source>
        <translation>entrenador asistente</translation>
    </message>
    <message>
        <source>second assistant coach</source>
        <translation>segundo entrenador asistente</translation>
    </message>
    <message>
        <source>therapist</source>
        <translation>terapeuta</translation>
    </message>
    <message>
        <source>doctor</source>
        <translation>médico</translation>
    </message>
    <message>
        <source>bench</source>
        <translation>banco</translation>
    </message>
    <message>
        <source>warning</source>
        <translation>amonestación</translation>
    </message>
    <message>
        <source>penalty</source>
        <translation>castigo</translation>
    </message>
    <message>
        <source>expulsion</source>
        <translation>expulsión</translation>
    </message>
    <message>
        <source>disqualification</source>
        <translation>descalificación</translation>
    </message>
    <message>
        <source>delay warning</source>
        <translation>amonestación por demora</translation>
    </message>
    <message>
        <source>delay penalty</source>
        <translation>castigo por demora</translation>
    </message>
    <message>
        <source>improper</source>
        <translation>improcedente</translation>
    </message>
</context>
<context>
    <name>Sheet</name>
    <message>
        <source>Home</source>
        <translation>Local</translation>
    </message>
    <message>
        <source>Visitors</source>
        <translation>Visitante</translation>
    </message>
    <message>
        <source>Opening of the match</source>
        <translation>Apertura del partido</translation>
    </message>
    <message>
        <source>%1 roster</source>
        <translation>Plantel de %1</translation>
    </message>
    <message>
        <source>List of officials</source>
        <translation>Lista de oficiales</translation>
    </message>
    <message>
        <source>Closing of the match</source>
        <translation>Cierre del partido</translation>
    </message>
    <message>
        <source>%1 forfeits the set</source>
        <translation>%1 pierde el set por reglamento</translation>
    </message>
    <message>
        <source>%1 forfeits the match</source>
        <translation>%1 pierde el partido por reglamento</translation>
    </message>
    <message>
        <source>Play suspended</source>
        <translation>Juego suspendido</translation>
    </message>
    <message>
        <source>Play resumed as it stood</source>
        <translation>Juego reanudado tal como estaba</translation>
    </message>
    <message>
        <source>Set cancelled, to be played again</source>
        <translation>Set anulado, se jugará de nuevo</translation>
    </message>
    <message>
        <source>Sides changed</source>
        <translation>Cambio de cancha</translation>
    </message>
    <message>
        <source>%1 at the service line</source>
        <translation>%1 en la línea de saque</translation>
    </message>
    <message>
        <source>%1 wrong server %2</source>
        <translation>%1 sacador incorrecto %2</translation>
    </message>
    <message>
        <source>%1 illegal substitution, %2 on court</source>
        <translation>%1 sustitución ilegal, %2 en cancha</translation>
    </message>
    <message>
        <source>%1 illegal libero replacement, %2 on court</source>
        <translation>%1 reemplazo ilegal de líbero, %2 en cancha</translation>
    </message>
    <message>
        <source>%1 plays on without %2, place vacant</source>
        <translation>%1 sigue sin %2, lugar vacante</translation>
    </message>
    <message>
        <source>%1 libero %2 in for %3</source>
        <translation>%1 líbero %2 por %3</translation>
    </message>
    <message>
        <source>%1 libero %2 out</source>
        <translation>%1 líbero %2 sale</translation>
    </message>
    <message>
        <source>%1 libero %2 for libero %3</source>
        <translation>%1 líbero %2 por líbero %3</translation>
    </message>
    <message>
        <source>%1 libero %2 cannot play on</source>
        <translation>%1 líbero %2 no puede seguir</translation>
    </message>
    <message>
        <source>%1 libero is %2 in place of %3</source>
        <translation>%1 líbero es %2 en lugar de %3</translation>
    </message>
    <message>
        <source>%1 late libero replacement let pass</source>
        <translation>%1 reemplazo tardío de líbero tolerado</translation>
    </message>
    <message>
        <source>%1 captain is %2</source>
        <translation>%1 capitán es %2</translation>
    </message>
    <message>
        <source>%1 %2, %3</source>
        <translation>%1 %2, %3</translation>
    </message>
    <message>
        <source>%1 improper request</source>
        <translation>%1 solicitud improcedente</translation>
    </message>
    <message>
        <source>Compared with the scoreboard: %1</source>
        <translation>Comparado con el tablero: %1</translation>
    </message>
    <message>
        <source>Toss</source>
        <translation>Sorteo</translation>
    </message>
    <message>
        <source>%1 line-up</source>
        <translation>Formación de %1</translation>
    </message>
    <message>
        <source>Start of the set</source>
        <translation>Inicio del set</translation>
    </message>
    <message>
        <source>End of the set</source>
        <translation>Fin del set</translation>
    </message>
    <message>
        <source>Serve contacted</source>
        <translation>Saque golpeado</translation>
    </message>
    <message>
        <source>Rally won by %1</source>
        <translation>Jugada ganada por %1</translation>
    </message>
    <message>
        <source>Replay</source>
        <translation>Repetición</translation>
    </message>
    <message>
        <source>Re-serve</source>
        <translation>Re-saque</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Rally lost without a serve</source>
        <translation>Jugada perdida sin saque</translation>
    </message>
    <message>
        <source>%1 exceptional substitution %2 for %3</source>
        <translation>%1 sustitución excepcional %2 por %3</translation>
    </message>
    <message>
        <source>%1 substitution %2 for %3</source>
        <translation>%1 sustitución %2 por %3</translation>
    </message>
    <message>
        <source>%1 time-out</source>
        <translation>%1 tiempo</translation>
    </message>
    <message>
        <source>%1 libero %2 to serve</source>
        <translation>%1 líbero %2 al saque</translation>
    </message>
    <message>
        <source>%1 libero %2 no longer to serve</source>
        <translation>%1 líbero %2 ya no al saque</translation>
    </message>
    <message>
        <source>Penalty point to %1</source>
        <translation>Punto de castigo a %1</translation>
    </message>
    <message>
        <source>Remark “%1”</source>
        <translation>Observación “%1”</translation>
    </message>
    <message>
        <source>Correction</source>
        <translation>Corrección</translation>
    </message>
    <message>
        <source>Signed under protest by the %1</source>
        <translation>Firmado bajo protesta por el %1</translation>
    </message>
    <message>
        <source>Signed by the %1</source>
        <translation>Firmado por el %1</translation>
    </message>
    <message>
        <source>Not signed by the %1</source>
        <translation>Sin firma del %1</translation>
    </message>
    <message>
        <source>Seal</source>
        <translation>Sello</translation>
    </message>
    <message>
        <source>Reopened by %1</source>
        <translation>Reabierto por %1</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 de %2</translation>
    </message>
    <message>
        <source>At %1–%2: %3</source>
        <translation>Con %1–%2: %3</translation>
    </message>
    <message>
        <source>%1 struck</source>
        <translation>%1 (tachado)</translation>
    </message>
    <message>
        <source>Rally %1: %2</source>
        <translation>Jugada %1: %2</translation>
    </message>
    <message>
        <source>%1 on the referee’s word</source>
        <translation>%1 por decisión del árbitro</translation>
    </message>
    <message>
        <source>%1 put in later</source>
        <translation>%1 (insertado después)</translation>
    </message>
    <message>
        <source>%1 wrong server, %2 for %3</source>
        <translation>%1 sacador incorrecto, %2 por %3</translation>
    </message>
    <message>
        <source>%1 wrong server, %2</source>
        <translation>%1 sacador incorrecto, %2</translation>
    </message>
    <message>
        <source>%1; points taken back: %2</source>
        <translation>%1; puntos anulados: %2</translation>
    </message>
    <message>
        <source>%1; the seal %2 is void</source>
        <translation>%1; el sello %2 queda sin valor</translation>
    </message>
    <message>
        <source>improper request</source>
        <translation>solicitud improcedente</translation>
    </message>
    <message>
        <source>Sanction at %1: %2</source>
        <translation>Sanción con %1: %2</translation>
    </message>
    <message>
        <source>Libero tracking sheet</source>
        <translation>Hoja de control del líbero</translation>
    </message>
    <message>
        <source>Match</source>
        <translation>Partido</translation>
    </message>
    <message>
        <source>List of entries</source>
        <translation>Lista de anotaciones</translation>
    </message>
    <message>
        <source>Line-up slip</source>
        <translation>Papeleta de formación</translation>
    </message>
    <message>
        <source>Hand-over</source>
        <translation>Relevo</translation>
    </message>
    <message>
        <source>Coach’s page</source>
        <translation>Página del entrenador</translation>
    </message>
    <message>
        <source>MATCH</source>
        <translation>PARTIDO</translation>
    </message>
    <message>
        <source>Rulebook</source>
        <translation>Reglamento</translation>
    </message>
    <message>
        <source>Coach</source>
        <translation>Entrenador</translation>
    </message>
    <message>
        <source>Captain</source>
        <translation>Capitán</translation>
    </message>
    <message>
        <source>Liberos</source>
        <translation>Líberos</translation>
    </message>
    <message>
        <source>No.</source>
        <translation>N.º</translation>
    </message>
    <message>
        <source>Player</source>
        <translation>Jugador</translation>
    </message>
    <message>
        <source>Result by set</source>
        <translation>Resultado por set</translation>
    </message>
    <message>
        <source>Total</source>
        <translation>Total</translation>
    </message>
    <message>
        <source>Role</source>
        <translation>Función</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Qué</translation>
    </message>
    <message>
        <source>Reason</source>
        <translation>Motivo</translation>
    </message>
    <message>
        <source>Remarks and corrections by set</source>
        <translation>Observaciones y correcciones por set</translation>
    </message>
    <message>
        <source>Signatures and seal of the match</source>
        <translation>Firmas y sello del partido</translation>
    </message>
    <message>
        <source>Seal of this record</source>
        <translation>Sello de este registro</translation>
    </message>
    <message>
        <source>Serves</source>
        <translation>Saca</translation>
    </message>
    <message>
        <source>each number with the score, own–opponents</source>
        <translation>cada número con el marcador, propio–rival</translation>
    </message>
    <message>
        <source>no replacements were recorded: to be filled in by pen</source>
        <translation>no se registraron reemplazos: rellenar a mano</translation>
    </message>
    <message>
        <source>How it is written</source>
        <translation>Cómo se escribe</translation>
    </message>
    <message>
        <source>libero, in the place of the number before her</source>
        <translation>líbero, en el lugar del número anterior</translation>
    </message>
    <message>
        <source>player who comes back or in; those who left are struck</source>
        <translation>jugador que vuelve o entra; tachados los que salieron</translation>
    </message>
    <message>
        <source>score at that moment, own–opponents</source>
        <translation>marcador en ese momento, propio–rival</translation>
    </message>
    <message>
        <source>the one slot the libero has served in</source>
        <translation>el único puesto en que sacó el líbero</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Hora</translation>
    </message>
    <message>
        <source>Rally</source>
        <translation>Jugada</translation>
    </message>
    <message>
        <source>Entry</source>
        <translation>Anotación</translation>
    </message>
    <message>
        <source>As you see them on court</source>
        <translation>Como se ven en la cancha</translation>
    </message>
    <message>
        <source>net</source>
        <translation>red</translation>
    </message>
    <message>
        <source>Coach’s signature</source>
        <translation>Firma del entrenador</translation>
    </message>
    <message>
        <source>Write one number into each place. Hand the slip to the second referee before the set.</source>
        <translation>Escribir un número en cada lugar. Entregar la papeleta al segundo árbitro antes del set.</translation>
    </message>
    <message>
        <source>Team</source>
        <translation>Equipo</translation>
    </message>
    <message>
        <source>Roster</source>
        <translation>Plantel</translation>
    </message>
    <message>
        <source>As it stands at</source>
        <translation>Tal como está a las</translation>
    </message>
    <message>
        <source>Serves next</source>
        <translation>Próximo saque</translation>
    </message>
    <message>
        <source>If the serve is lost, next</source>
        <translation>Si pierde el saque, sigue</translation>
    </message>
    <message>
        <source>On court now</source>
        <translation>En cancha ahora</translation>
    </message>
    <message>
        <source>Have stood here, in order</source>
        <translation>Han jugado aquí, en orden</translation>
    </message>
    <message>
        <source>Substitutions left</source>
        <translation>Sustituciones por usar</translation>
    </message>
    <message>
        <source>Time-outs left</source>
        <translation>Tiempos por usar</translation>
    </message>
    <message>
        <source>Sets won</source>
        <translation>Sets ganados</translation>
    </message>
    <message>
        <source>Slot in 1</source>
        <translation>Puesto en 1</translation>
    </message>
    <message>
        <source>Side-out</source>
        <translation>Side-out</translation>
    </message>
    <message>
        <source>No rally</source>
        <translation>Sin jugada</translation>
    </message>
    <message>
        <source>+/−</source>
        <translation>+/−</translation>
    </message>
    <message>
        <source>Servers</source>
        <translation>Sacadores</translation>
    </message>
    <message>
        <source>Terms</source>
        <translation>Turnos</translation>
    </message>
    <message>
        <source>Won</source>
        <translation>Ganó</translation>
    </message>
    <message>
        <source>Lost</source>
        <translation>Perdió</translation>
    </message>
    <message>
        <source>Longest</source>
        <translation>Mayor</translation>
    </message>
    <message>
        <source>Longest runs</source>
        <translation>Rachas mayores</translation>
    </message>
    <message>
        <source>Points</source>
        <translation>Puntos</translation>
    </message>
    <message>
        <source>Score, home–visitors</source>
        <translation>Marcador, local–visitante</translation>
    </message>
    <message>
        <source>The score as it went</source>
        <translation>Evolución del marcador</translation>
    </message>
    <message>
        <source>heavy line: home, fine line: visitors; strokes are substitutions, triangles time-outs: home above, visitors below</source>
        <translation>línea gruesa: local, línea fina: visitante; los trazos son sustituciones, los triángulos tiempos: local arriba, visitante abajo</translation>
    </message>
    <message>
        <source>Substitutions and time-outs, score home–visitors</source>
        <translation>Sustituciones y tiempos, marcador local–visitante</translation>
    </message>
    <message>
        <source>%1, continued</source>
        <translation>%1, continuación</translation>
    </message>
    <message>
        <source>Captain %1</source>
        <translation>Capitán %1</translation>
    </message>
    <message>
        <source>Coach %1</source>
        <translation>Entrenador %1</translation>
    </message>
    <message>
        <source>%1 did not play: all sets are given</source>
        <translation>%1 no jugó: se conceden todos los sets</translation>
    </message>
    <message>
        <source>%1 could not play on: the points needed are given</source>
        <translation>%1 no pudo seguir: se conceden los puntos que faltan</translation>
    </message>
    <message>
        <source>%1. %2</source>
        <translation>%1. %2</translation>
    </message>
    <message>
        <source>put in before no. %1</source>
        <translation>insertado antes del n.º %1</translation>
    </message>
    <message>
        <source>put in the place of no. %1</source>
        <translation>en lugar del n.º %1</translation>
    </message>
    <message>
        <source>reason: %1</source>
        <translation>motivo: %1</translation>
    </message>
    <message>
        <source>stands on the referee’s word</source>
        <translation>vale por decisión del árbitro</translation>
    </message>
    <message>
        <source>stands on the referee’s word: %1</source>
        <translation>vale por decisión del árbitro: %1</translation>
    </message>
    <message>
        <source>struck by no. %1</source>
        <translation>tachado por el n.º %1</translation>
    </message>
    <message>
        <source>as it stands at %1, %2</source>
        <translation>tal como está a las %1, %2</translation>
    </message>
    <message>
        <source>%1, slot %2</source>
        <translation>%1, puesto %2</translation>
    </message>
    <message>
        <source>Order of service, %1: who serves next comes first</source>
        <translation>Orden de saque, %1: primero el próximo en sacar</translation>
    </message>
    <message>
        <source>serve +</source>
        <translation>saque +</translation>
    </message>
    <message>
        <source>serve −</source>
        <translation>saque −</translation>
    </message>
    <message>
        <source>rec. +</source>
        <translation>rec. +</translation>
    </message>
    <message>
        <source>rec. −</source>
        <translation>rec. −</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>%1 in for %2</source>
        <translation>%1 por %2</translation>
    </message>
    <message>
        <source>SET</source>
        <translation>SET</translation>
    </message>
    <message>
        <source>Venue</source>
        <translation>Sede</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Fecha</translation>
    </message>
    <message>
        <source>Scheduled</source>
        <translation>Previsto</translation>
    </message>
    <message>
        <source>Started</source>
        <translation>Inicio</translation>
    </message>
    <message>
        <source>Finished</source>
        <translation>Fin</translation>
    </message>
    <message>
        <source>Format</source>
        <translation>Formato</translation>
    </message>
    <message>
        <source>First serve</source>
        <translation>Primer saque</translation>
    </message>
    <message>
        <source>Court, seen from the scorer</source>
        <translation>Cancha, vista por el anotador</translation>
    </message>
    <message>
        <source>Libero</source>
        <translation>Líbero</translation>
    </message>
    <message>
        <source>Time-outs (own–opponents)</source>
        <translation>Tiempos (propio–rival)</translation>
    </message>
    <message>
        <source>Slot</source>
        <translation>Puesto</translation>
    </message>
    <message>
        <source>Starter</source>
        <translation>Titular</translation>
    </message>
    <message>
        <source>Then</source>
        <translation>Luego</translation>
    </message>
    <message>
        <source>opp.</source>
        <translation>rival</translation>
    </message>
    <message>
        <source>points</source>
        <translation>puntos</translation>
    </message>
    <message>
        <source>Sanctions</source>
        <translation>Sanciones</translation>
    </message>
    <message>
        <source>Card</source>
        <translation>Tarjeta</translation>
    </message>
    <message>
        <source>Who</source>
        <translation>Quién</translation>
    </message>
    <message>
        <source>Set</source>
        <translation>Set</translation>
    </message>
    <message>
        <source>Score</source>
        <translation>Puntos</translation>
    </message>
    <message>
        <source>Remarks and corrections</source>
        <translation>Observaciones y correcciones</translation>
    </message>
    <message>
        <source>What happened, what was changed</source>
        <translation>Qué ocurrió, qué se cambió</translation>
    </message>
    <message>
        <source>Remarks and corrections, continued</source>
        <translation>Observaciones y correcciones, continuación</translation>
    </message>
    <message>
        <source>Officials</source>
        <translation>Oficiales</translation>
    </message>
    <message>
        <source>Signature, in ink</source>
        <translation>Firma, a tinta</translation>
    </message>
    <message>
        <source>Line judges</source>
        <translation>Jueces de línea</translation>
    </message>
    <message>
        <source>Result</source>
        <translation>Resultado</translation>
    </message>
    <message>
        <source>Winner</source>
        <translation>Ganador</translation>
    </message>
    <message>
        <source>Winner, to be confirmed</source>
        <translation>Ganador, por confirmar</translation>
    </message>
    <message>
        <source>Set cancelled, played again</source>
        <translation>Set anulado, jugado de nuevo</translation>
    </message>
    <message>
        <source>Loser</source>
        <translation>Perdedor</translation>
    </message>
    <message>
        <source>Duration</source>
        <translation>Duración</translation>
    </message>
    <message>
        <source>point that won the serve</source>
        <translation>punto que ganó el saque</translation>
    </message>
    <message>
        <source>point on own serve</source>
        <translation>punto con saque propio</translation>
    </message>
    <message>
        <source>rally lost</source>
        <translation>jugada perdida</translation>
    </message>
    <message>
        <source>serve repeated</source>
        <translation>saque repetido</translation>
    </message>
    <message>
        <source>libero serves</source>
        <translation>saca el líbero</translation>
    </message>
    <message>
        <source>without a serve</source>
        <translation>sin saque</translation>
    </message>
    <message>
        <source>penalty point</source>
        <translation>punto de castigo</translation>
    </message>
    <message>
        <source>struck, with its remark</source>
        <translation>tachado, con su observación</translation>
    </message>
    <message>
        <source>points taken back</source>
        <translation>puntos anulados</translation>
    </message>
    <message>
        <source>10 in for 7</source>
        <translation>10 por 7</translation>
    </message>
    <message>
        <source>opponents’ substitution</source>
        <translation>sustitución rival</translation>
    </message>
    <message>
        <source>time-out</source>
        <translation>tiempo</translation>
    </message>
    <message>
        <source>opponents’ time-out</source>
        <translation>tiempo rival</translation>
    </message>
    <message>
        <source>10 in for 7 at 12–9</source>
        <translation>10 por 7 con 12–9</translation>
    </message>
    <message>
        <source>exit score</source>
        <translation>puntos de salida</translation>
    </message>
    <message>
        <source>in a slot: captain</source>
        <translation>en un puesto: capitán</translation>
    </message>
    <message>
        <source>won on opponents’ serve</source>
        <translation>ganado con saque rival</translation>
    </message>
    <message>
        <source>point won</source>
        <translation>punto ganado</translation>
    </message>
    <message>
        <source>end of the set</source>
        <translation>fin del set</translation>
    </message>
    <message>
        <source>passed over</source>
        <translation>saltado</translation>
    </message>
    <message>
        <source>rounds %1: fine</source>
        <translation>rondas %1: fino</translation>
    </message>
    <message>
        <source>%1: heavy</source>
        <translation>%1: grueso</translation>
    </message>
    <message>
        <source>%1: broken</source>
        <translation>%1: discontinuo</translation>
    </message>
    <message>
        <source>%1: long dashes</source>
        <translation>%1: rayas largas</translation>
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
        <translation>Al mejor de %1</translation>
    </message>
    <message>
        <source>Match %1</source>
        <translation>Partido %1</translation>
    </message>
    <message>
        <source>page %1 of %2</source>
        <translation>página %1 de %2</translation>
    </message>
    <message>
        <source>serves first</source>
        <translation>saca primero</translation>
    </message>
    <message>
        <source>receives first</source>
        <translation>recibe primero</translation>
    </message>
    <message>
        <source>Round %1, continued</source>
        <translation>Ronda %1, continuación</translation>
    </message>
    <message>
        <source>Round %1</source>
        <translation>Ronda %1</translation>
    </message>
    <message>
        <source>Substitutions · %1 of %2</source>
        <translation>Sustituciones · %1 de %2</translation>
    </message>
    <message>
        <source>First referee</source>
        <translation>Primer árbitro</translation>
    </message>
    <message>
        <source>Second referee</source>
        <translation>Segundo árbitro</translation>
    </message>
    <message>
        <source>Scorer</source>
        <translation>Anotador</translation>
    </message>
    <message>
        <source>Assistant scorer (libero)</source>
        <translation>Anotador asistente</translation>
    </message>
    <message>
        <source>Timer</source>
        <translation>Cronometrador</translation>
    </message>
    <message>
        <source>Line judge</source>
        <translation>Juez de línea</translation>
    </message>
    <message>
        <source>%1 min</source>
        <translation>%1 min</translation>
    </message>
    <message>
        <source>continued on page %1</source>
        <translation>continúa en la página %1</translation>
    </message>
    <message>
        <source>and %1 more</source>
        <translation>y %1 más</translation>
    </message>
    <message>
        <source>en</source>
        <comment>the language that the sheet&apos;s words are in, by its BCP 47 tag</comment>
        <translation>es</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <comment>a signer&apos;s role and the team</comment>
        <translation>%1 de %2</translation>
    </message>
    <message>
        <source>In full: %1</source>
        <translation>Completo: %1</translation>
    </message>
    <message>
        <source>%1 slot %2, after the starter: %3; then as in the slot.</source>
        <translation>%1 puesto %2, tras el titular: %3; luego como en el puesto.</translation>
    </message>
    <message>
        <source>%1 forfeits set %2, points kept: %3</source>
        <translation>%1 pierde el set %2 por reglamento, puntos conservados: %3</translation>
    </message>
    <message>
        <source>%1 forfeits set %2, all points kept</source>
        <translation>%1 pierde el set %2 por reglamento, conserva todos sus puntos</translation>
    </message>
    <message>
        <source>Set cancelled: match won before</source>
        <translation>Set anulado: partido ya ganado</translation>
    </message>
</context>
<context>
    <name>Table</name>
    <message>
        <source>Who</source>
        <translation>Quién</translation>
    </message>
    <message>
        <source>What for</source>
        <translation>Por qué</translation>
    </message>
    <message>
        <source>Card or delay %1</source>
        <translation>Tarjeta o demora %1</translation>
    </message>
    <message>
        <source>Misconduct</source>
        <translation>Conducta incorrecta</translation>
    </message>
    <message>
        <source>Delay</source>
        <translation>Demora</translation>
    </message>
    <message>
        <source>Improper request</source>
        <translation>Solicitud improcedente</translation>
    </message>
    <message>
        <source>Late libero</source>
        <translation>Líbero tardío</translation>
    </message>
    <message>
        <source>let pass</source>
        <translation>se tolera</translation>
    </message>
    <message>
        <source>Who? A number, or someone of the bench.</source>
        <translation>¿Quién? Un número, o alguien del banco.</translation>
    </message>
    <message>
        <source>Refused and written down; the next one is a delay.</source>
        <translation>Rechazada y anotada; la siguiente es una demora.</translation>
    </message>
    <message>
        <source>The rulebook makes this a delay.</source>
        <translation>Según el reglamento, esto es una demora.</translation>
    </message>
    <message>
        <source>Let pass and written down; the next late one is a delay.</source>
        <translation>Tolerado y anotado; el siguiente tardío es una demora.</translation>
    </message>
    <message>
        <source>Server?</source>
        <translation>¿Saca?</translation>
    </message>
    <message>
        <source>Space</source>
        <translation>Espacio</translation>
    </message>
    <message>
        <source>Backspace</source>
        <translation>Borrar</translation>
    </message>
    <message>
        <source>Enter</source>
        <translation>Enter</translation>
    </message>
    <message>
        <source>Home</source>
        <translation>Inicio</translation>
    </message>
    <message>
        <source>Page up</source>
        <translation>Re Pág</translation>
    </message>
    <message>
        <source>Page down</source>
        <translation>Av Pág</translation>
    </message>
    <message>
        <source>Next step</source>
        <translation>Paso siguiente</translation>
    </message>
    <message>
        <source>Left side wins the rally</source>
        <translation>Gana la jugada la izquierda</translation>
    </message>
    <message>
        <source>Right side wins the rally</source>
        <translation>Gana la jugada la derecha</translation>
    </message>
    <message>
        <source>Serve contacted</source>
        <translation>Saque golpeado</translation>
    </message>
    <message>
        <source>Replay</source>
        <translation>Repetición</translation>
    </message>
    <message>
        <source>Re-serve</source>
        <translation>Re-saque</translation>
    </message>
    <message>
        <source>No serve</source>
        <translation>Sin saque</translation>
    </message>
    <message>
        <source>Substitution, left side</source>
        <translation>Sustitución, izquierda</translation>
    </message>
    <message>
        <source>Time-out, left side</source>
        <translation>Tiempo, izquierda</translation>
    </message>
    <message>
        <source>Libero, left side</source>
        <translation>Líbero, izquierda</translation>
    </message>
    <message>
        <source>Substitution, right side</source>
        <translation>Sustitución, derecha</translation>
    </message>
    <message>
        <source>Time-out, right side</source>
        <translation>Tiempo, derecha</translation>
    </message>
    <message>
        <source>Libero, right side</source>
        <translation>Líbero, derecha</translation>
    </message>
    <message>
        <source>Who is at the line?</source>
        <translation>¿Quién está en la línea?</translation>
    </message>
    <message>
        <source>Card or delay, left side</source>
        <translation>Tarjeta o demora, izquierda</translation>
    </message>
    <message>
        <source>Card or delay, right side</source>
        <translation>Tarjeta o demora, derecha</translation>
    </message>
    <message>
        <source>Penalty point to the left side…</source>
        <translation>Punto de castigo a la izquierda…</translation>
    </message>
    <message>
        <source>Penalty point to the right side…</source>
        <translation>Punto de castigo a la derecha…</translation>
    </message>
    <message>
        <source>Playing captain, left side…</source>
        <translation>Capitán en juego, izquierda…</translation>
    </message>
    <message>
        <source>Playing captain, right side…</source>
        <translation>Capitán en juego, derecha…</translation>
    </message>
    <message>
        <source>New libero, left side…</source>
        <translation>Nuevo líbero, izquierda…</translation>
    </message>
    <message>
        <source>New libero, right side…</source>
        <translation>Nuevo líbero, derecha…</translation>
    </message>
    <message>
        <source>Sides changed</source>
        <translation>Cambio de cancha</translation>
    </message>
    <message>
        <source>Compared with the scoreboard: agrees</source>
        <translation>Comparado con el tablero: coincide</translation>
    </message>
    <message>
        <source>Compared with the scoreboard: differs…</source>
        <translation>Comparado con el tablero: difiere…</translation>
    </message>
    <message>
        <source>Suspend play…</source>
        <translation>Suspender juego…</translation>
    </message>
    <message>
        <source>Forfeit…</source>
        <translation>Dar por perdido…</translation>
    </message>
    <message>
        <source>Remark…</source>
        <translation>Observación…</translation>
    </message>
    <message>
        <source>Correct…</source>
        <translation>Corregir…</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Deshacer</translation>
    </message>
    <message>
        <source>Redo</source>
        <translation>Rehacer</translation>
    </message>
    <message>
        <source>Go to live</source>
        <translation>Ir a lo actual</translation>
    </message>
    <message>
        <source>Page back</source>
        <translation>Página atrás</translation>
    </message>
    <message>
        <source>Page on</source>
        <translation>Página adelante</translation>
    </message>
    <message>
        <source>Live band</source>
        <translation>Lo actual</translation>
    </message>
    <message>
        <source>Whole page</source>
        <translation>Pág. entera</translation>
    </message>
    <message>
        <source>Page width</source>
        <translation>Ancho pág.</translation>
    </message>
    <message>
        <source>Larger</source>
        <translation>Más grande</translation>
    </message>
    <message>
        <source>Smaller</source>
        <translation>Más pequeño</translation>
    </message>
    <message>
        <source>New match…</source>
        <translation>Nuevo partido…</translation>
    </message>
    <message>
        <source>Open…</source>
        <translation>Abrir…</translation>
    </message>
    <message>
        <source>Toss…</source>
        <translation>Sorteo…</translation>
    </message>
    <message>
        <source>Line-up, left side…</source>
        <translation>Formación, izquierda…</translation>
    </message>
    <message>
        <source>Line-up, right side…</source>
        <translation>Formación, derecha…</translation>
    </message>
    <message>
        <source>Roster, left side…</source>
        <translation>Plantel, izquierda…</translation>
    </message>
    <message>
        <source>Roster, right side…</source>
        <translation>Plantel, derecha…</translation>
    </message>
    <message>
        <source>Print…</source>
        <translation>Imprimir…</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Cerrar</translation>
    </message>
    <message>
        <source>Against the rulebook: the referee decides</source>
        <translation>Contra el reglamento: decide el árbitro</translation>
    </message>
    <message>
        <source>The referee allows it: why</source>
        <translation>El árbitro lo permite: por qué</translation>
    </message>
    <message>
        <source>Allowed</source>
        <translation>Permitido</translation>
    </message>
    <message>
        <source>%1 has named no libero for this set: its line-up says who serves.</source>
        <translation>%1 no designó líbero para este set: su formación dice quién saca.</translation>
    </message>
    <message>
        <source>Playing captain of %1</source>
        <translation>Capitán en juego de %1</translation>
    </message>
    <message>
        <source>Who is captain on court from now on?</source>
        <translation>¿Quién es el capitán en cancha desde ahora?</translation>
    </message>
    <message>
        <source>Suspend play</source>
        <translation>Suspender juego</translation>
    </message>
    <message>
        <source>Nothing is played until the first referee resumes play.</source>
        <translation>No se juega nada hasta que el primer árbitro reanude el juego.</translation>
    </message>
    <message>
        <source>Why is play broken off?</source>
        <translation>¿Por qué se interrumpe el juego?</translation>
    </message>
    <message>
        <source>Suspend</source>
        <translation>Suspender</translation>
    </message>
    <message>
        <source>Compared with the scoreboard</source>
        <translation>Comparado con el tablero</translation>
    </message>
    <message>
        <source>The sheet stands until the referees have settled it.</source>
        <translation>La hoja vale hasta que los árbitros lo resuelvan.</translation>
    </message>
    <message>
        <source>What differs</source>
        <translation>Qué difiere</translation>
    </message>
    <message>
        <source>Record</source>
        <translation>Registrar</translation>
    </message>
    <message>
        <source>Penalty point to %1</source>
        <translation>Punto de castigo a %1</translation>
    </message>
    <message>
        <source>A point without a rally, on the referee&apos;s word.</source>
        <translation>Un punto sin jugada, por decisión del árbitro.</translation>
    </message>
    <message>
        <source>Remark</source>
        <translation>Observación</translation>
    </message>
    <message>
        <source>It is written among the remarks of this set.</source>
        <translation>Se escribe entre las observaciones de este set.</translation>
    </message>
    <message>
        <source>One sentence</source>
        <translation>Una frase</translation>
    </message>
    <message>
        <source>Players on court</source>
        <translation>Jugadores en cancha</translation>
    </message>
    <message>
        <source>Left, by court position: %1. Right: %2.</source>
        <translation>Izquierda, por posición en cancha: %1. Derecha: %2.</translation>
    </message>
    <message>
        <source>Sub</source>
        <translation>Sust.</translation>
    </message>
    <message>
        <source>Time-out</source>
        <translation>Tiempo</translation>
    </message>
    <message>
        <source>Libero</source>
        <translation>Líbero</translation>
    </message>
    <message>
        <source>Card</source>
        <translation>Tarjeta</translation>
    </message>
    <message>
        <source>Not recorded.</source>
        <translation>No registrado.</translation>
    </message>
    <message>
        <source>Last entries</source>
        <translation>Últimas anotaciones</translation>
    </message>
    <message>
        <source>Close  Esc</source>
        <translation>Cerrar  Esc</translation>
    </message>
    <message>
        <source>In for</source>
        <translation>Por</translation>
    </message>
    <message>
        <source>Libero %1 · %2</source>
        <translation>Líbero %1 · %2</translation>
    </message>
    <message>
        <source>In</source>
        <translation>Entra</translation>
    </message>
    <message>
        <source>Out</source>
        <translation>Sale</translation>
    </message>
    <message>
        <source>Exchange</source>
        <translation>Intercambio</translation>
    </message>
    <message>
        <source>the other libero</source>
        <translation>el otro líbero</translation>
    </message>
    <message>
        <source>Serves no more</source>
        <translation>Deja de sacar</translation>
    </message>
    <message>
        <source>Serves</source>
        <translation>Saca</translation>
    </message>
    <message>
        <source>only the mark</source>
        <translation>solo la marca</translation>
    </message>
    <message>
        <source>Enter records.</source>
        <translation>Enter registra.</translation>
    </message>
    <message>
        <source>Which libero?</source>
        <translation>¿Qué líbero?</translation>
    </message>
    <message>
        <source>Understood</source>
        <translation>Entendido</translation>
    </message>
    <message>
        <source>%1 %2–%3 %4</source>
        <translation>%1 %2–%3 %4</translation>
    </message>
    <message>
        <source>The score stays %1.</source>
        <translation>El marcador sigue en %1.</translation>
    </message>
    <message>
        <source>The score becomes %1.</source>
        <translation>El marcador pasa a %1.</translation>
    </message>
    <message>
        <source>%1 serves next, not %2.</source>
        <translation>El próximo saque es de %1, no de %2.</translation>
    </message>
    <message>
        <source>The set is won by %1.</source>
        <translation>El set lo gana %1.</translation>
    </message>
    <message>
        <source>No later entry becomes questionable.</source>
        <translation>Ninguna anotación posterior queda en duda.</translation>
    </message>
    <message>
        <source>Later entries that become questionable: %1.</source>
        <translation>Anotaciones posteriores que quedan en duda: %1.</translation>
    </message>
    <message>
        <source>The first is “%1”: %2</source>
        <translation>La primera es “%1”: %2</translation>
    </message>
    <message>
        <source>Entries, the newest first</source>
        <translation>Anotaciones, primero la más reciente</translation>
    </message>
    <message>
        <source>Why, for the remarks</source>
        <translation>Por qué, para las observaciones</translation>
    </message>
    <message>
        <source>Rally to %1</source>
        <translation>Jugada a %1</translation>
    </message>
    <message>
        <source>Sub %1</source>
        <translation>Sust. %1</translation>
    </message>
    <message>
        <source>Time-out %1</source>
        <translation>Tiempo %1</translation>
    </message>
    <message>
        <source>This entry is struck already: choose another one.</source>
        <translation>Esta anotación ya está tachada: elegir otra.</translation>
    </message>
    <message>
        <source>Enter records the correction.</source>
        <translation>Enter registra la corrección.</translation>
    </message>
    <message>
        <source>Number in and number out, as it was.</source>
        <translation>Número que entra y número que sale, como fue.</translation>
    </message>
    <message>
        <source>What was missed?</source>
        <translation>¿Qué faltó?</translation>
    </message>
    <message>
        <source>Strike it</source>
        <translation>Tacharla</translation>
    </message>
    <message>
        <source>Put in before it</source>
        <translation>Insertar antes</translation>
    </message>
    <message>
        <source>Other winner</source>
        <translation>Otro ganador</translation>
    </message>
    <message>
        <source>Other numbers</source>
        <translation>Otros números</translation>
    </message>
    <message>
        <source>Correct an entry · substitution %1</source>
        <translation>Corregir una anotación · sustitución %1</translation>
    </message>
    <message>
        <source>Correct an entry</source>
        <translation>Corregir una anotación</translation>
    </message>
    <message>
        <source>Number</source>
        <translation>Número</translation>
    </message>
    <message>
        <source>Points</source>
        <translation>Puntos</translation>
    </message>
    <message>
        <source>Points taken back</source>
        <translation>Puntos anulados</translation>
    </message>
    <message>
        <source>Only note it</source>
        <translation>Solo anotarlo</translation>
    </message>
    <message>
        <source>say nothing yet</source>
        <translation>aún no decir nada</translation>
    </message>
    <message>
        <source>Ruling: wrong server</source>
        <translation>Decisión: sacador incorrecto</translation>
    </message>
    <message>
        <source>point and serve lost</source>
        <translation>pierde punto y saque</translation>
    </message>
    <message>
        <source>%1 serves</source>
        <translation>%1 saca</translation>
    </message>
    <message>
        <source>%1 served before</source>
        <translation>%1 sacó antes</translation>
    </message>
    <message>
        <source>Who is at the line? %1 %2 should serve</source>
        <translation>¿Quién está en la línea? Debe sacar %1 %2</translation>
    </message>
    <message>
        <source>libero</source>
        <translation>líbero</translation>
    </message>
    <message>
        <source>all</source>
        <translation>todos</translation>
    </message>
    <message>
        <source>Which number stands there?</source>
        <translation>¿Qué número está ahí?</translation>
    </message>
    <message>
        <source>She is the right server.</source>
        <translation>Es el sacador correcto.</translation>
    </message>
    <message>
        <source>Sheet of set %1</source>
        <translation>Hoja del set %1</translation>
    </message>
    <message>
        <source>Set %1, page %2 of %3. Press here or Home to go back to live.</source>
        <translation>Set %1, página %2 de %3. Pulsar aquí o Inicio para volver a lo actual.</translation>
    </message>
    <message>
        <source>Time of day</source>
        <translation>Hora del día</translation>
    </message>
    <message>
        <source>vacant</source>
        <translation>vacante</translation>
    </message>
    <message>
        <source>What happened: hurt, sent off</source>
        <translation>Qué ocurrió: lesionado, expulsado</translation>
    </message>
    <message>
        <source>Exceptional</source>
        <translation>Excepcional</translation>
    </message>
    <message>
        <source>Place stays vacant</source>
        <translation>Lugar queda vacante</translation>
    </message>
    <message>
        <source>Substitution %1 · %2</source>
        <translation>Sustitución %1 · %2</translation>
    </message>
    <message>
        <source>Who leaves the court?</source>
        <translation>¿Quién sale de la cancha?</translation>
    </message>
    <message>
        <source>Number in, number out, Enter.</source>
        <translation>Número que entra, número que sale, Enter.</translation>
    </message>
    <message>
        <source>Who goes out?</source>
        <translation>¿Quién sale?</translation>
    </message>
    <message>
        <source>This is the only place for the number. Enter records.</source>
        <translation>Es el único lugar para ese número. Enter registra.</translation>
    </message>
    <message>
        <source>&amp;Match</source>
        <translation>&amp;Partido</translation>
    </message>
    <message>
        <source>&amp;Set</source>
        <translation>&amp;Set</translation>
    </message>
    <message>
        <source>&amp;Rally</source>
        <translation>&amp;Jugada</translation>
    </message>
    <message>
        <source>S&amp;heet</source>
        <translation>&amp;Hoja</translation>
    </message>
    <message>
        <source>&amp;View</source>
        <translation>&amp;Ver</translation>
    </message>
    <message>
        <source>Look as the system</source>
        <translation>Aspecto del sistema</translation>
    </message>
    <message>
        <source>Light look</source>
        <translation>Aspecto claro</translation>
    </message>
    <message>
        <source>Dark look</source>
        <translation>Aspecto oscuro</translation>
    </message>
    <message>
        <source>left side</source>
        <translation>izquierda</translation>
    </message>
    <message>
        <source>right side</source>
        <translation>derecha</translation>
    </message>
    <message>
        <source>Which libero cannot play on?</source>
        <translation>¿Qué líbero no puede seguir?</translation>
    </message>
    <message>
        <source>%1 is libero from now on. Enter records.</source>
        <translation>%1 es líbero desde ahora. Enter registra.</translation>
    </message>
    <message>
        <source>Nobody takes her part. Enter records.</source>
        <translation>Nadie ocupa su lugar. Enter registra.</translation>
    </message>
    <message>
        <source>Forfeit: which team, and what does it lose?</source>
        <translation>Dar por perdido: ¿qué equipo y qué pierde?</translation>
    </message>
    <message>
        <source>All sets</source>
        <translation>Todos los sets</translation>
    </message>
    <message>
        <source>does not come, or refuses</source>
        <translation>no viene, o se niega</translation>
    </message>
    <message>
        <source>The match</source>
        <translation>El partido</translation>
    </message>
    <message>
        <source>cannot play on</source>
        <translation>no puede seguir</translation>
    </message>
    <message>
        <source>This set</source>
        <translation>Este set</translation>
    </message>
    <message>
        <source>Why, on the referee&apos;s word</source>
        <translation>Por qué, por decisión del árbitro</translation>
    </message>
    <message>
        <source>Only the first referee declares a forfeit.</source>
        <translation>Solo el primer árbitro da algo por perdido.</translation>
    </message>
    <message>
        <source>Resume play</source>
        <translation>Reanudar juego</translation>
    </message>
    <message>
        <source>As it stood</source>
        <translation>Como estaba</translation>
    </message>
    <message>
        <source>same score and players</source>
        <translation>mismo marcador y jugadores</translation>
    </message>
    <message>
        <source>The set again</source>
        <translation>El set de nuevo</translation>
    </message>
    <message>
        <source>from nothing, same line-ups</source>
        <translation>desde cero, mismas formaciones</translation>
    </message>
    <message>
        <source>The broken-off set is cancelled and keeps its sheet. Enter records.</source>
        <translation>El set interrumpido se anula y conserva su hoja. Enter registra.</translation>
    </message>
    <message>
        <source>Play goes on where it stopped. Enter records.</source>
        <translation>El juego sigue donde se detuvo. Enter registra.</translation>
    </message>
    <message>
        <source>New libero %1</source>
        <translation>Nuevo líbero %1</translation>
    </message>
    <message>
        <source>New</source>
        <translation>Nuevo</translation>
    </message>
    <message>
        <source>Why she cannot play on</source>
        <translation>Por qué no puede seguir</translation>
    </message>
    <message>
        <source>warning at %1</source>
        <translation>aviso en %1</translation>
    </message>
    <message>
        <source>sound the warning</source>
        <translation>dar el aviso</translation>
    </message>
    <message>
        <source>time-out is over</source>
        <translation>tiempo terminado</translation>
    </message>
    <message>
        <source>%1 %2, slot %3</source>
        <translation>%1 %2, puesto %3</translation>
    </message>
    <message>
        <source>Agrees</source>
        <translation>Igual</translation>
    </message>
    <message>
        <source>Differs…</source>
        <translation>Difiere…</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Atrás</translation>
    </message>
    <message>
        <source>Compare</source>
        <translation>Comparar</translation>
    </message>
    <message>
        <source>Score</source>
        <translation>Marcador</translation>
    </message>
    <message>
        <source>Substitutions</source>
        <translation>Sustituciones</translation>
    </message>
    <message>
        <source>Time-outs</source>
        <translation>Tiempos</translation>
    </message>
    <message>
        <source>Serves next</source>
        <translation>Próximo saque</translation>
    </message>
    <message>
        <source>a point to %1</source>
        <translation>un punto a %1</translation>
    </message>
    <message>
        <source>point and serve to %1</source>
        <translation>punto y saque a %1</translation>
    </message>
    <message>
        <source>out for the rest of the set</source>
        <translation>fuera por el resto del set</translation>
    </message>
    <message>
        <source>out for the rest of the match</source>
        <translation>fuera por el resto del partido</translation>
    </message>
    <message>
        <source>no point</source>
        <translation>sin punto</translation>
    </message>
    <message>
        <source>%1: %2. Enter records.</source>
        <translation>%1: %2. Enter registra.</translation>
    </message>
    <message>
        <source>Exceptional: anybody but a libero may come in.</source>
        <translation>Excepcional: puede entrar cualquiera menos un líbero.</translation>
    </message>
    <message>
        <source>Exceptional: anybody may come in, a libero last.</source>
        <translation>Excepcional: puede entrar cualquiera, un líbero solo al final.</translation>
    </message>
    <message>
        <source>%1 stays out for the rest of the match.</source>
        <translation>%1 queda fuera por el resto del partido.</translation>
    </message>
    <message>
        <source>%1 stays out for the rest of the set.</source>
        <translation>%1 queda fuera por el resto del set.</translation>
    </message>
    <message>
        <source>Exceptional substitution %1, %2 in for %3: %4</source>
        <translation>Sustitución excepcional %1, %2 por %3: %4</translation>
    </message>
    <message>
        <source>%1 would be incomplete and has lost: record the forfeit.</source>
        <translation>%1 quedaría incompleto y ha perdido: darlo por perdido.</translation>
    </message>
    <message>
        <source>She leaves and nobody comes in. When her place is to serve, the rally is lost.</source>
        <translation>Sale y nadie entra. Cuando a su lugar le toque sacar, se pierde la jugada.</translation>
    </message>
    <message>
        <source>Recorded: %1 plays on with a vacant place. Tell the second referee.</source>
        <translation>Registrado: %1 sigue con un lugar vacante. Avisar al segundo árbitro.</translation>
    </message>
    <message>
        <source>%1 on court for %2</source>
        <translation>%1 en cancha por %2</translation>
    </message>
    <message>
        <source>not on court</source>
        <translation>fuera de la cancha</translation>
    </message>
    <message>
        <source>%1 comes back</source>
        <translation>vuelve %1</translation>
    </message>
    <message>
        <source>Tell the second referee now: %1 %2 has served, %3 should have.</source>
        <translation>Avisar ya al segundo árbitro: sacó %1 %2, debía sacar %3.</translation>
    </message>
    <message>
        <source>Tell the second referee: %1 %2 is at the line, %3 should serve.</source>
        <translation>Avisar al segundo árbitro: %1 %2 está en la línea, debe sacar %3.</translation>
    </message>
    <message>
        <source>%1 %2 is at the line, %3 should serve. Say nothing before the contact.</source>
        <translation>%1 %2 está en la línea, debe sacar %3. No decir nada antes del golpe.</translation>
    </message>
    <message>
        <source>Point and serve to %1</source>
        <translation>Punto y saque a %1</translation>
    </message>
    <message>
        <source>%1 has the serve already</source>
        <translation>%1 ya tiene el saque</translation>
    </message>
    <message>
        <source>; no point is taken back.</source>
        <translation>; no se anula ningún punto.</translation>
    </message>
    <message>
        <source>; points of %1 taken back: %2.</source>
        <translation>; puntos de %1 anulados: %2.</translation>
    </message>
    <message>
        <source>The first referee rules.</source>
        <translation>Decide el primer árbitro.</translation>
    </message>
    <message>
        <source>yellow</source>
        <translation>amarilla</translation>
    </message>
    <message>
        <source>red</source>
        <translation>roja</translation>
    </message>
    <message>
        <source>red and yellow together</source>
        <translation>roja y amarilla juntas</translation>
    </message>
    <message>
        <source>red and yellow apart</source>
        <translation>roja y amarilla separadas</translation>
    </message>
    <message>
        <source>%1 loses every set to nothing; %2 wins the match.</source>
        <translation>%1 pierde todos los sets a cero; %2 gana el partido.</translation>
    </message>
    <message>
        <source>%1 keeps its points; %2 gets what it needs for this set.</source>
        <translation>%1 conserva sus puntos; %2 recibe los que le faltan para este set.</translation>
    </message>
    <message>
        <source>%1 keeps its points and sets; %2 gets what it needs for the match.</source>
        <translation>%1 conserva sus puntos y sets; %2 recibe lo que le falta para el partido.</translation>
    </message>
    <message>
        <source>match opened</source>
        <translation>partido abierto</translation>
    </message>
    <message>
        <source>roster</source>
        <translation>plantel</translation>
    </message>
    <message>
        <source>officials</source>
        <translation>oficiales</translation>
    </message>
    <message>
        <source>match closed</source>
        <translation>partido cerrado</translation>
    </message>
    <message>
        <source>play suspended</source>
        <translation>juego suspendido</translation>
    </message>
    <message>
        <source>play resumed</source>
        <translation>juego reanudado</translation>
    </message>
    <message>
        <source>line-up</source>
        <translation>formación</translation>
    </message>
    <message>
        <source>sides changed</source>
        <translation>cambio de cancha</translation>
    </message>
    <message>
        <source>late replacement let pass</source>
        <translation>reemplazo tardío tolerado</translation>
    </message>
    <message>
        <source>penalty</source>
        <translation>castigo</translation>
    </message>
    <message>
        <source>point %1, %2</source>
        <translation>punto %1, %2</translation>
    </message>
    <message>
        <source>serves first; %1 on the left</source>
        <translation>saca primero; %1 a la izquierda</translation>
    </message>
    <message>
        <source>set %1 started %2</source>
        <translation>set %1 iniciado %2</translation>
    </message>
    <message>
        <source>set %1 ended %2</source>
        <translation>set %1 terminado %2</translation>
    </message>
    <message>
        <source>own serve</source>
        <translation>saque propio</translation>
    </message>
    <message>
        <source>wins the serve</source>
        <translation>gana el saque</translation>
    </message>
    <message>
        <source>replay</source>
        <translation>repetición</translation>
    </message>
    <message>
        <source>re-serve</source>
        <translation>re-saque</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>no serve</source>
        <translation>sin saque</translation>
    </message>
    <message>
        <source>%1 in for %2</source>
        <translation>%1 por %2</translation>
    </message>
    <message>
        <source>time-out at %1–%2</source>
        <translation>tiempo con %1–%2</translation>
    </message>
    <message>
        <source>libero %1 serves</source>
        <translation>líbero %1 saca</translation>
    </message>
    <message>
        <source>libero %1 serves no more</source>
        <translation>líbero %1 deja de sacar</translation>
    </message>
    <message>
        <source>forfeits the set</source>
        <translation>pierde el set por reglamento</translation>
    </message>
    <message>
        <source>forfeits the match</source>
        <translation>pierde el partido por reglamento</translation>
    </message>
    <message>
        <source>%1 at the service line</source>
        <translation>%1 en la línea de saque</translation>
    </message>
    <message>
        <source>wrong server %1</source>
        <translation>sacador incorrecto %1</translation>
    </message>
    <message>
        <source>illegal substitution, %1</source>
        <translation>sustitución ilegal, %1</translation>
    </message>
    <message>
        <source>illegal libero replacement, %1</source>
        <translation>reemplazo ilegal de líbero, %1</translation>
    </message>
    <message>
        <source>%1 leaves, place vacant</source>
        <translation>%1 sale, lugar vacante</translation>
    </message>
    <message>
        <source>libero %1 in for %2</source>
        <translation>líbero %1 por %2</translation>
    </message>
    <message>
        <source>libero %1 out</source>
        <translation>líbero %1 sale</translation>
    </message>
    <message>
        <source>libero %1 for libero %2</source>
        <translation>líbero %1 por líbero %2</translation>
    </message>
    <message>
        <source>libero %1 cannot play on</source>
        <translation>líbero %1 no puede seguir</translation>
    </message>
    <message>
        <source>%1 is libero in place of %2</source>
        <translation>%1 es líbero en lugar de %2</translation>
    </message>
    <message>
        <source>captain %1</source>
        <translation>capitán %1</translation>
    </message>
    <message>
        <source>improper request</source>
        <translation>solicitud improcedente</translation>
    </message>
    <message>
        <source>compared: agrees</source>
        <translation>comparado: coincide</translation>
    </message>
    <message>
        <source>compared: %1</source>
        <translation>comparado: %1</translation>
    </message>
    <message>
        <source>remark: %1</source>
        <translation>observación: %1</translation>
    </message>
    <message>
        <source>%1: signed by the %2, under protest</source>
        <translation>%1: firmado por el %2, bajo protesta</translation>
    </message>
    <message>
        <source>%1: signed by the %2</source>
        <translation>%1: firmado por el %2</translation>
    </message>
    <message>
        <source>%1: not signed by the %2</source>
        <translation>%1: sin firma del %2</translation>
    </message>
    <message>
        <source>%1: sealed</source>
        <translation>%1: sellado</translation>
    </message>
    <message>
        <source>%1: reopened by %2, %3</source>
        <translation>%1: reabierto por %2, %3</translation>
    </message>
    <message>
        <source>injury</source>
        <translation>lesión</translation>
    </message>
    <message>
        <source>interference</source>
        <translation>interferencia</translation>
    </message>
    <message>
        <source>double fault</source>
        <translation>doble falta</translation>
    </message>
    <message>
        <source>mistaken whistle</source>
        <translation>silbato por error</translation>
    </message>
    <message>
        <source>serve before the whistle</source>
        <translation>saque antes del silbato</translation>
    </message>
    <message>
        <source>stands again: %1</source>
        <translation>vale de nuevo: %1</translation>
    </message>
    <message>
        <source>struck: %1</source>
        <translation>tachado: %1</translation>
    </message>
    <message>
        <source>Language of the system</source>
        <translation>Idioma del sistema</translation>
    </message>
    <message>
        <source>Next: toss for the deciding set</source>
        <translation>Sigue: sorteo del set decisivo</translation>
    </message>
    <message>
        <source>Next: the toss</source>
        <translation>Sigue: el sorteo</translation>
    </message>
    <message>
        <source>Who serves first, and who stands left of the table?</source>
        <translation>¿Quién saca primero y quién está a la izquierda de la mesa?</translation>
    </message>
    <message>
        <source>Record the toss…</source>
        <translation>Registrar el sorteo…</translation>
    </message>
    <message>
        <source>Next: line-up of %1</source>
        <translation>Sigue: formación de %1</translation>
    </message>
    <message>
        <source>Set %1. As on the slip, by court position 1 to 6.</source>
        <translation>Set %1. Como en la papeleta, por posición en cancha, de 1 a 6.</translation>
    </message>
    <message>
        <source>Type the line-up…</source>
        <translation>Escribir la formación…</translation>
    </message>
    <message>
        <source>Next: start of set %1</source>
        <translation>Sigue: inicio del set %1</translation>
    </message>
    <message>
        <source>%1 serves first, number %2. Press at the whistle.</source>
        <translation>Saca primero %1, número %2. Pulsar al sonar el silbato.</translation>
    </message>
    <message>
        <source>Start the set</source>
        <translation>Iniciar el set</translation>
    </message>
    <message>
        <source>%1 wins set %2, %3–%4</source>
        <translation>%1 gana el set %2, %3–%4</translation>
    </message>
    <message>
        <source>Confirm the score with the second referee, then end the set.</source>
        <translation>Confirmar el marcador con el segundo árbitro y terminar el set.</translation>
    </message>
    <message>
        <source>End the set…</source>
        <translation>Terminar el set…</translation>
    </message>
    <message>
        <source>%1 wins the match, %2–%3</source>
        <translation>%1 gana el partido, %2–%3</translation>
    </message>
    <message>
        <source>Read the remarks once more with the referee, then close the match.</source>
        <translation>Leer otra vez las observaciones con el árbitro y cerrar el partido.</translation>
    </message>
    <message>
        <source>Close the match</source>
        <translation>Cerrar el partido</translation>
    </message>
    <message>
        <source>Next: a match</source>
        <translation>Sigue: un partido</translation>
    </message>
    <message>
        <source>Begin a new match, or open one.</source>
        <translation>Comenzar un partido nuevo o abrir uno.</translation>
    </message>
    <message>
        <source>Serving now</source>
        <translation>Al saque</translation>
    </message>
    <message>
        <source>Rally: who wins it?</source>
        <translation>Jugada: ¿quién la gana?</translation>
    </message>
    <message>
        <source>Play is suspended</source>
        <translation>El juego está suspendido</translation>
    </message>
    <message>
        <source>Go on when the first referee resumes play.</source>
        <translation>Seguir cuando el primer árbitro reanude el juego.</translation>
    </message>
    <message>
        <source>Resume play…</source>
        <translation>Reanudar juego…</translation>
    </message>
    <message>
        <source>The match is closed</source>
        <translation>El partido está cerrado</translation>
    </message>
    <message>
        <source>The record is complete. Print it for the signatures.</source>
        <translation>El registro está completo. Imprimirlo para las firmas.</translation>
    </message>
    <message>
        <source>%1 wins the set %2–%3: confirm with the second referee.</source>
        <translation>%1 gana el set %2–%3: confirmar con el segundo árbitro.</translation>
    </message>
    <message>
        <source>Tell the second referee: %1 has used %2 of %3 substitutions.</source>
        <translation>Avisar al segundo árbitro: %1 ha usado %2 de %3 sustituciones.</translation>
    </message>
    <message>
        <source>Tell the second referee: %1 has taken its last time-out.</source>
        <translation>Avisar al segundo árbitro: %1 ha usado su último tiempo.</translation>
    </message>
    <message>
        <source>Set point %1</source>
        <translation>Punto de set %1</translation>
    </message>
    <message>
        <source>Match point %1</source>
        <translation>Punto de partido %1</translation>
    </message>
    <message>
        <source>Tell the referees: %1 has %2 points, and the teams change sides.</source>
        <translation>Avisar a los árbitros: %1 tiene %2 puntos y los equipos cambian de cancha.</translation>
    </message>
    <message>
        <source>Number %2 of %1 is at the service line for number %3: say nothing before the serve.</source>
        <translation>El número %2 de %1 está en la línea de saque por el número %3: no decir nada antes del saque.</translation>
    </message>
    <message>
        <source>Tell the second referee now: number %2 of %1 is at serve for number %3.</source>
        <translation>Avisar ya al segundo árbitro: el número %2 de %1 está al saque por el número %3.</translation>
    </message>
    <message>
        <source>The vacant place of %1 is to serve, in slot %2: the rally is lost, record no serve.</source>
        <translation>Le toca sacar al lugar vacante de %1, en el puesto %2: se pierde la jugada, registrar sin saque.</translation>
    </message>
    <message>
        <source>Libero %2 of %1 has come to the front row: she goes out before the serve.</source>
        <translation>El líbero %2 de %1 ha llegado a la línea delantera: sale antes del saque.</translation>
    </message>
    <message>
        <source>%1 has had its improper request: the next one is a delay.</source>
        <translation>%1 ya tuvo su solicitud improcedente: la siguiente es una demora.</translation>
    </message>
    <message>
        <source>Recorded: %1 #%2 in for #%3. Signal the second referee.</source>
        <translation>Registrado: %1, %2 por %3. Dar la señal al segundo árbitro.</translation>
    </message>
    <message>
        <source>line-up awaited</source>
        <translation>falta la formación</translation>
    </message>
    <message>
        <source>line-up stands</source>
        <translation>formación lista</translation>
    </message>
    <message>
        <source>wins the rally</source>
        <translation>gana la jugada</translation>
    </message>
    <message>
        <source>wins the set</source>
        <translation>gana el set</translation>
    </message>
    <message>
        <source>wins the match</source>
        <translation>gana el partido</translation>
    </message>
    <message>
        <source>serves</source>
        <translation>saca</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 de %2</translation>
    </message>
    <message>
        <source>%1 left</source>
        <translation>aún %1</translation>
    </message>
    <message>
        <source>none left</source>
        <translation>no hay</translation>
    </message>
    <message>
        <source>%1 given</source>
        <translation>hay %1</translation>
    </message>
    <message>
        <source>none</source>
        <translation>no hay</translation>
    </message>
    <message>
        <source>%1 on</source>
        <translation>%1 dentro</translation>
    </message>
    <message>
        <source>not on</source>
        <translation>fuera</translation>
    </message>
    <message>
        <source>in %1</source>
        <translation>en %1</translation>
    </message>
    <message>
        <source>Set %1    Sets won: %2 %3–%4 %5</source>
        <translation>Set %1    Sets ganados: %2 %3–%4 %5</translation>
    </message>
    <message>
        <source>Set %1, best of %2</source>
        <translation>Set %1, al mejor de %2</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>Rally %1</source>
        <translation>Jugada %1</translation>
    </message>
    <message>
        <source>Slot %1 · libero for %2</source>
        <translation>Puesto %1 · líbero por %2</translation>
    </message>
    <message>
        <source>Slot %1 · captain</source>
        <translation>Puesto %1 · capitán</translation>
    </message>
    <message>
        <source>Slot %1</source>
        <translation>Puesto %1</translation>
    </message>
    <message>
        <source>If the rally is lost, next server</source>
        <translation>Si pierde la jugada, saca</translation>
    </message>
    <message>
        <source>slot %1</source>
        <translation>puesto %1</translation>
    </message>
    <message>
        <source>then %1 %2</source>
        <translation>luego %1 %2</translation>
    </message>
    <message>
        <source>Interval %1</source>
        <translation>Intervalo %1</translation>
    </message>
    <message>
        <source>Line-ups late</source>
        <translation>Plazo vencido</translation>
    </message>
    <message>
        <source>Line-ups due %1</source>
        <translation>Plazo %1</translation>
    </message>
    <message>
        <source>Warm-up %1</source>
        <translation>Calentamiento %1</translation>
    </message>
    <message>
        <source>Saved %1</source>
        <translation>Guardado %1</translation>
    </message>
    <message>
        <source>Not saved</source>
        <translation>No guardado</translation>
    </message>
    <message>
        <source>Saved</source>
        <translation>Guardado</translation>
    </message>
    <message>
        <source>Read only</source>
        <translation>Solo lectura</translation>
    </message>
    <message>
        <source>Not recorded. %1 The sheet stands as it did before.</source>
        <translation>No registrado. %1 La hoja sigue como estaba.</translation>
    </message>
    <message>
        <source>This match is open for reading only: nothing can be recorded in this window.</source>
        <translation>Este partido está abierto solo para lectura: en esta ventana no se puede registrar nada.</translation>
    </message>
    <message>
        <source>Another window holds this match (%1): nothing can be recorded in this one.</source>
        <translation>Otra ventana tiene este partido (%1): en esta no se puede registrar nada.</translation>
    </message>
    <message>
        <source>Replay and its cause…</source>
        <translation>Repetición y su causa…</translation>
    </message>
    <message>
        <source>Illegal player found, left side…</source>
        <translation>Jugador ilegal, izquierda…</translation>
    </message>
    <message>
        <source>Illegal player found, right side…</source>
        <translation>Jugador ilegal, derecha…</translation>
    </message>
    <message>
        <source>Officials…</source>
        <translation>Oficiales…</translation>
    </message>
    <message>
        <source>Sign off…</source>
        <translation>Firmar…</translation>
    </message>
    <message>
        <source>Reopen what is sealed…</source>
        <translation>Reabrir lo sellado…</translation>
    </message>
    <message>
        <source>Team book…</source>
        <translation>Libro de equipos…</translation>
    </message>
    <message>
        <source>How things are entered…</source>
        <translation>Cómo se anota…</translation>
    </message>
    <message>
        <source>Change keys…</source>
        <translation>Cambiar teclas…</translation>
    </message>
    <message>
        <source>Hel&amp;p</source>
        <translation>A&amp;yuda</translation>
    </message>
    <message>
        <source>There is nothing to sign yet: a set is signed after its end, the match when it is closed.</source>
        <translation>Aún no hay nada que firmar: un set se firma al terminar, el partido cuando está cerrado.</translation>
    </message>
    <message>
        <source>Nothing is sealed: it can be changed as it is.</source>
        <translation>Nada está sellado: se puede cambiar tal como está.</translation>
    </message>
    <message>
        <source>Press for her replacement</source>
        <translation>Pulsar para su reemplazo</translation>
    </message>
    <message>
        <source>Press for a substitution in her place</source>
        <translation>Pulsar para una sustitución en su lugar</translation>
    </message>
    <message>
        <source>%1 is the key of “%2”: choose another one, or change that one first.</source>
        <translation>%1 es la tecla de “%2”: elegir otra, o cambiar esa primero.</translation>
    </message>
    <message>
        <source>Shirt numbers are typed with %1: choose another key.</source>
        <translation>Con %1 se escriben números de camiseta: elegir otra tecla.</translation>
    </message>
    <message>
        <source>The window needs %1 to find one’s way in it: choose another key.</source>
        <translation>La ventana necesita %1 para moverse por ella: elegir otra tecla.</translation>
    </message>
    <message>
        <source>In for %1, at the place of the server? Enter records it, or type another number.</source>
        <translation>¿Por %1, en el lugar del sacador? Enter lo registra, o escribir otro número.</translation>
    </message>
    <message>
        <source>In for whom? Those who may go are offered.</source>
        <translation>¿Por quién? Se ofrecen los que pueden salir.</translation>
    </message>
    <message>
        <source>Before “%1”</source>
        <translation>Antes de “%1”</translation>
    </message>
    <message>
        <source>In place of “%1”</source>
        <translation>En lugar de “%1”</translation>
    </message>
    <message>
        <source>%1: the table stands as it did then. Record what belongs there, or press Esc.</source>
        <translation>%1: la mesa está como estaba entonces. Registrar lo que corresponde, o pulsar Esc.</translation>
    </message>
    <message>
        <source>%1: %2 %3</source>
        <translation>%1: %2 %3</translation>
    </message>
    <message>
        <source>Something else</source>
        <translation>Otra cosa</translation>
    </message>
    <message>
        <source>record it at the table</source>
        <translation>registrarlo en la mesa</translation>
    </message>
    <message>
        <source>Record it anew</source>
        <translation>Registrar de nuevo</translation>
    </message>
    <message>
        <source>As before: %1 in for %2. Enter records it, or type another number.</source>
        <translation>Como antes: %1 por %2. Enter lo registra, o escribir otro número.</translation>
    </message>
    <message>
        <source>High contrast</source>
        <translation>Alto contraste</translation>
    </message>
    <message>
        <source>&amp;Look</source>
        <translation>&amp;Aspecto</translation>
    </message>
    <message>
        <source>Size of &amp;words</source>
        <translation>&amp;Tamaño del texto</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>Replay: what for?</source>
        <translation>Repetición: ¿por qué?</translation>
    </message>
    <message>
        <source>from outside</source>
        <translation>de fuera</translation>
    </message>
    <message>
        <source>Enter records a replay without its cause.</source>
        <translation>Enter registra una repetición sin su causa.</translation>
    </message>
    <message>
        <source>Illegal player of %1, found after play went on</source>
        <translation>Jugador ilegal de %1, hallado con el juego ya reanudado</translation>
    </message>
    <message>
        <source>Substitution</source>
        <translation>Sustitución</translation>
    </message>
    <message>
        <source>came in illegally</source>
        <translation>entró ilegalmente</translation>
    </message>
    <message>
        <source>Libero replacement</source>
        <translation>Reemplazo de líbero</translation>
    </message>
    <message>
        <source>an illegal one</source>
        <translation>uno ilegal</translation>
    </message>
    <message>
        <source>Who has no right to be on court?</source>
        <translation>¿Quién no tiene derecho a estar en cancha?</translation>
    </message>
    <message>
        <source>Then record who goes out and who comes in.</source>
        <translation>Luego registrar quién sale y quién entra.</translation>
    </message>
    <message>
        <source>Next: sign-off of the match</source>
        <translation>Sigue: firmas del partido</translation>
    </message>
    <message>
        <source>Show it to the referee, then have it signed and seal it. It can wait.</source>
        <translation>Mostrarlo al árbitro, hacerlo firmar y sellarlo. Puede esperar.</translation>
    </message>
    <message>
        <source>Next: sign-off of set %1</source>
        <translation>Sigue: firmas del set %1</translation>
    </message>
    <message>
        <source>The record is signed and sealed. Print it.</source>
        <translation>El registro está firmado y sellado. Imprimirlo.</translation>
    </message>
    <message>
        <source>%1 has taken its last time-out.</source>
        <translation>%1 ha usado su último tiempo.</translation>
    </message>
    <message>
        <source>%1 has %2 points, and the teams change sides.</source>
        <translation>%1 tiene %2 puntos y los equipos cambian de cancha.</translation>
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
        <translation>Mayús</translation>
    </message>
    <message>
        <source>Save a copy…</source>
        <translation>Guardar una copia…</translation>
    </message>
    <message>
        <source>If the referees gave the point, by the rulebook it stands: correct only a slip of the table.</source>
        <translation>Si el punto lo dieron los árbitros, según el reglamento se mantiene: corregir solo un error de la mesa.</translation>
    </message>
    <message>
        <source>An earlier set</source>
        <translation>Un set anterior</translation>
    </message>
    <message>
        <source>has no right to it</source>
        <translation>no le corresponde</translation>
    </message>
    <message>
        <source>Which team and set, and how many points does it keep there? Empty: all.</source>
        <translation>¿Qué equipo y qué set, y cuántos puntos conserva en él? Vacío: todos.</translation>
    </message>
    <message>
        <source>Set</source>
        <translation>Set</translation>
    </message>
    <message>
        <source>Set %1 is to be played.</source>
        <translation>Queda por jugar el set %1.</translation>
    </message>
    <message>
        <source>%1 wins the match.</source>
        <translation>%1 gana el partido.</translation>
    </message>
    <message>
        <source>%1 loses set %2, %3–%4.</source>
        <translation>%1 pierde el set %2 por %3–%4.</translation>
    </message>
    <message>
        <source>forfeits set %1</source>
        <translation>pierde el set %1 por reglamento</translation>
    </message>
    <message>
        <source>set %1 started</source>
        <translation>set %1 iniciado</translation>
    </message>
    <message>
        <source>set %1 ended</source>
        <translation>set %1 terminado</translation>
    </message>
</context>
<context>
    <name>setfolio</name>
    <message>
        <source>Close</source>
        <translation>Cerrar</translation>
    </message>
</context>
<context>
    <name>setfolio::AppearanceChoice</name>
    <message>
        <source>Look</source>
        <translation>Aspecto</translation>
    </message>
    <message>
        <source>Size of words</source>
        <translation>Tamaño del texto</translation>
    </message>
    <message>
        <source>Words at %1 %</source>
        <translation>Texto al %1 %</translation>
    </message>
</context>
<context>
    <name>setfolio::CommandWords</name>
    <message>
        <source>There is no option %1 here. A file of that name is written ./%1.</source>
        <translation>Aquí no hay opción %1. Un archivo con ese nombre se escribe ./%1.</translation>
    </message>
    <message>
        <source>The option %1 is given twice: give it once.</source>
        <translation>La opción %1 aparece dos veces: darla una sola vez.</translation>
    </message>
    <message>
        <source>The option %1 needs a value after it.</source>
        <translation>La opción %1 necesita un valor a continuación.</translation>
    </message>
    <message>
        <source>There is no paper %1: choose letter or a4.</source>
        <translation>No hay papel %1: elegir letter o a4.</translation>
    </message>
    <message>
        <source>There is no sheet %1: choose among match, set, hand-over, libero, coach, entries, slips, blank-slips and blank-set.</source>
        <translation>No hay hoja %1: elegir entre match, set, hand-over, libero, coach, entries, slips, blank-slips y blank-set.</translation>
    </message>
    <message>
        <source>%1 is no seal: type the 24 signs of the code from the paper, without I, O, 0 or 1, or all 64 digits.</source>
        <translation>%1 no es un sello: escribir los 24 signos del código del papel, sin I, O, 0 ni 1, o los 64 dígitos.</translation>
    </message>
    <message>
        <source>A PDF cannot be made as %1: choose archive or plain.</source>
        <translation>Un PDF no se puede crear como %1: elegir archive o plain.</translation>
    </message>
    <message>
        <source>The option %1 is missing.</source>
        <translation>Falta la opción %1.</translation>
    </message>
    <message>
        <source>%1 needs to be told which file.</source>
        <translation>%1 necesita saber qué archivo.</translation>
    </message>
    <message>
        <source>%1 is one file too many here.</source>
        <translation>%1 es un archivo de más aquí.</translation>
    </message>
    <message>
        <source>Entries: %1.</source>
        <translation>Anotaciones: %1.</translation>
    </message>
    <message>
        <source>Entries: %1, findings: %2.</source>
        <translation>Anotaciones: %1, objeciones: %2.</translation>
    </message>
    <message>
        <source>setfolio --help lists the commands.</source>
        <translation>setfolio --help muestra los comandos.</translation>
    </message>
    <message>
        <source>%1, line %2: %3</source>
        <translation>%1, línea %2: %3</translation>
    </message>
    <message>
        <source>The referee let it stand.</source>
        <translation>El árbitro lo dejó valer.</translation>
    </message>
    <message>
        <source>The referee let it stand: %1</source>
        <translation>El árbitro lo dejó valer: %1</translation>
    </message>
    <message>
        <source>%1: whole and lawful. %2</source>
        <translation>%1: íntegro y reglamentario. %2</translation>
    </message>
    <message>
        <source>%1: whole. %2</source>
        <translation>%1: íntegro. %2</translation>
    </message>
    <message>
        <source>%1: damaged or altered. %2</source>
        <translation>%1: dañado o alterado. %2</translation>
    </message>
    <message>
        <source>%1: cut short. %2</source>
        <translation>%1: cortado. %2</translation>
    </message>
    <message>
        <source>%1: written. %2</source>
        <translation>%1: escrito. %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>standard input</source>
        <translation>entrada estándar</translation>
    </message>
    <message>
        <source>%1 holds no match yet: open one in it first.</source>
        <translation>%1 aún no contiene un partido: abrir uno en él primero.</translation>
    </message>
    <message>
        <source>%1 is not written: the sheets could not be drawn. Print each match by itself.</source>
        <translation>%1 no se escribió: no se pudieron dibujar las hojas. Imprimir cada partido por separado.</translation>
    </message>
    <message>
        <source>%1: written. Pages: %2.</source>
        <translation>%1: escrito. Páginas: %2.</translation>
    </message>
    <message>
        <source>Standard output cannot be written to its end: what was said there is not whole.</source>
        <translation>La salida estándar no se pudo escribir hasta el final: lo dicho ahí no está completo.</translation>
    </message>
    <message>
        <source>There is no screen to open the window on. The commands print, check, enter and export need none: setfolio --help lists them.</source>
        <translation>No hay pantalla donde abrir la ventana. Los comandos print, check, enter y export no la necesitan: setfolio --help los muestra.</translation>
    </message>
    <message>
        <source>The sheet&apos;s typeface %1 is not installed in all its weights: install the package %2.</source>
        <translation>El tipo de letra de la hoja, %1, no está instalado con todos sus gruesos: instalar el paquete %2.</translation>
    </message>
    <message>
        <source>There are no inks %1: choose among cobalt-and-rust, heather-and-gorse, greys and black-only.</source>
        <translation>No hay tintas %1: elegir entre cobalt-and-rust, heather-and-gorse, greys y black-only.</translation>
    </message>
    <message>
        <source>A match cannot be exported as %1: choose json, csv or match-file.</source>
        <translation>Un partido no se puede exportar como %1: elegir json, csv o match-file.</translation>
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
        <translation>Setfolio lleva la hoja de anotación de un partido de voleibol.

setfolio [ARCHIVO]                       abrir la ventana, con el partido de ARCHIVO
setfolio print ARCHIVO... --to PDF       imprimir en un PDF las hojas de todos los sets de los ARCHIVOS
               [--paper letter|a4]       en este papel; si no se indica, el habitual en el país
               [--sheets NAME,NAME...]   estas: match, set, hand-over, libero, coach, entries, slips,
                                         blank-slips, blank-set; si no se indica, las de los sets, y la
                                         del partido cuando está decidido
               [--inks NAME]             en cobalt-and-rust, heather-and-gorse, greys o black-only
               [--as archive|plain]      como PDF/A-1b para archivar, o simple; si no se indica, archive
               [--numbers-only]          sin el nombre de nadie
setfolio check ARCHIVO...                decir si cada ARCHIVO está íntegro y es reglamentario
               [--seal CODE]             si es lo que se firmó bajo el CODE del papel
setfolio enter LISTA --to ARCHIVO        juzgar una lista de anotaciones y escribirla en un nuevo archivo
setfolio export ARCHIVO --as json|csv    escribir como JSON lo que está en las hojas, o como CSV las
                                         anotaciones,
               [--to PATH]               en PATH, o si no en la salida estándar
               [--numbers-only]          sin el nombre de nadie
setfolio export ARCHIVO --as match-file --numbers-only --to COPIA
                                         escribir un archivo de partido sin nombres, con su propia cadena
setfolio --help                          este texto
setfolio --version                       nombre y versión

Una LISTA contiene una anotación por línea, cada una un objeto JSON; - es la entrada estándar. Un archivo de
partido existente nunca se sobrescribe. Las palabras tras -- son archivos, aunque empiecen por -. Solo la
ventana necesita una pantalla.
Una celda CSV que una hoja de cálculo ejecutaría como fórmula comienza con un apóstrofo. Los nombres que el
partido conoce se quitan también de observaciones y motivos; lo demás escrito ahí se queda.

Termina con uno de estos códigos; si son varios, con el más alto:
  0   hecho; el archivo está íntegro, es reglamentario y es lo que se firmó
  1   hecho, y se halló algo contra el reglamento, o el sello fue reabierto; o aún no hay partido en el
      archivo
  2   el archivo está dañado, alterado, cortado o no es lo que se firmó; o una línea de la lista no se
      puede registrar
  64  no se entendió el comando
  66  un archivo no se puede abrir
  69  no hay pantalla para la ventana, o no está instalado el tipo de letra de la hoja
  73  un archivo no se puede crear
  74  un archivo no se puede escribir hasta el final

Las reglas difieren según el estado y la liga, y el árbitro tiene la razón.
</translation>
    </message>
    <message>
        <source>%1: written without names. It is a match file of its own: the seals of the original do not hold for it, and free text holds no name that the match knows, but read it before you pass it on.</source>
        <translation>%1: escrito sin nombres. Es un archivo de partido propio: los sellos del original no valen para él, y el texto libre no contiene ningún nombre que el partido conozca, pero conviene leerlo antes de entregarlo.</translation>
    </message>
</context>
<context>
    <name>setfolio::ComparisonDialog</name>
    <message>
        <source>Your sheet and the right one</source>
        <translation>La hoja propia y la correcta</translation>
    </message>
    <message>
        <source>Show the right sheet…</source>
        <translation>Mostrar la hoja correcta…</translation>
    </message>
    <message>
        <source>Print your sheet…</source>
        <translation>Imprimir su hoja…</translation>
    </message>
    <message>
        <source>Go back to the table</source>
        <translation>Volver a la mesa</translation>
    </message>
    <message>
        <source>What differs</source>
        <translation>Qué difiere</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>Dónde</translation>
    </message>
    <message>
        <source>The right sheet</source>
        <translation>La hoja correcta</translation>
    </message>
    <message>
        <source>Your sheet</source>
        <translation>Hoja propia</translation>
    </message>
    <message>
        <source>Times of day, captains and remarks are not compared.</source>
        <translation>No se comparan horas, capitanes ni observaciones.</translation>
    </message>
</context>
<context>
    <name>setfolio::CopyDialog</name>
    <message>
        <source>Save a copy</source>
        <translation>Guardar una copia</translation>
    </message>
    <message>
        <source>For the league, a coach or a spreadsheet; the match itself stays as it is.</source>
        <translation>Para la liga, un entrenador o una hoja de cálculo; el partido mismo se queda como está.</translation>
    </message>
    <message>
        <source>Save…</source>
        <translation>Guardar…</translation>
    </message>
    <message>
        <source>Numbers only</source>
        <translation>Solo números</translation>
    </message>
    <message>
        <source>Leaves out all names of persons</source>
        <translation>Omite todos los nombres de personas</translation>
    </message>
    <message>
        <source>Saved: %1</source>
        <translation>Guardado: %1</translation>
    </message>
</context>
<context>
    <name>setfolio::ErrorWords</name>
    <message>
        <source>%1 cannot be opened%3: check that the file is there and that you may read it.</source>
        <translation>%1 no se puede abrir%3: comprobar que el archivo exista y que haya permiso de lectura.</translation>
    </message>
    <message>
        <source>%1 cannot be made%3: choose another name, or a folder that you may write to.</source>
        <translation>%1 no se puede crear%3: elegir otro nombre, o una carpeta con permiso de escritura.</translation>
    </message>
    <message>
        <source>%1 cannot be written%3: the last entry is not recorded, all before it are. Make room on the disk and enter it again.</source>
        <translation>%1 no se puede escribir%3: la última anotación no está registrada, todas las anteriores sí. Hacer espacio en el disco y anotarla de nuevo.</translation>
    </message>
    <message>
        <source>%1 is open for reading only%3: close the window that holds it, or go on in a copy.</source>
        <translation>%1 está abierto solo para lectura%3: cerrar la ventana que lo tiene, o seguir en una copia.</translation>
    </message>
    <message>
        <source>%1 is not a match file%3: it does not begin with the opening of a match.</source>
        <translation>%1 no es un archivo de partido%3: no comienza con la apertura de un partido.</translation>
    </message>
    <message>
        <source>%1 was written by a newer version of Setfolio%3: open it with that version.</source>
        <translation>%1 fue escrito por una versión más nueva de Setfolio%3: abrirlo con esa versión.</translation>
    </message>
    <message>
        <source>Line %2 of %1 is damaged%3: the lines before it are whole, go on in a copy of them.</source>
        <translation>La línea %2 de %1 está dañada%3: las líneas anteriores están íntegras, seguir en una copia de ellas.</translation>
    </message>
    <message>
        <source>Line %2 of %1 holds a kind of entry that this version does not know%3: open it with a newer version of Setfolio.</source>
        <translation>La línea %2 de %1 contiene un tipo de anotación que esta versión no conoce%3: abrirlo con una versión más nueva de Setfolio.</translation>
    </message>
    <message>
        <source>Line %2 of %1 is not the one that belongs there%3: a line is missing, doubled or moved. The lines before it are whole, go on in a copy of them.</source>
        <translation>La línea %2 de %1 no es la que corresponde%3: falta una línea, está duplicada o fue movida. Las líneas anteriores están íntegras, seguir en una copia de ellas.</translation>
    </message>
    <message>
        <source>Line %2 of %1 was altered after it was written%3: the lines before it are whole, go on in a copy of them.</source>
        <translation>La línea %2 de %1 fue alterada después de escrita%3: las líneas anteriores están íntegras, seguir en una copia de ellas.</translation>
    </message>
    <message>
        <source>The seal in line %2 of %1 is not over the lines before it%3: they were altered after they were signed. Compare the file with another copy, and with the seal on the paper.</source>
        <translation>El sello de la línea %2 de %1 no corresponde a las líneas anteriores%3: fueron alteradas después de firmadas. Comparar el archivo con otra copia y con el sello del papel.</translation>
    </message>
    <message>
        <source>%1 goes beyond what a match file may hold, in line %2%3: the lines before it are whole, go on in a copy of them.</source>
        <translation>%1 excede lo que puede contener un archivo de partido, en la línea %2%3: las líneas anteriores están íntegras, seguir en una copia de ellas.</translation>
    </message>
    <message>
        <source>This entry cannot be recorded in %1%3: correct it and enter it again.</source>
        <translation>Esta anotación no se puede registrar en %1%3: corregirla y anotarla de nuevo.</translation>
    </message>
    <message>
        <source>%1 was changed by another program%3, so the entry was not recorded: open the file again and look at its end.</source>
        <translation>%1 fue cambiado por otro programa%3, así que la anotación no se registró: abrir de nuevo el archivo y mirar su final.</translation>
    </message>
    <message>
        <source>%1 cannot be read to its end%3: copy it to another disk, if that can still be done.</source>
        <translation>%1 no se puede leer hasta el final%3: copiarlo a otro disco, si aún es posible.</translation>
    </message>
    <message>
        <source>%1 cannot be written%3: make room on the disk, or choose another one, and try again.</source>
        <translation>%1 no se puede escribir%3: hacer espacio en el disco, o elegir otro, e intentarlo de nuevo.</translation>
    </message>
    <message>
        <source>%1 cannot be replaced%3, and is as it was: choose another name or folder.</source>
        <translation>%1 no se puede reemplazar%3, y está como estaba: elegir otro nombre u otra carpeta.</translation>
    </message>
    <message>
        <source>%1 is written, but might not outlast a power cut%3: write it once more, or to another disk.</source>
        <translation>%1 está escrito, pero podría perderse con un corte de energía%3: escribirlo otra vez, o en otro disco.</translation>
    </message>
    <message>
        <source>%1 is too long%3: choose another file.</source>
        <translation>%1 es demasiado largo%3: elegir otro archivo.</translation>
    </message>
    <message>
        <source>%1 was changed by another program%3: open it again.</source>
        <translation>%1 fue cambiado por otro programa%3: abrirlo de nuevo.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; names no kind of entry that this version knows: check how the kind is spelled.</source>
        <translation>&quot;%1&quot; no es un tipo de anotación que esta versión conozca: comprobar cómo se escribe el tipo.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; does not belong in this entry: check how it is spelled, or leave it out.</source>
        <translation>&quot;%1&quot; no corresponde a esta anotación: comprobar cómo se escribe, o quitarlo.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is missing from this entry: add it.</source>
        <translation>&quot;%1&quot; falta en esta anotación: añadirlo.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not of the type it must have in this entry: a number, a word, a list or an object.</source>
        <translation>&quot;%1&quot; no es del tipo que debe tener en esta anotación: un número, una palabra, una lista o un objeto.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is of a newer version of the format: use a newer version of Setfolio.</source>
        <translation>&quot;%1&quot; es de una versión más nueva del formato: usar una versión más nueva de Setfolio.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no rulebook: name a published one, or correct the setting.</source>
        <translation>&quot;%1&quot; no es un reglamento: indicar uno publicado, o corregir el ajuste.</translation>
    </message>
    <message>
        <source>The rulebook is not a JSON object: choose a rulebook file.</source>
        <translation>El reglamento no es un objeto JSON: elegir un archivo de reglamento.</translation>
    </message>
    <message>
        <source>The rulebook has a setting &quot;%1&quot; that this version does not know: check how it is spelled.</source>
        <translation>El reglamento tiene un ajuste &quot;%1&quot; que esta versión no conoce: comprobar cómo se escribe.</translation>
    </message>
    <message>
        <source>The rulebook has no setting &quot;%1&quot;: add it, with its source.</source>
        <translation>El reglamento no tiene el ajuste &quot;%1&quot;: añadirlo, con su fuente.</translation>
    </message>
    <message>
        <source>The rulebook&apos;s setting &quot;%1&quot; is not of the type it must have: compare it with a published rulebook.</source>
        <translation>El ajuste &quot;%1&quot; del reglamento no es del tipo que debe tener: compararlo con un reglamento publicado.</translation>
    </message>
    <message>
        <source>The rulebook&apos;s setting &quot;%1&quot; has a value that it cannot have: compare it with a published rulebook.</source>
        <translation>El ajuste &quot;%1&quot; del reglamento tiene un valor que no puede tener: compararlo con un reglamento publicado.</translation>
    </message>
    <message>
        <source>Line %2 of %1 was cut short while it was being written: it is left out, and nothing that was recorded is lost.</source>
        <translation>La línea %2 de %1 quedó cortada mientras se escribía: se omite, y no se pierde nada de lo registrado.</translation>
    </message>
    <message>
        <source>Line %2 of %1 was cut short while it was being written: it was moved to %3, and nothing that was recorded is lost.</source>
        <translation>La línea %2 de %1 quedó cortada mientras se escribía: se movió a %3, y no se pierde nada de lo registrado.</translation>
    </message>
    <message>
        <source>This line is longer than any entry can be: shorten it.</source>
        <translation>Esta línea es más larga de lo que puede ser una anotación: acortarla.</translation>
    </message>
    <message>
        <source>From line %2 on, %1 was saved anew by another program%3, and is no longer what was written: use the file as it was, or another copy of it.</source>
        <translation>Desde la línea %2, %1 fue guardado de nuevo por otro programa%3 y ya no es lo que se escribió: usar el archivo tal como estaba, u otra copia de él.</translation>
    </message>
    <message>
        <source>Line 1 of %1 is damaged%3: look for another copy of the file.</source>
        <translation>La línea 1 de %1 está dañada%3: buscar otra copia del archivo.</translation>
    </message>
    <message>
        <source>Line 1 of %1 is not the one that belongs there%3: look for another copy of the file.</source>
        <translation>La línea 1 de %1 no es la que corresponde%3: buscar otra copia del archivo.</translation>
    </message>
    <message>
        <source>Line 1 of %1 was altered after it was written%3: look for another copy of the file.</source>
        <translation>La línea 1 de %1 fue alterada después de escrita%3: buscar otra copia del archivo.</translation>
    </message>
    <message>
        <source>%1 goes beyond what a match file may hold, in its first line%3: look for another copy of the file.</source>
        <translation>%1 excede lo que puede contener un archivo de partido, en su primera línea%3: buscar otra copia del archivo.</translation>
    </message>
    <message>
        <source>This is not a JSON object: write one entry to a line, in braces, each member once, as UTF-8.</source>
        <translation>Esto no es un objeto JSON: escribir una anotación por línea, entre llaves, cada miembro una sola vez, en UTF-8.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; has a value that it cannot have in this entry: FORMAT.md lists those it can.</source>
        <translation>«%1» tiene un valor que no puede tener en esta anotación: FORMAT.md indica los que puede.</translation>
    </message>
</context>
<context>
    <name>setfolio::FindingWords</name>
    <message>
        <source>No match is open: open it first, with its teams and its rulebook.</source>
        <translation>No hay ningún partido abierto: abrirlo primero, con sus equipos y su reglamento.</translation>
    </message>
    <message>
        <source>The match is open already: another match goes into a file of its own.</source>
        <translation>El partido ya está abierto: otro partido va en su propio archivo.</translation>
    </message>
    <message>
        <source>The match is closed: undo the closing to record more.</source>
        <translation>El partido está cerrado: deshacer el cierre para registrar más.</translation>
    </message>
    <message>
        <source>The match is won: close it, or undo the end of the last set.</source>
        <translation>El partido está ganado: cerrarlo, o deshacer el fin del último set.</translation>
    </message>
    <message>
        <source>The match is not won yet: play on, or record the end of the set that decides it.</source>
        <translation>El partido aún no está ganado: seguir jugando, o registrar el fin del set que lo decide.</translation>
    </message>
    <message>
        <source>Play is suspended: resume it first.</source>
        <translation>El juego está suspendido: reanudarlo primero.</translation>
    </message>
    <message>
        <source>Play has not been suspended: there is nothing to resume.</source>
        <translation>El juego no se ha suspendido: no hay nada que reanudar.</translation>
    </message>
    <message>
        <source>The set has started, and its toss and line-ups are settled: undo the start to change them.</source>
        <translation>El set ha comenzado, y su sorteo y formaciones son firmes: deshacer el inicio para cambiarlos.</translation>
    </message>
    <message>
        <source>The set is won: record its end, or undo the last point.</source>
        <translation>El set está ganado: registrar su fin, o deshacer el último punto.</translation>
    </message>
    <message>
        <source>The set is not won yet: play on until the score decides it.</source>
        <translation>El set aún no está ganado: seguir jugando hasta que el marcador lo decida.</translation>
    </message>
    <message>
        <source>It is not known who serves first: record the toss.</source>
        <translation>No se sabe quién saca primero: registrar el sorteo.</translation>
    </message>
    <message>
        <source>%2 has no line-up yet: record it first.</source>
        <translation>%2 aún no tiene formación: registrarla primero.</translation>
    </message>
    <message>
        <source>The rally is not decided: record who won it, or a replay, first.</source>
        <translation>La jugada no está decidida: registrar primero quién la ganó, o una repetición.</translation>
    </message>
    <message>
        <source>The serve is contacted already: record who won the rally, or a replay.</source>
        <translation>El saque ya está golpeado: registrar quién ganó la jugada, o una repetición.</translation>
    </message>
    <message>
        <source>Number %1 of %2 is not on court: name one of the six who are.</source>
        <translation>El número %1 de %2 no está en cancha: indicar uno de los seis que están.</translation>
    </message>
    <message>
        <source>The opening of the match cannot be struck: begin a new match instead.</source>
        <translation>La apertura del partido no se puede tachar: comenzar más bien un partido nuevo.</translation>
    </message>
    <message>
        <source>The rulebook has no match of best of %5: choose a number of sets that it allows.</source>
        <translation>El reglamento no tiene partidos al mejor de %5: elegir un número de sets que permita.</translation>
    </message>
    <message>
        <source>%1 is no shirt number: numbers go from 0 to 99.</source>
        <translation>%1 no es un número de camiseta: los números van de 0 a 99.</translation>
    </message>
    <message>
        <source>No libero of %2 is serving: there is nothing to end.</source>
        <translation>Ningún líbero de %2 está sacando: no hay nada que terminar.</translation>
    </message>
    <message>
        <source>%2 does not have the serve: its libero can serve when it has won it back.</source>
        <translation>%2 no tiene el saque: su líbero podrá sacar cuando lo recupere.</translation>
    </message>
    <message>
        <source>Libero %1 of %2 is not on court: there is nobody to go out.</source>
        <translation>El líbero %1 de %2 no está en cancha: no hay nadie que salga.</translation>
    </message>
    <message>
        <source>Entry %5 brought %2 no point in this set: name the first point to be taken back.</source>
        <translation>La anotación %5 no dio punto a %2 en este set: indicar el primer punto que se anula.</translation>
    </message>
    <message>
        <source>%2 has not served in this set, so nobody of it has served wrongly: check the team.</source>
        <translation>%2 no ha sacado en este set, así que nadie suyo sacó indebidamente: comprobar el equipo.</translation>
    </message>
    <message>
        <source>This is signed and sealed: reopen it first, with the reason and the name of who says so.</source>
        <translation>Esto está firmado y sellado: reabrirlo primero, con el motivo y el nombre de quien lo ordena.</translation>
    </message>
    <message>
        <source>This is not sealed: there is nothing to reopen.</source>
        <translation>Esto no está sellado: no hay nada que reabrir.</translation>
    </message>
    <message>
        <source>This cannot be signed yet: end the set, or close the match, first.</source>
        <translation>Esto aún no se puede firmar: primero terminar el set, o cerrar el partido.</translation>
    </message>
    <message>
        <source>Signatures still missing: %6. Let them sign, or record why they do not.</source>
        <translation>Firmas que faltan: %6. Que firmen, o registrar por qué no lo hacen.</translation>
    </message>
    <message>
        <source>A reason is needed here, and the name of who gives it: type them.</source>
        <translation>Aquí hace falta un motivo, y el nombre de quien lo da: escribirlos.</translation>
    </message>
    <message>
        <source>The rulebook does not allow number %1 of %2: the player needs another shirt.</source>
        <translation>El reglamento no permite el número %1 de %2: el jugador necesita otra camiseta.</translation>
    </message>
    <message>
        <source>Number %1 stands twice on the roster of %2: ask the coach which of the two is meant.</source>
        <translation>El número %1 está dos veces en el plantel de %2: preguntar al entrenador cuál de los dos es.</translation>
    </message>
    <message>
        <source>The match has begun, and the rulebook lets %2 change no number of its roster: tell the referee.</source>
        <translation>El partido ha comenzado, y el reglamento no deja a %2 cambiar números de su plantel: avisar al árbitro.</translation>
    </message>
    <message>
        <source>%2 names %5 as liberos, and the limit is %6: ask the coach who is not to be one.</source>
        <translation>%2 designa %5 líberos, y el límite es %6: preguntar al entrenador quién no lo será.</translation>
    </message>
    <message>
        <source>Number %1 stands twice in the line-up of %2: ask the coach for the right slip.</source>
        <translation>El número %1 está dos veces en la formación de %2: pedir al entrenador la papeleta correcta.</translation>
    </message>
    <message>
        <source>Number %1 in the line-up of %2 is not on the roster: check the slip, then the roster.</source>
        <translation>El número %1 de la formación de %2 no está en el plantel: comprobar la papeleta y luego el plantel.</translation>
    </message>
    <message>
        <source>Number %1 is a libero of %2 and cannot be one of the six: ask the coach for the right slip.</source>
        <translation>El número %1 es líbero de %2 y no puede ser uno de los seis: pedir al entrenador la papeleta correcta.</translation>
    </message>
    <message>
        <source>Libero %1 of %2 is not on the roster: check the slip, then the roster.</source>
        <translation>El líbero %1 de %2 no está en el plantel: comprobar la papeleta y luego el plantel.</translation>
    </message>
    <message>
        <source>Number %1 of %2 is no libero of the match: ask the coach for the right slip.</source>
        <translation>El número %1 de %2 no es líbero del partido: pedir al entrenador la papeleta correcta.</translation>
    </message>
    <message>
        <source>Number %1 is named captain of %2 but is not in the team: check the slip.</source>
        <translation>El número %1 figura como capitán de %2 pero no está en el equipo: comprobar la papeleta.</translation>
    </message>
    <message>
        <source>Number %1 of %2 is not on court and cannot be playing captain: ask who is.</source>
        <translation>El número %1 de %2 no está en cancha y no puede ser capitán en juego: preguntar quién lo es.</translation>
    </message>
    <message>
        <source>Number %1 of %2 is a libero and may not be playing captain: ask who is.</source>
        <translation>El número %1 de %2 es líbero y no puede ser capitán en juego: preguntar quién lo es.</translation>
    </message>
    <message>
        <source>%2 served first in the set before, and the first serve alternates: the other team serves.</source>
        <translation>%2 sacó primero en el set anterior, y el primer saque se alterna: saca el otro equipo.</translation>
    </message>
    <message>
        <source>By the rulebook %2 stands left of the table in this set: ask the second referee.</source>
        <translation>Según el reglamento, %2 está a la izquierda de la mesa en este set: preguntar al segundo árbitro.</translation>
    </message>
    <message>
        <source>By the rulebook others sign before, still to sign: %5. Let them sign first.</source>
        <translation>Según el reglamento otros firman antes, faltan por firmar: %5. Que firmen primero.</translation>
    </message>
    <message>
        <source>Number %1 of %2 is out by %8 and may not play: tell the second referee.</source>
        <translation>El número %1 de %2 está fuera por %8 y no puede jugar: avisar al segundo árbitro.</translation>
    </message>
    <message>
        <source>Number %1 of %2 was replaced exceptionally and may not come back: tell the second referee.</source>
        <translation>El número %1 de %2 tuvo sustitución excepcional y no puede volver: avisar al segundo árbitro.</translation>
    </message>
    <message>
        <source>Number %1 of %2 was given up as a libero and may not come back: tell the second referee.</source>
        <translation>El número %1 de %2 dejó de ser líbero y no puede volver: avisar al segundo árbitro.</translation>
    </message>
    <message>
        <source>Number %1 of %2 is not on the roster and may not come in: tell the second referee.</source>
        <translation>El número %1 de %2 no está en el plantel y no puede entrar: avisar al segundo árbitro.</translation>
    </message>
    <message>
        <source>Number %1 of %2 is on court already, in slot %3: check the number that comes in.</source>
        <translation>El número %1 de %2 ya está en cancha, en el puesto %3: comprobar el número que entra.</translation>
    </message>
    <message>
        <source>Number %1 of %2 is a libero in this set and may not come in as a substitute.</source>
        <translation>El número %1 de %2 es líbero en este set y no puede entrar como sustituto.</translation>
    </message>
    <message>
        <source>Number %1 of %2 is one of the six, with a libero in her place: somebody else must come in.</source>
        <translation>El número %1 de %2 es uno de los seis, con un líbero en su lugar: debe entrar otro.</translation>
    </message>
    <message>
        <source>Number %1 of %2 is off court for libero %9: record the libero out first, then this.</source>
        <translation>El número %1 de %2 está fuera por el líbero %9: registrar primero que sale el líbero, luego esto.</translation>
    </message>
    <message>
        <source>Number %1 of %2 belongs to slot %3 and may not come in to slot %4: tell the second referee.</source>
        <translation>El número %1 de %2 pertenece al puesto %3 y no puede entrar en el puesto %4: avisar al segundo árbitro.</translation>
    </message>
    <message>
        <source>Number %1 of %2 may not come in to slot %3: only number %9 may come back there.</source>
        <translation>El número %1 de %2 no puede entrar en el puesto %3: ahí solo puede volver el número %9.</translation>
    </message>
    <message>
        <source>Number %1 of %2 in slot %3 has no regular substitute left: tell the second referee.</source>
        <translation>Al número %1 de %2 en el puesto %3 no le queda sustituto regular: avisar al segundo árbitro.</translation>
    </message>
    <message>
        <source>Number %1 would be player %5 of %2 in slot %3, and the limit is %6: tell the second referee.</source>
        <translation>El número %1 sería el jugador %5 de %2 en el puesto %3, y el límite es %6: avisar al segundo árbitro.</translation>
    </message>
    <message>
        <source>This is substitution %5 of %2, and the limit is %6: tell the second referee.</source>
        <translation>Esta es la sustitución %5 de %2, y el límite es %6: avisar al segundo árbitro.</translation>
    </message>
    <message>
        <source>%2 has substituted in this interruption and may not ask again yet: tell the second referee.</source>
        <translation>%2 ya sustituyó en esta interrupción y aún no puede volver a pedir: avisar al segundo árbitro.</translation>
    </message>
    <message>
        <source>%2 was sanctioned for delay and may not substitute before a rally is completed: tell the referee.</source>
        <translation>%2 fue sancionado por demora y no puede sustituir antes de completarse una jugada: avisar al árbitro.</translation>
    </message>
    <message>
        <source>The rulebook has no substitution before the start: %2 begins with its line-up.</source>
        <translation>El reglamento no admite sustituciones antes del inicio: %2 comienza con su formación.</translation>
    </message>
    <message>
        <source>The serve is repeated, and %2 may ask for nothing before it: tell the second referee.</source>
        <translation>El saque se repite, y %2 no puede pedir nada antes: avisar al segundo árbitro.</translation>
    </message>
    <message>
        <source>Number %1 of %2 can be replaced by a regular substitution: number %9 may come in.</source>
        <translation>El número %1 de %2 puede salir por una sustitución regular: puede entrar el número %9.</translation>
    </message>
    <message>
        <source>Libero %1 of %2 may come in only when nobody else can: number %9 may.</source>
        <translation>El líbero %1 de %2 solo puede entrar cuando nadie más puede: el número %9 puede.</translation>
    </message>
    <message>
        <source>%2 may not play with fewer than six: number %1 is replaced, or the team is incomplete.</source>
        <translation>%2 no puede jugar con menos de seis: se sustituye al número %1, o el equipo queda incompleto.</translation>
    </message>
    <message>
        <source>Number %1 of %2 leaves no vacant place while number %9 may come in: record who does.</source>
        <translation>El número %1 de %2 no deja lugar vacante mientras pueda entrar el número %9: registrar quién entra.</translation>
    </message>
    <message>
        <source>This is time-out %5 of %2, and the limit is %6: tell the second referee.</source>
        <translation>Este es el tiempo %5 de %2, y el límite es %6: avisar al segundo árbitro.</translation>
    </message>
    <message>
        <source>Slot %3 of %2 is vacant and cannot serve: the rally is lost, record no serve.</source>
        <translation>El puesto %3 de %2 está vacante y no puede sacar: se pierde la jugada, registrar sin saque.</translation>
    </message>
    <message>
        <source>Number %1 of %2 is out by %8 and still on court: record who came in for her.</source>
        <translation>El número %1 de %2 está fuera por %8 y sigue en cancha: registrar quién entró en su lugar.</translation>
    </message>
    <message>
        <source>Libero %1 of %2 is in the front row, in slot %3: tell the second referee, and record her out.</source>
        <translation>El líbero %1 de %2 está en la línea delantera, en el puesto %3: avisar al segundo árbitro y registrar su salida.</translation>
    </message>
    <message>
        <source>Number %1 of %2 is a libero and may not serve: the player of the slot serves.</source>
        <translation>El número %1 de %2 es líbero y no puede sacar: saca el jugador del puesto.</translation>
    </message>
    <message>
        <source>A libero of %2 has served in slot %3, so number %1 may not serve in slot %4: tell the second referee.</source>
        <translation>Un líbero de %2 ya sacó en el puesto %3, así que el número %1 no puede sacar en el puesto %4: avisar al segundo árbitro.</translation>
    </message>
    <message>
        <source>Number %1 is not a libero of %2 in this set: check the number.</source>
        <translation>El número %1 no es líbero de %2 en este set: comprobar el número.</translation>
    </message>
    <message>
        <source>Number %1 was seen serving for %2 in place of number %9: ask for the ruling, and record it.</source>
        <translation>Se vio sacar al número %1 de %2 en lugar del número %9: pedir la decisión y registrarla.</translation>
    </message>
    <message>
        <source>Number %1 of %2 was the right server: check the number that served.</source>
        <translation>El número %1 de %2 era el sacador correcto: comprobar el número que sacó.</translation>
    </message>
    <message>
        <source>No serve of %2 is contacted in this term: say nothing before the contact, then tell the referee.</source>
        <translation>%2 aún no golpeó el saque en este turno: no decir nada antes del golpe, luego avisar al árbitro.</translation>
    </message>
    <message>
        <source>The rulebook takes no points back from %2: record the ruling without them.</source>
        <translation>El reglamento no anula puntos de %2: registrar la decisión sin ellos.</translation>
    </message>
    <message>
        <source>The opponents have contacted their next serve: the points of %2 stand.</source>
        <translation>El rival ya golpeó su siguiente saque: los puntos de %2 valen.</translation>
    </message>
    <message>
        <source>This is re-serve %5 in this term of %2, and the limit is %6: the rally is lost, record no serve.</source>
        <translation>Este es el re-saque %5 en este turno de %2, y el límite es %6: se pierde la jugada, registrar sin saque.</translation>
    </message>
    <message>
        <source>Number %1 of %2 is not named a libero here: check the number, or ask the coach.</source>
        <translation>El número %1 de %2 no está designado líbero aquí: comprobar el número, o preguntar al entrenador.</translation>
    </message>
    <message>
        <source>Libero %9 of %2 is on court already: record her out first, or one for the other.</source>
        <translation>El líbero %9 de %2 ya está en cancha: registrar primero su salida, o uno por otro.</translation>
    </message>
    <message>
        <source>Number %1 of %2 stands in the front row, and a libero replaces the back row only.</source>
        <translation>El número %1 de %2 está en la línea delantera, y un líbero reemplaza solo a la línea zaguera.</translation>
    </message>
    <message>
        <source>No rally lies between two replacements of liberos of %2 (number %1): tell the second referee.</source>
        <translation>No hay jugada entre dos reemplazos de líbero de %2 (número %1): avisar al segundo árbitro.</translation>
    </message>
    <message>
        <source>Libero %1 of %2 may not come in for a libero: only number %9 may.</source>
        <translation>El líbero %1 de %2 no puede entrar por un líbero: solo puede el número %9.</translation>
    </message>
    <message>
        <source>%2 may have no new libero for number %1: it plays on with whom it has left.</source>
        <translation>%2 no puede tener un nuevo líbero por el número %1: sigue con los que le quedan.</translation>
    </message>
    <message>
        <source>Number %1 of %2 is one of the six and may not become a libero: name one of the bench.</source>
        <translation>El número %1 de %2 es uno de los seis y no puede pasar a líbero: designar a uno del banco.</translation>
    </message>
    <message>
        <source>The rulebook has no such sanction (%7 of %2, %8): ask the referee which one was given.</source>
        <translation>El reglamento no tiene esa sanción (%7 de %2, %8): preguntar al árbitro cuál se dio.</translation>
    </message>
    <message>
        <source>%7 of %2 has had as much; the next sanction is %8: ask the referee which one was given.</source>
        <translation>%7 de %2 ya tuvo esa; la sanción siguiente es %8: preguntar al árbitro cuál se dio.</translation>
    </message>
    <message>
        <source>%2 has had its warning: the next sanction is %8, so ask the referee which one was given.</source>
        <translation>%2 ya tuvo su amonestación: la sanción siguiente es %8; preguntar al árbitro cuál se dio.</translation>
    </message>
    <message>
        <source>%7 of %2 is out already by %8: ask the referee who was meant.</source>
        <translation>%7 de %2 ya está fuera por %8: preguntar al árbitro a quién se refería.</translation>
    </message>
    <message>
        <source>Number %1 is not on the roster of %2: ask the referee who was sanctioned.</source>
        <translation>El número %1 no está en el plantel de %2: preguntar al árbitro a quién se sancionó.</translation>
    </message>
    <message>
        <source>The next sanction of %2 for delay is the %8: ask the referee which one was given.</source>
        <translation>La siguiente sanción de %2 por demora es %8: preguntar al árbitro cuál se dio.</translation>
    </message>
    <message>
        <source>Such a request of %2 is a delay, and the next sanction is the %8: tell the second referee.</source>
        <translation>Tal solicitud de %2 es una demora, y la sanción siguiente es %8: avisar al segundo árbitro.</translation>
    </message>
    <message>
        <source>Sides change in the deciding set when a team has %5 points: wait until then.</source>
        <translation>En el set decisivo se cambia de cancha cuando un equipo tiene %5 puntos: esperar hasta entonces.</translation>
    </message>
    <message>
        <source>The teams have changed sides in this set already: ask the second referee.</source>
        <translation>Los equipos ya cambiaron de cancha en este set: preguntar al segundo árbitro.</translation>
    </message>
    <message>
        <source>A default loses the match, not one set: record it for the match, or %2 as incomplete.</source>
        <translation>La incomparecencia pierde el partido, no un set: registrarla para el partido, o %2 como incompleto.</translation>
    </message>
    <message>
        <source>No set has begun, and %2 has nothing to keep: a team that cannot begin loses by default.</source>
        <translation>Ningún set ha comenzado, y %2 no tiene nada que conservar: un equipo que no puede comenzar pierde por incomparecencia.</translation>
    </message>
    <message>
        <source>By the rulebook the set goes on as it stood: ask the referee before it is played again.</source>
        <translation>Según el reglamento el set sigue como estaba: preguntar al árbitro antes de jugarlo de nuevo.</translation>
    </message>
    <message>
        <source>Play was broken off %5 hours ago, more than %6: the match is played anew, in a file of its own.</source>
        <translation>El juego se interrumpió hace %5 horas, más de %6: el partido se juega de nuevo, en su propio archivo.</translation>
    </message>
    <message>
        <source>A late replacement of %2 is not let pass now, and the sanction is the %8: tell the second referee.</source>
        <translation>Un reemplazo tardío de %2 ya no se tolera, y la sanción es %8: avisar al segundo árbitro.</translation>
    </message>
    <message>
        <source>Libero %1 of %2 may not come in for number %9, who was sent off: ask who else comes in.</source>
        <translation>El líbero %1 de %2 no puede entrar por el número %9, que fue expulsado: preguntar quién más entra.</translation>
    </message>
    <message>
        <source>The slip of %2 named a libero, %1, whom nobody wears: the team has no libero in this set.</source>
        <translation>La papeleta de %2 designó líbero al %1, que nadie lleva: el equipo no tiene líbero en este set.</translation>
    </message>
    <message>
        <source>Number %1</source>
        <translation>El número %1</translation>
    </message>
    <message>
        <source>The %1</source>
        <translation>El %1</translation>
    </message>
    <message>
        <source>The set has not started: record its start first, or, for the set before, undo its end.</source>
        <translation>El set no ha comenzado: registrar primero su comienzo o, para el set anterior, deshacer su fin.</translation>
    </message>
    <message>
        <source>There is no entry %5 that stands: name one that does.</source>
        <translation>No hay anotación %5 que valga: indicar una que valga.</translation>
    </message>
    <message>
        <source>Play has not been resumed with number %1 of %2 on court: tell the referee, nothing is lost yet.</source>
        <translation>El juego no se ha reanudado con el número %1 de %2 en cancha: avisar al árbitro, aún no se pierde nada.</translation>
    </message>
    <message>
        <source>The set is played again with the same line-ups: put the six of %2 where they stood before.</source>
        <translation>El set se repite con las mismas formaciones: poner a las seis de %2 donde estaban antes.</translation>
    </message>
    <message>
        <source>Number %1 is not on the roster of %2: look again who serves.</source>
        <translation>El número %1 no está en el plantel de %2: mirar otra vez quién saca.</translation>
    </message>
    <message>
        <source>The match has begun: by the rulebook other numbers on the roster of %2 cost a point, so tell the referee.</source>
        <translation>El partido ha comenzado: según el reglamento, otros números en el plantel de %2 cuestan un punto; avisar al árbitro.</translation>
    </message>
    <message>
        <source>Only points of this term of %2 may be taken back, those from entry %5 on.</source>
        <translation>Solo se pueden anular puntos de este turno de %2, los de la anotación %5 en adelante.</translation>
    </message>
    <message>
        <source>The rulebook has no change of sides within this set: ask the second referee.</source>
        <translation>El reglamento no tiene cambio de cancha dentro de este set: preguntar al segundo árbitro.</translation>
    </message>
    <message>
        <source>Only points of this term of %2 may be taken back, and it has won none: record the ruling alone.</source>
        <translation>Solo se pueden anular puntos de este turno de %2, y no tiene ninguno: anotar la decisión sola.</translation>
    </message>
    <message>
        <source>There is no set %5 that has ended: name one that has, or record a forfeit of this set.</source>
        <translation>No hay set %5 terminado: indicar uno que lo esté, o registrar la pérdida de este set.</translation>
    </message>
    <message>
        <source>%2 cannot keep %5 points of a set it loses: here it keeps %6 at most.</source>
        <translation>%2 no puede conservar %5 puntos de un set que pierde: aquí conserva %6 como máximo.</translation>
    </message>
    <message>
        <source>Number %1 of %2 was ruled illegal and still stands in slot %3: strike her substitution, entry %5.</source>
        <translation>El número %1 de %2 se declaró ilegal y sigue en el puesto %3: tachar su sustitución, la anotación %5.</translation>
    </message>
    <message>
        <source>This line-up of %2 has been changed since: strike the changes, or correct the line-up in its place.</source>
        <translation>Esta formación de %2 ha cambiado desde entonces: tachar los cambios, o corregir la formación en su lugar.</translation>
    </message>
    <message>
        <source>Time-outs and substitutions since then go too: strike entry %5 and those after it, then rule.</source>
        <translation>Los tiempos y las sustituciones desde entonces también caen: tachar la anotación %5 y las posteriores, luego anotar la decisión.</translation>
    </message>
    <message>
        <source>Number %1 of %2, ruled illegal, still stands in slot %3: strike entry %5, or record number %9 in for her.</source>
        <translation>El número %1 de %2, declarado ilegal, sigue en el puesto %3: tachar la anotación %5, o anotar que entra por ella el número %9.</translation>
    </message>
</context>
<context>
    <name>setfolio::FrameDialog</name>
    <message>
        <source>Cancel</source>
        <translation>Cancelar</translation>
    </message>
</context>
<context>
    <name>setfolio::HelpDialog</name>
    <message>
        <source>How things are entered</source>
        <translation>Cómo se anota</translation>
    </message>
    <message>
        <source>Print…</source>
        <translation>Imprimir…</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Cerrar</translation>
    </message>
    <message>
        <source>Print</source>
        <translation>Imprimir</translation>
    </message>
</context>
<context>
    <name>setfolio::KeysDialog</name>
    <message>
        <source>Change keys</source>
        <translation>Cambiar teclas</translation>
    </message>
    <message>
        <source>They are kept on this machine and shown wherever they act.</source>
        <translation>Se guardan en esta máquina y se muestran donde actúan.</translation>
    </message>
    <message>
        <source>Keep these keys</source>
        <translation>Guardar estas teclas</translation>
    </message>
    <message>
        <source>What can be asked of the table, and its keys</source>
        <translation>Qué se puede pedir en la mesa, y sus teclas</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Qué</translation>
    </message>
    <message>
        <source>Key</source>
        <translation>Tecla</translation>
    </message>
    <message>
        <source>New key: press it here</source>
        <translation>Tecla nueva: pulsarla aquí</translation>
    </message>
    <message>
        <source>No key</source>
        <translation>Sin tecla</translation>
    </message>
    <message>
        <source>Built-in key</source>
        <translation>Tecla original</translation>
    </message>
    <message>
        <source>All built-in keys</source>
        <translation>Todas las originales</translation>
    </message>
    <message>
        <source>It has no key now; its menu has it.</source>
        <translation>Ahora no tiene tecla; está en su menú.</translation>
    </message>
    <message>
        <source>Its key is %1 now.</source>
        <translation>Ahora su tecla es %1.</translation>
    </message>
    <message>
        <source>All keys are the built-in ones again.</source>
        <translation>Todas las teclas vuelven a ser las originales.</translation>
    </message>
</context>
<context>
    <name>setfolio::LadderField</name>
    <message>
        <source>The levels in use, the cards shown, and whether the opponents get a point.</source>
        <translation>Los grados en uso, las tarjetas que se muestran y si el rival recibe un punto.</translation>
    </message>
    <message>
        <source>point</source>
        <translation>punto</translation>
    </message>
    <message>
        <source>Cards shown, %1</source>
        <translation>Tarjetas mostradas, %1</translation>
    </message>
    <message>
        <source>The opponents get a point, %1</source>
        <translation>El rival recibe un punto, %1</translation>
    </message>
</context>
<context>
    <name>setfolio::LineUpDialog</name>
    <message>
        <source>Line-ups for set %1</source>
        <translation>Formaciones del set %1</translation>
    </message>
    <message>
        <source>As on the slip, by court position, seen from behind the team. A whole number goes on to the next place by itself.</source>
        <translation>Como en la papeleta, por posición en cancha, vista desde detrás del equipo. Con el número completo se pasa solo al lugar siguiente.</translation>
    </message>
    <message>
        <source>Record line-up</source>
        <translation>Registrar formación</translation>
    </message>
    <message>
        <source>Record both line-ups</source>
        <translation>Registrar ambas formaciones</translation>
    </message>
    <message>
        <source>Record line-up of %1</source>
        <translation>Registrar formación de %1</translation>
    </message>
    <message>
        <source>%1: 00 is no shirt number.</source>
        <translation>%1: 00 no es un número de camiseta.</translation>
    </message>
    <message>
        <source>%1: still empty: %2.</source>
        <translation>%1: aún vacío: %2.</translation>
    </message>
</context>
<context>
    <name>setfolio::LineUpPanel</name>
    <message>
        <source>Roster’s liberos</source>
        <translation>Líberos del plantel</translation>
    </message>
    <message>
        <source>Puts in the liberos that the roster marks</source>
        <translation>Pone los líberos que marca el plantel</translation>
    </message>
    <message>
        <source>As in set %1</source>
        <translation>Como en el set %1</translation>
    </message>
    <message>
        <source>Puts in the six, the captain and the liberos with which the team began set %1</source>
        <translation>Pone los seis, el capitán y los líberos con los que el equipo comenzó el set %1</translation>
    </message>
    <message>
        <source>net</source>
        <translation>red</translation>
    </message>
    <message>
        <source>Left empty: the captain of the roster</source>
        <translation>Vacío: el capitán del plantel</translation>
    </message>
    <message>
        <source>Captain</source>
        <translation>Capitán</translation>
    </message>
    <message>
        <source>Libero</source>
        <translation>Líbero</translation>
    </message>
    <message>
        <source>Libero %1</source>
        <translation>Líbero %1</translation>
    </message>
    <message>
        <source>Rotate</source>
        <translation>Rotar</translation>
    </message>
    <message>
        <source>Turns the six by one place, as when the team wins the serve</source>
        <translation>Gira los seis un lugar, como cuando el equipo gana el saque</translation>
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
        <translation>Inicio</translation>
    </message>
    <message>
        <source>Finished</source>
        <translation>Fin</translation>
    </message>
    <message>
        <source>Minutes</source>
        <translation>Minutos</translation>
    </message>
    <message>
        <source>Close the match</source>
        <translation>Cerrar el partido</translation>
    </message>
    <message>
        <source>Read result and remarks once more with the referee. After this, only an undo opens the match again.</source>
        <translation>Leer otra vez el resultado y las observaciones con el árbitro. Después de esto, solo deshacer vuelve a abrir el partido.</translation>
    </message>
    <message>
        <source>wins the match, in sets</source>
        <translation>gana el partido, en sets</translation>
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
        <translation>Competencia</translation>
    </message>
    <message>
        <source>Division</source>
        <translation>División</translation>
    </message>
    <message>
        <source>Match number</source>
        <translation>Número de partido</translation>
    </message>
    <message>
        <source>Venue</source>
        <translation>Sede</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Fecha</translation>
    </message>
    <message>
        <source>Scheduled time (may be empty)</source>
        <translation>Hora prevista (puede quedar vacía)</translation>
    </message>
    <message>
        <source>Best of</source>
        <translation>Al mejor de</translation>
    </message>
    <message>
        <source>Best of %1 sets</source>
        <translation>Al mejor de %1 sets</translation>
    </message>
</context>
<context>
    <name>setfolio::Names</name>
    <message>
        <source>home team</source>
        <translation>equipo local</translation>
    </message>
    <message>
        <source>visitors</source>
        <translation>visitante</translation>
    </message>
</context>
<context>
    <name>setfolio::NewMatchDialog</name>
    <message>
        <source>New match</source>
        <translation>Nuevo partido</translation>
    </message>
    <message>
        <source>Start the match</source>
        <translation>Comenzar el partido</translation>
    </message>
    <message>
        <source>Begin empty</source>
        <translation>Comenzar vacío</translation>
    </message>
    <message>
        <source>Drops what was typed for the match that was cancelled</source>
        <translation>Descarta lo escrito para el partido que se canceló</translation>
    </message>
    <message>
        <source>The home team needs a name.</source>
        <translation>El equipo local necesita un nombre.</translation>
    </message>
    <message>
        <source>The visitors need a name.</source>
        <translation>El visitante necesita un nombre.</translation>
    </message>
    <message>
        <source>The home team’s short name needs two to five letters or digits.</source>
        <translation>El nombre corto del equipo local necesita de dos a cinco letras o dígitos.</translation>
    </message>
    <message>
        <source>The visitors’ short name needs two to five letters or digits.</source>
        <translation>El nombre corto del visitante necesita de dos a cinco letras o dígitos.</translation>
    </message>
    <message>
        <source>Both teams have the same short name: change one of them.</source>
        <translation>Ambos equipos tienen el mismo nombre corto: cambiar uno.</translation>
    </message>
    <message>
        <source>Home roster. %1</source>
        <translation>Plantel local. %1</translation>
    </message>
    <message>
        <source>Visitors’ roster. %1</source>
        <translation>Plantel visitante. %1</translation>
    </message>
    <message>
        <source>Match</source>
        <translation>Partido</translation>
    </message>
    <message>
        <source>Home team</source>
        <translation>Equipo local</translation>
    </message>
    <message>
        <source>Visitors</source>
        <translation>Visitante</translation>
    </message>
    <message>
        <source>Officials and crew</source>
        <translation>Oficiales y mesa</translation>
    </message>
    <message>
        <source>Alt+%1</source>
        <translation>Alt+%1</translation>
    </message>
    <message>
        <source>Other file…</source>
        <translation>Otro archivo…</translation>
    </message>
    <message>
        <source>Next</source>
        <translation>Siguiente</translation>
    </message>
    <message>
        <source>Keep the match in</source>
        <translation>Guardar el partido en</translation>
    </message>
    <message>
        <source>Matches (*.setfolio)</source>
        <translation>Partidos (*.setfolio)</translation>
    </message>
    <message>
        <source>The scheduled time cannot be read: type it like 18:30 or 6:30 pm, or leave it empty.</source>
        <translation>La hora prevista no se entiende: escribirla como 18:30 o 6:30 pm, o dejarla vacía.</translation>
    </message>
    <message>
        <source>A file of that name is there already: choose another one.</source>
        <translation>Ya existe un archivo con ese nombre: elegir otro.</translation>
    </message>
    <message numerus="yes">
        <source>%n to mend</source>
        <translation>
            <numerusform>%n por corregir</numerusform>
            <numerusform>%n por corregir</numerusform>
        </translation>
    </message>
    <message>
        <source>Kept in %1</source>
        <translation>Guardado en %1</translation>
    </message>
    <message>
        <source>Give the team a name first: the book finds it by that.</source>
        <translation>Dar primero un nombre al equipo: el libro lo encuentra por él.</translation>
    </message>
    <message>
        <source>%1 is in the team book now.</source>
        <translation>%1 está ahora en el libro de equipos.</translation>
    </message>
    <message>
        <source>The match cannot start yet. %1</source>
        <translation>El partido aún no puede empezar. %1</translation>
    </message>
</context>
<context>
    <name>setfolio::NumberStepper</name>
    <message>
        <source>One less</source>
        <translation>Uno menos</translation>
    </message>
    <message>
        <source>One more</source>
        <translation>Uno más</translation>
    </message>
    <message>
        <source>Number, %1</source>
        <translation>Número, %1</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>%1 seconds</source>
        <translation>%1 segundos</translation>
    </message>
</context>
<context>
    <name>setfolio::OfficialsDialog</name>
    <message>
        <source>Officials</source>
        <translation>Oficiales</translation>
    </message>
    <message>
        <source>They take the place of those named before.</source>
        <translation>Ocupan el lugar de los nombrados antes.</translation>
    </message>
    <message>
        <source>Record the officials</source>
        <translation>Registrar los oficiales</translation>
    </message>
</context>
<context>
    <name>setfolio::OfficialsPage</name>
    <message>
        <source>Every name may be left out, and written by pen on the printed sheet.</source>
        <translation>Todo nombre se puede omitir y escribir a mano en la hoja impresa.</translation>
    </message>
    <message>
        <source>none named</source>
        <translation>sin nombres</translation>
    </message>
    <message numerus="yes">
        <source>%n named</source>
        <translation>
            <numerusform>%n nombrado</numerusform>
            <numerusform>%n nombrados</numerusform>
        </translation>
    </message>
    <message>
        <source>As in the last match</source>
        <translation>Como en el último partido</translation>
    </message>
</context>
<context>
    <name>setfolio::OneOfWords</name>
    <message>
        <source>yes</source>
        <translation>sí</translation>
    </message>
    <message>
        <source>no</source>
        <translation>no</translation>
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
        <translation>El archivo queda como está. Las líneas anteriores al daño se pueden guardar como un nuevo archivo de partido para seguir en él.</translation>
    </message>
    <message>
        <source>Save a copy of the whole lines…</source>
        <translation>Guardar copia de las líneas íntegras…</translation>
    </message>
    <message>
        <source>Save a copy of the whole lines</source>
        <translation>Guardar copia de las líneas íntegras</translation>
    </message>
    <message>
        <source>%1-whole.%2</source>
        <translation>%1-integro.%2</translation>
    </message>
    <message>
        <source>Open a match file</source>
        <translation>Abrir un archivo de partido</translation>
    </message>
    <message>
        <source>Matches (*.setfolio)</source>
        <translation>Partidos (*.setfolio)</translation>
    </message>
</context>
<context>
    <name>setfolio::OrderStrip</name>
    <message>
        <source>empty</source>
        <translation>vacío</translation>
    </message>
    <message>
        <source>Serving order: %1</source>
        <translation>Orden de saque: %1</translation>
    </message>
    <message>
        <source>The serving order is known after the toss</source>
        <translation>El orden de saque se conoce tras el sorteo</translation>
    </message>
    <message>
        <source>Serving order</source>
        <translation>Orden de saque</translation>
    </message>
    <message>
        <source>The serving order is known after the toss.</source>
        <translation>El orden de saque se conoce tras el sorteo.</translation>
    </message>
</context>
<context>
    <name>setfolio::PageView</name>
    <message>
        <source>Page %1 of %2</source>
        <translation>Página %1 de %2</translation>
    </message>
</context>
<context>
    <name>setfolio::PositionField</name>
    <message>
        <source>Number in court position %1</source>
        <translation>Número en la posición %1 de la cancha</translation>
    </message>
    <message>
        <source>slot %1</source>
        <translation>puesto %1</translation>
    </message>
</context>
<context>
    <name>setfolio::PracticeDialog</name>
    <message>
        <source>Practice</source>
        <translation>Práctica</translation>
    </message>
    <message>
        <source>A set is told to you as it would be seen from the table. Enter it; then compare your sheet with the right one.</source>
        <translation>Se relata un set como se vería desde la mesa. Anotarlo; luego comparar la hoja propia con la correcta.</translation>
    </message>
    <message>
        <source>Begin</source>
        <translation>Comenzar</translation>
    </message>
    <message>
        <source>Print the story…</source>
        <translation>Imprimir el relato…</translation>
    </message>
    <message>
        <source>How fast</source>
        <translation>Ritmo</translation>
    </message>
    <message>
        <source>Step by step</source>
        <translation>Paso a paso</translation>
    </message>
    <message>
        <source>12 seconds each</source>
        <translation>12 segundos cada uno</translation>
    </message>
    <message>
        <source>7 seconds each</source>
        <translation>7 segundos cada uno</translation>
    </message>
    <message>
        <source>4 seconds each</source>
        <translation>4 segundos cada uno</translation>
    </message>
</context>
<context>
    <name>setfolio::Preview</name>
    <message>
        <source>Print</source>
        <translation>Imprimir</translation>
    </message>
    <message>
        <source>Sent to %1.</source>
        <translation>Enviado a %1.</translation>
    </message>
    <message>
        <source>The printer %1 did not take the sheets: look whether it is ready, or save them as a PDF.</source>
        <translation>La impresora %1 no aceptó las hojas: mirar si está lista, o guardarlas como PDF.</translation>
    </message>
    <message>
        <source>Paper</source>
        <translation>Papel</translation>
    </message>
    <message>
        <source>Letter</source>
        <translation>Carta</translation>
    </message>
    <message>
        <source>A4</source>
        <translation>A4</translation>
    </message>
    <message>
        <source>Inks</source>
        <translation>Tintas</translation>
    </message>
    <message>
        <source>PDF</source>
        <translation>PDF</translation>
    </message>
    <message>
        <source>Archive</source>
        <translation>Archivo</translation>
    </message>
    <message>
        <source>PDF/A-1b: reads the same in many years</source>
        <translation>PDF/A-1b: se leerá igual dentro de muchos años</translation>
    </message>
    <message>
        <source>Plain</source>
        <translation>Simple</translation>
    </message>
    <message>
        <source>Print…</source>
        <translation>Imprimir…</translation>
    </message>
    <message>
        <source>Save as PDF…</source>
        <translation>Guardar como PDF…</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Cerrar</translation>
    </message>
    <message>
        <source>Save as PDF</source>
        <translation>Guardar como PDF</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>%1 is set to %2, and the sheets are drawn for %3. Which paper is in it?</source>
        <translation>%1 está ajustada a %2, y las hojas están dibujadas para %3. ¿Qué papel tiene?</translation>
    </message>
    <message>
        <source>%1 cannot print near enough to the edge of this paper: up to %2 mm of the sheet would be missing there. Another paper or printer may have room for all of it.</source>
        <translation>%1 no puede imprimir tan cerca del borde de este papel: faltarían hasta %2 mm de la hoja. Otro papel u otra impresora pueden tener espacio para toda ella.</translation>
    </message>
    <message>
        <source>Print all the same</source>
        <translation>Imprimir de todos modos</translation>
    </message>
    <message>
        <source>Saved: %1</source>
        <translation>Guardado: %1</translation>
    </message>
    <message>
        <source>The PDF could not be made: nothing was saved.</source>
        <translation>No se pudo crear el PDF: no se guardó nada.</translation>
    </message>
    <message>
        <source>Numbers only</source>
        <translation>Solo números</translation>
    </message>
    <message>
        <source>Leaves out all names of persons</source>
        <translation>Omite todos los nombres de personas</translation>
    </message>
</context>
<context>
    <name>setfolio::QrView</name>
    <message>
        <source>QR code: %1</source>
        <translation>Código QR: %1</translation>
    </message>
</context>
<context>
    <name>setfolio::ReopenDialog</name>
    <message>
        <source>Who says so</source>
        <translation>Quién lo ordena</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Por qué</translation>
    </message>
</context>
<context>
    <name>setfolio::ReviewPage</name>
    <message>
        <source>What stands on the sheet</source>
        <translation>Qué está en la hoja</translation>
    </message>
</context>
<context>
    <name>setfolio::ReviewWords</name>
    <message>
        <source>Against the rulebook, and let stand by nobody</source>
        <translation>Contra el reglamento, y nadie lo dejó valer</translation>
    </message>
    <message>
        <source>Nothing is open against the rulebook</source>
        <translation>Nada pendiente contra el reglamento</translation>
    </message>
    <message>
        <source>Let stand on the referee&apos;s word</source>
        <translation>Vale por decisión del árbitro</translation>
    </message>
    <message>
        <source>Nothing was let stand against the rulebook</source>
        <translation>Nada se dejó valer contra el reglamento</translation>
    </message>
    <message>
        <source>%1 Reason: %2.</source>
        <translation>%1 Motivo: %2.</translation>
    </message>
    <message>
        <source>Points taken back</source>
        <translation>Puntos anulados</translation>
    </message>
    <message>
        <source>No points were taken back</source>
        <translation>No se anularon puntos</translation>
    </message>
    <message>
        <source>%1: point %2</source>
        <translation>%1: punto %2</translation>
    </message>
    <message>
        <source>Corrections</source>
        <translation>Correcciones</translation>
    </message>
    <message>
        <source>Nothing was corrected</source>
        <translation>Nada se corrigió</translation>
    </message>
    <message>
        <source>Sanctions</source>
        <translation>Sanciones</translation>
    </message>
    <message>
        <source>No sanctions</source>
        <translation>Sin sanciones</translation>
    </message>
    <message>
        <source>%1 Struck.</source>
        <translation>%1 Tachado.</translation>
    </message>
    <message>
        <source>Order of service</source>
        <translation>Orden de saque</translation>
    </message>
    <message>
        <source>vacant</source>
        <translation>vacante</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1: libero %2 has served in slot %3</source>
        <translation>%1: el líbero %2 sacó en el puesto %3</translation>
    </message>
    <message>
        <source>Substitutions</source>
        <translation>Sustituciones</translation>
    </message>
    <message>
        <source>No substitutions</source>
        <translation>Sin sustituciones</translation>
    </message>
    <message>
        <source>%1: %2 for %3, at %4</source>
        <translation>%1: %2 por %3, con %4</translation>
    </message>
    <message>
        <source>%1: %2 for %3, at %4, exceptional</source>
        <translation>%1: %2 por %3, con %4, excepcional</translation>
    </message>
    <message>
        <source>Time-outs</source>
        <translation>Tiempos</translation>
    </message>
    <message>
        <source>No time-outs</source>
        <translation>Sin tiempos</translation>
    </message>
    <message>
        <source>%1: at %2</source>
        <translation>%1: con %2</translation>
    </message>
    <message>
        <source>Remarks</source>
        <translation>Observaciones</translation>
    </message>
    <message>
        <source>No other remarks</source>
        <translation>Sin más observaciones</translation>
    </message>
    <message>
        <source>Set %1, cancelled at %2</source>
        <translation>Set %1, anulado con %2</translation>
    </message>
    <message>
        <source>Set %1, not decided, %2</source>
        <translation>Set %1, sin decidir, %2</translation>
    </message>
    <message>
        <source>Set %1: %2, won by %3</source>
        <translation>Set %1: %2, ganado por %3</translation>
    </message>
    <message>
        <source>%1 wins the match</source>
        <translation>%1 gana el partido</translation>
    </message>
    <message>
        <source>%1 wins set %2</source>
        <translation>%1 gana el set %2</translation>
    </message>
    <message>
        <source>Before the sets</source>
        <translation>Antes de los sets</translation>
    </message>
</context>
<context>
    <name>setfolio::RosterDialog</name>
    <message>
        <source>Roster of %1</source>
        <translation>Plantel de %1</translation>
    </message>
    <message>
        <source>It takes the place of the earlier one; what is on the sheet of a set already stays.</source>
        <translation>Ocupa el lugar del anterior; lo que ya está en la hoja de un set se queda.</translation>
    </message>
    <message>
        <source>Record the roster</source>
        <translation>Registrar el plantel</translation>
    </message>
    <message>
        <source>may be empty</source>
        <translation>puede quedar vacío</translation>
    </message>
    <message>
        <source>Coach</source>
        <translation>Entrenador</translation>
    </message>
</context>
<context>
    <name>setfolio::RosterEditor</name>
    <message>
        <source>Roster</source>
        <translation>Plantel</translation>
    </message>
    <message>
        <source>Line %1: “%2” is no shirt number. Numbers go from 0 to 99.</source>
        <translation>Línea %1: “%2” no es un número de camiseta. Los números van de 0 a 99.</translation>
    </message>
    <message>
        <source>Line %1: 00 is no shirt number, 0 is one.</source>
        <translation>Línea %1: 00 no es un número de camiseta, 0 sí.</translation>
    </message>
    <message>
        <source>Line %1: the rulebook does not allow number %2, only %3 to %4.</source>
        <translation>Línea %1: el reglamento no permite el número %2, solo de %3 a %4.</translation>
    </message>
    <message>
        <source>Line %1: the name is longer than %2 characters.</source>
        <translation>Línea %1: el nombre tiene más de %2 caracteres.</translation>
    </message>
    <message>
        <source>The text had more than %1 players: those from line %2 on were left out.</source>
        <translation>El texto tenía más de %1 jugadores: se omitieron los de la línea %2 en adelante.</translation>
    </message>
    <message>
        <source>The text opens a quotation mark in line %1 that is never closed: check the last player.</source>
        <translation>El texto abre en la línea %1 unas comillas que no se cierran: comprobar el último jugador.</translation>
    </message>
    <message>
        <source>There is no player in that text.</source>
        <translation>No hay ningún jugador en ese texto.</translation>
    </message>
    <message>
        <source>Paste a roster</source>
        <translation>Pegar un plantel</translation>
    </message>
    <message>
        <source>Read a CSV file…</source>
        <translation>Leer un archivo CSV…</translation>
    </message>
    <message>
        <source>Bring back the roster before</source>
        <translation>Recuperar el plantel anterior</translation>
    </message>
    <message>
        <source>Copy the rows in a spreadsheet: number, name, captain, libero. Numbers alone are a proper roster.</source>
        <translation>Copiar las filas en una hoja de cálculo: número, nombre, capitán, líbero. Los números solos son un plantel válido.</translation>
    </message>
    <message>
        <source>Read a roster</source>
        <translation>Leer un plantel</translation>
    </message>
    <message>
        <source>Text with columns (*.csv *.tsv *.txt);;All files (*)</source>
        <translation>Texto con columnas (*.csv *.tsv *.txt);;Todos los archivos (*)</translation>
    </message>
    <message>
        <source>%1 is too large to be a roster.</source>
        <translation>%1 es demasiado grande para ser un plantel.</translation>
    </message>
    <message>
        <source>%1 cannot be read (%2).</source>
        <translation>%1 no se puede leer (%2).</translation>
    </message>
    <message>
        <source>Save as CSV…</source>
        <translation>Guardar como CSV…</translation>
    </message>
    <message>
        <source>Save the roster</source>
        <translation>Guardar el plantel</translation>
    </message>
    <message>
        <source>Text with columns (*.csv)</source>
        <translation>Texto con columnas (*.csv)</translation>
    </message>
    <message>
        <source>Saved: %1</source>
        <translation>Guardado: %1</translation>
    </message>
    <message>
        <source>Line %1 has no number: give it one, or empty the line.</source>
        <translation>La línea %1 no tiene número: ponerle uno o vaciar la línea.</translation>
    </message>
    <message>
        <source>Line %1: %2 has no number: add one, or empty the line.</source>
        <translation>Línea %1: %2 no tiene número: agregar uno o vaciar la línea.</translation>
    </message>
    <message>
        <source>Line %1: number %2 stands in line %3 too: change one of them.</source>
        <translation>Línea %1: el número %2 está también en la línea %3: cambiar uno de los dos.</translation>
    </message>
    <message>
        <source>Line %1: the captain is named in line %2 already: take one of the marks away.</source>
        <translation>Línea %1: el capitán ya está indicado en la línea %2: quitar una de las marcas.</translation>
    </message>
</context>
<context>
    <name>setfolio::RosterModel</name>
    <message>
        <source>Number</source>
        <translation>Número</translation>
    </message>
    <message>
        <source>Name (may be empty)</source>
        <translation>Nombre (opcional)</translation>
    </message>
    <message>
        <source>Captain</source>
        <translation>Capitán</translation>
    </message>
    <message>
        <source>Libero</source>
        <translation>Líbero</translation>
    </message>
</context>
<context>
    <name>setfolio::RulebookChoice</name>
    <message>
        <source>Rulebook</source>
        <translation>Reglamento</translation>
    </message>
    <message>
        <source>Adapt…</source>
        <translation>Adaptar…</translation>
    </message>
    <message>
        <source>Read from a file…</source>
        <translation>Leer de un archivo…</translation>
    </message>
    <message>
        <source>All settings</source>
        <translation>Todos los ajustes</translation>
    </message>
    <message>
        <source>Open points</source>
        <translation>Por aclarar</translation>
    </message>
    <message>
        <source>Read a rulebook from a file</source>
        <translation>Leer un reglamento de un archivo</translation>
    </message>
    <message>
        <source>Rulebooks (*.json)</source>
        <translation>Reglamentos (*.json)</translation>
    </message>
    <message>
        <source>from a file</source>
        <translation>de un archivo</translation>
    </message>
    <message>
        <source>adapted</source>
        <translation>adaptado</translation>
    </message>
</context>
<context>
    <name>setfolio::RulebookDialog</name>
    <message>
        <source>Adapt a rulebook</source>
        <translation>Adaptar un reglamento</translation>
    </message>
    <message>
        <source>Keep this rulebook</source>
        <translation>Guardar este reglamento</translation>
    </message>
    <message>
        <source>Find</source>
        <translation>Buscar</translation>
    </message>
    <message>
        <source>What you have changed is not kept yet: press Cancel or Escape once more to drop it.</source>
        <translation>Los cambios aún no están guardados: pulsar otra vez Cancelar o Escape para descartarlos.</translation>
    </message>
    <message>
        <source>All</source>
        <translation>Todos</translation>
    </message>
    <message>
        <source>Only what differs</source>
        <translation>Solo lo que difiere</translation>
    </message>
    <message>
        <source>Only open points</source>
        <translation>Solo por aclarar</translation>
    </message>
    <message>
        <source>Find a setting</source>
        <translation>Buscar un ajuste</translation>
    </message>
    <message>
        <source>Name of your own, such as %1</source>
        <translation>Nombre propio, como %1</translation>
    </message>
    <message>
        <source>High school (NFHS), Estuary League</source>
        <translation>Secundaria (NFHS), Liga del Estuario</translation>
    </message>
    <message>
        <source>Write to a file…</source>
        <translation>Escribir en un archivo…</translation>
    </message>
    <message>
        <source>Remove from this machine</source>
        <translation>Quitar de esta máquina</translation>
    </message>
    <message>
        <source>Only what differs (%1)</source>
        <translation>Solo lo que difiere (%1)</translation>
    </message>
    <message>
        <source>Only open points (%1)</source>
        <translation>Solo por aclarar (%1)</translation>
    </message>
    <message>
        <source>The rulebook needs a name of its own.</source>
        <translation>El reglamento necesita un nombre propio.</translation>
    </message>
    <message>
        <source>Another rulebook has that name: give this one a name of its own.</source>
        <translation>Otro reglamento tiene ese nombre: dar a este un nombre propio.</translation>
    </message>
    <message>
        <source>Write the rulebook to</source>
        <translation>Escribir el reglamento en</translation>
    </message>
    <message>
        <source>Rulebooks (*.json)</source>
        <translation>Reglamentos (*.json)</translation>
    </message>
    <message>
        <source>The rulebook’s file cannot be removed.</source>
        <translation>El archivo del reglamento no se puede quitar.</translation>
    </message>
</context>
<context>
    <name>setfolio::RulebookRows</name>
    <message>
        <source>Setting, and where its value comes from</source>
        <translation>Ajuste, y de dónde viene su valor</translation>
    </message>
    <message>
        <source>Published</source>
        <translation>Publicado</translation>
    </message>
    <message>
        <source>Here</source>
        <translation>Aquí</translation>
    </message>
    <message>
        <source>changed</source>
        <translation>cambiado</translation>
    </message>
    <message>
        <source>look it up before the season</source>
        <translation>consultarlo antes de la temporada</translation>
    </message>
</context>
<context>
    <name>setfolio::RulebookTable</name>
    <message>
        <source>changed</source>
        <translation>cambiado</translation>
    </message>
    <message>
        <source>look it up</source>
        <translation>consultarlo</translation>
    </message>
    <message>
        <source>Settings of the rulebook</source>
        <translation>Ajustes del reglamento</translation>
    </message>
</context>
<context>
    <name>setfolio::RulebookView</name>
    <message>
        <source>What the rulebook says, with its sources</source>
        <translation>Qué dice el reglamento, con sus fuentes</translation>
    </message>
</context>
<context>
    <name>setfolio::RulebookWords</name>
    <message>
        <source>Points that win a set</source>
        <translation>Puntos que ganan un set</translation>
    </message>
    <message>
        <source>Points that win the deciding set</source>
        <translation>Puntos que ganan el set decisivo</translation>
    </message>
    <message>
        <source>Lead that is needed</source>
        <translation>Ventaja necesaria</translation>
    </message>
    <message>
        <source>Cap: a set ends at this score</source>
        <translation>Tope: el set termina con este marcador</translation>
    </message>
    <message>
        <source>Best of</source>
        <translation>Al mejor de</translation>
    </message>
    <message>
        <source>Interval between sets</source>
        <translation>Intervalo entre sets</translation>
    </message>
    <message>
        <source>Longer interval</source>
        <translation>Intervalo más largo</translation>
    </message>
    <message>
        <source>The longer interval follows set</source>
        <translation>El intervalo más largo sigue al set</translation>
    </message>
    <message>
        <source>Added to an interval for the check of line-ups</source>
        <translation>Se añade a un intervalo para comprobar formaciones</translation>
    </message>
    <message>
        <source>The teams change sides</source>
        <translation>Los equipos cambian de cancha</translation>
    </message>
    <message>
        <source>Change of sides in the deciding set, at</source>
        <translation>Cambio de cancha en el set decisivo, a los</translation>
    </message>
    <message>
        <source>A team that does not come or will not play</source>
        <translation>Un equipo que no viene o no quiere jugar</translation>
    </message>
    <message>
        <source>A team that cannot play on</source>
        <translation>Un equipo que no puede seguir</translation>
    </message>
    <message>
        <source>Hours within which a match goes on where it stood</source>
        <translation>Horas en las que un partido sigue donde estaba</translation>
    </message>
    <message>
        <source>Resumed on another court</source>
        <translation>Reanudado en otra cancha</translation>
    </message>
    <message>
        <source>Protest</source>
        <translation>Protesta</translation>
    </message>
    <message>
        <source>Time to serve after the signal</source>
        <translation>Plazo para sacar tras la señal</translation>
    </message>
    <message>
        <source>Re-serves in a term of service</source>
        <translation>Re-saques en un turno de saque</translation>
    </message>
    <message>
        <source>A serve before the signal</source>
        <translation>Un saque antes de la señal</translation>
    </message>
    <message>
        <source>Requests between a re-serve&apos;s signal and the serve</source>
        <translation>Solicitudes entre la señal de un re-saque y el saque</translation>
    </message>
    <message>
        <source>Requests between a replay&apos;s signal and the serve</source>
        <translation>Solicitudes entre la señal de una repetición y el saque</translation>
    </message>
    <message>
        <source>Of a wrong server the scorer speaks</source>
        <translation>De un sacador incorrecto el anotador avisa</translation>
    </message>
    <message>
        <source>A wrong server costs</source>
        <translation>Un sacador incorrecto cuesta</translation>
    </message>
    <message>
        <source>A wrong server&apos;s points are taken back</source>
        <translation>Los puntos de un sacador incorrecto se anulan</translation>
    </message>
    <message>
        <source>Time-outs and substitutions meanwhile are taken back too</source>
        <translation>También se anulan los tiempos y sustituciones de ese período</translation>
    </message>
    <message>
        <source>A point given to the wrong team is put right</source>
        <translation>Un punto dado al equipo equivocado se corrige</translation>
    </message>
    <message>
        <source>Substitutions, a team in a set</source>
        <translation>Sustituciones, por equipo y set</translation>
    </message>
    <message>
        <source>A player may come in</source>
        <translation>Un jugador puede entrar</translation>
    </message>
    <message>
        <source>Players who may share a slot in a set</source>
        <translation>Jugadores que pueden compartir un puesto en un set</translation>
    </message>
    <message>
        <source>Substitutions told to the second referee</source>
        <translation>Sustituciones que se avisan al segundo árbitro</translation>
    </message>
    <message>
        <source>Substitutions before the set starts</source>
        <translation>Sustituciones antes del inicio del set</translation>
    </message>
    <message>
        <source>A second request for substitution</source>
        <translation>Una segunda solicitud de sustitución</translation>
    </message>
    <message>
        <source>After a delay no substitution before a rally</source>
        <translation>Tras una demora, ninguna sustitución antes de una jugada</translation>
    </message>
    <message>
        <source>An illegal substitution, seen before play, is</source>
        <translation>Una sustitución ilegal, vista antes del juego, es</translation>
    </message>
    <message>
        <source>A substitution asked for when none is left is</source>
        <translation>Una sustitución pedida cuando no quedan es</translation>
    </message>
    <message>
        <source>An illegal substitution costs</source>
        <translation>Una sustitución ilegal cuesta</translation>
    </message>
    <message>
        <source>Points of an illegal substitution are taken back</source>
        <translation>Los puntos de una sustitución ilegal se anulan</translation>
    </message>
    <message>
        <source>An illegal substitution counts</source>
        <translation>Una sustitución ilegal cuenta</translation>
    </message>
    <message>
        <source>An exceptional substitution counts</source>
        <translation>Una sustitución excepcional cuenta</translation>
    </message>
    <message>
        <source>After an exceptional substitution the player is out for</source>
        <translation>Tras una sustitución excepcional el jugador queda fuera por</translation>
    </message>
    <message>
        <source>A libero comes in by an exceptional substitution</source>
        <translation>Un líbero entra por sustitución excepcional</translation>
    </message>
    <message>
        <source>Players needed to start a set</source>
        <translation>Jugadores necesarios para iniciar un set</translation>
    </message>
    <message>
        <source>A team that cannot have six on court</source>
        <translation>Un equipo que no puede tener seis en cancha</translation>
    </message>
    <message>
        <source>Time to decide about an injured player</source>
        <translation>Plazo para decidir sobre un jugador lesionado</translation>
    </message>
    <message>
        <source>Time-outs, a team in a set</source>
        <translation>Tiempos, por equipo y set</translation>
    </message>
    <message>
        <source>Length of a time-out</source>
        <translation>Duración de un tiempo</translation>
    </message>
    <message>
        <source>Warning in a time-out, after</source>
        <translation>Aviso en un tiempo, a los</translation>
    </message>
    <message>
        <source>A time-out may end early</source>
        <translation>Un tiempo puede terminar antes</translation>
    </message>
    <message>
        <source>Time-outs told to the second referee</source>
        <translation>Tiempos que se avisan al segundo árbitro</translation>
    </message>
    <message>
        <source>A time-out asked for when none is left is</source>
        <translation>Un tiempo pedido cuando no quedan es</translation>
    </message>
    <message>
        <source>Liberos, at most</source>
        <translation>Líberos, como máximo</translation>
    </message>
    <message>
        <source>Liberos are named for</source>
        <translation>Los líberos se designan para</translation>
    </message>
    <message>
        <source>A libero may still be named at the check of the line-up</source>
        <translation>Aún se puede designar un líbero al comprobar la formación</translation>
    </message>
    <message>
        <source>The libero serves</source>
        <translation>El líbero saca</translation>
    </message>
    <message>
        <source>A completed rally between two libero replacements</source>
        <translation>Una jugada completa entre dos reemplazos de líbero</translation>
    </message>
    <message>
        <source>For the libero comes in</source>
        <translation>Por el líbero entra</translation>
    </message>
    <message>
        <source>A libero replacement after the signal</source>
        <translation>Un reemplazo de líbero después de la señal</translation>
    </message>
    <message>
        <source>An illegal libero replacement, after the contact, is</source>
        <translation>Un reemplazo ilegal de líbero, después del golpe, es</translation>
    </message>
    <message>
        <source>Another player may be made libero</source>
        <translation>Otro jugador puede pasar a líbero</translation>
    </message>
    <message>
        <source>When a libero is disqualified the team goes on</source>
        <translation>Si se descalifica a un líbero, el equipo sigue</translation>
    </message>
    <message>
        <source>A wrong libero&apos;s number on the line-up</source>
        <translation>Un número de líbero erróneo en la formación</translation>
    </message>
    <message>
        <source>A libero may be captain</source>
        <translation>Un líbero puede ser capitán</translation>
    </message>
    <message>
        <source>Sanctions for misconduct</source>
        <translation>Sanciones por conducta incorrecta</translation>
    </message>
    <message>
        <source>A person&apos;s sanctions are remembered for</source>
        <translation>Las sanciones de una persona valen para</translation>
    </message>
    <message>
        <source>A warning is given once to</source>
        <translation>La amonestación se da una vez a</translation>
    </message>
    <message>
        <source>A person&apos;s next sanction is a step higher</source>
        <translation>La sanción siguiente de una persona sube un grado</translation>
    </message>
    <message>
        <source>The head coach stays seated</source>
        <translation>El primer entrenador permanece sentado</translation>
    </message>
    <message>
        <source>Sanctions for delay</source>
        <translation>Sanciones por demora</translation>
    </message>
    <message>
        <source>Delays are counted for</source>
        <translation>Las demoras se cuentan para</translation>
    </message>
    <message>
        <source>A delay is written</source>
        <translation>Una demora se escribe</translation>
    </message>
    <message>
        <source>An improper request</source>
        <translation>Una solicitud improcedente</translation>
    </message>
    <message>
        <source>Roster due before the end of the warm-up by</source>
        <translation>Plantel exigido antes del fin del calentamiento, con</translation>
    </message>
    <message>
        <source>A late roster is</source>
        <translation>Un plantel tardío</translation>
    </message>
    <message>
        <source>A late change of the roster</source>
        <translation>Un cambio tardío del plantel</translation>
    </message>
    <message>
        <source>Captain and coach sign the team list</source>
        <translation>Capitán y entrenador firman la lista del equipo</translation>
    </message>
    <message>
        <source>First line-up due before the end of the warm-up by</source>
        <translation>Primera formación exigida antes del fin del calentamiento, con</translation>
    </message>
    <message>
        <source>First line-up may be changed until before the end by</source>
        <translation>Primera formación modificable hasta antes del fin, con</translation>
    </message>
    <message>
        <source>Later line-ups due before the end of the interval by</source>
        <translation>Demás formaciones exigidas antes del fin del intervalo, con</translation>
    </message>
    <message>
        <source>A late line-up is</source>
        <translation>Una formación tardía</translation>
    </message>
    <message>
        <source>Putting right a starter&apos;s number nobody wears counts</source>
        <translation>Corregir un número de titular que nadie lleva cuenta</translation>
    </message>
    <message>
        <source>A player who is not on the roster</source>
        <translation>Un jugador que no está en el plantel</translation>
    </message>
    <message>
        <source>Lowest shirt number</source>
        <translation>Menor número de camiseta</translation>
    </message>
    <message>
        <source>Highest shirt number</source>
        <translation>Mayor número de camiseta</translation>
    </message>
    <message>
        <source>Slot I of the receiving team holds</source>
        <translation>El puesto I del equipo receptor lleva</translation>
    </message>
    <message>
        <source>Exit scores are written</source>
        <translation>Se escriben los puntos de salida</translation>
    </message>
    <message>
        <source>A re-serve is written RS</source>
        <translation>Un re-saque se escribe RS</translation>
    </message>
    <message>
        <source>A point on one&apos;s own serve is in the running score</source>
        <translation>Un punto con saque propio va en el marcador corrido</translation>
    </message>
    <message>
        <source>The captain is marked by</source>
        <translation>El capitán se marca con</translation>
    </message>
    <message>
        <source>The slot the libero serves in gets a triangle</source>
        <translation>El puesto donde saca el líbero lleva un triángulo</translation>
    </message>
    <message>
        <source>A substitution is written with the score</source>
        <translation>Una sustitución se escribe con el marcador</translation>
    </message>
    <message>
        <source>Inks, taken in turn</source>
        <translation>Tintas, por turno</translation>
    </message>
    <message>
        <source>Who signs, in this order</source>
        <translation>Quién firma, en este orden</translation>
    </message>
    <message>
        <source>It is signed at the end of</source>
        <translation>Se firma al final de</translation>
    </message>
    <message>
        <source>Set point is told to the second referee</source>
        <translation>El punto de set se avisa al segundo árbitro</translation>
    </message>
    <message>
        <source>Match point is told to the second referee</source>
        <translation>El punto de partido se avisa al segundo árbitro</translation>
    </message>
    <message>
        <source>The change of sides in the deciding set is told</source>
        <translation>El cambio de cancha en el set decisivo se avisa</translation>
    </message>
    <message>
        <source>The first serve alternates from set to set</source>
        <translation>El primer saque se alterna de set en set</translation>
    </message>
    <message>
        <source>The toss before the first set</source>
        <translation>El sorteo antes del primer set</translation>
    </message>
    <message>
        <source>A new toss before the deciding set</source>
        <translation>Un nuevo sorteo antes del set decisivo</translation>
    </message>
    <message>
        <source>A rally that is stopped is played over</source>
        <translation>Una jugada detenida se vuelve a jugar</translation>
    </message>
    <message>
        <source>When scores disagree the score sheet counts</source>
        <translation>Si los marcadores difieren vale la hoja de anotación</translation>
    </message>
    <message>
        <source>A wrong server costs one point and the serve, whoever won the rally</source>
        <translation>Un sacador incorrecto cuesta un punto y el saque, gane quien gane la jugada</translation>
    </message>
    <message>
        <source>Six different numbers, all on the roster</source>
        <translation>Seis números distintos, todos en el plantel</translation>
    </message>
    <message>
        <source>No libero among the six</source>
        <translation>Ningún líbero entre los seis</translation>
    </message>
    <message>
        <source>The serving order is kept through the set</source>
        <translation>El orden de saque se mantiene todo el set</translation>
    </message>
    <message>
        <source>A player comes back only to her own slot</source>
        <translation>Un jugador vuelve solo a su propio puesto</translation>
    </message>
    <message>
        <source>Only players of the roster come in</source>
        <translation>Solo entran jugadores del plantel</translation>
    </message>
    <message>
        <source>Several substitutions are made pair by pair</source>
        <translation>Varias sustituciones se hacen pareja por pareja</translation>
    </message>
    <message>
        <source>An injured player is replaced lawfully if she can be, else by anyone off court</source>
        <translation>Un jugador lesionado se sustituye legalmente si se puede; si no, por cualquiera fuera de la cancha</translation>
    </message>
    <message>
        <source>A libero plays in the back row only</source>
        <translation>Un líbero juega solo en la línea zaguera</translation>
    </message>
    <message>
        <source>A libero may come or go when a rally was broken off for an injury</source>
        <translation>Un líbero puede entrar o salir cuando una jugada se interrumpió por una lesión</translation>
    </message>
    <message>
        <source>The playing captain is on court</source>
        <translation>El capitán en juego está en cancha</translation>
    </message>
    <message>
        <source>A libero who cannot play on is replaced</source>
        <translation>Un líbero que no puede seguir se reemplaza</translation>
    </message>
    <message>
        <source>The libero&apos;s replacements are kept on a sheet of their own</source>
        <translation>Los reemplazos de líbero se llevan en su propia hoja</translation>
    </message>
    <message>
        <source>Sanctions before and between sets count in the next set</source>
        <translation>Las sanciones antes de los sets y entre ellos cuentan en el set siguiente</translation>
    </message>
    <message>
        <source>The score of a time-out is written with the team first that asked</source>
        <translation>El marcador de un tiempo se escribe con el equipo solicitante primero</translation>
    </message>
    <message>
        <source>No number stands twice on a roster</source>
        <translation>Ningún número está dos veces en un plantel</translation>
    </message>
    <message>
        <source>position 2</source>
        <translation>posición 2</translation>
    </message>
    <message>
        <source>position 1</source>
        <translation>posición 1</translation>
    </message>
    <message>
        <source>never</source>
        <translation>nunca</translation>
    </message>
    <message>
        <source>in one slot a set</source>
        <translation>en un solo puesto por set</translation>
    </message>
    <message>
        <source>the set</source>
        <translation>el set</translation>
    </message>
    <message>
        <source>the match</source>
        <translation>el partido</translation>
    </message>
    <message>
        <source>after each set</source>
        <translation>después de cada set</translation>
    </message>
    <message>
        <source>after each set, before the deciding one by toss</source>
        <translation>después de cada set; antes del decisivo, por sorteo</translation>
    </message>
    <message>
        <source>after the second set only</source>
        <translation>solo después del segundo set</translation>
    </message>
    <message>
        <source>keeps its points; the opponents get what they need</source>
        <translation>conserva sus puntos; el rival recibe los que le faltan</translation>
    </message>
    <message>
        <source>loses every set to nought</source>
        <translation>pierde todos los sets a cero</translation>
    </message>
    <message>
        <source>a set goes on at its score</source>
        <translation>el set sigue con su marcador</translation>
    </message>
    <message>
        <source>a set is played anew</source>
        <translation>el set se juega de nuevo</translation>
    </message>
    <message>
        <source>none</source>
        <translation>ninguno</translation>
    </message>
    <message>
        <source>before the next serve</source>
        <translation>antes del saque siguiente</translation>
    </message>
    <message>
        <source>decided during the match</source>
        <translation>se decide durante el partido</translation>
    </message>
    <message>
        <source>told at once, written after the match</source>
        <translation>se anuncia enseguida, se escribe tras el partido</translation>
    </message>
    <message>
        <source>is a re-serve</source>
        <translation>es un re-saque</translation>
    </message>
    <message>
        <source>is replayed</source>
        <translation>es una repetición</translation>
    </message>
    <message>
        <source>after the contact</source>
        <translation>después del golpe</translation>
    </message>
    <message>
        <source>before the serve</source>
        <translation>antes del saque</translation>
    </message>
    <message>
        <source>the points of the present term of service</source>
        <translation>los puntos del turno de saque en curso</translation>
    </message>
    <message>
        <source>all points since the fault</source>
        <translation>todos los puntos desde la falta</translation>
    </message>
    <message>
        <source>no points</source>
        <translation>ningún punto</translation>
    </message>
    <message>
        <source>until the opponents contact their next serve</source>
        <translation>hasta que el rival golpea su saque siguiente</translation>
    </message>
    <message>
        <source>as long as the moment is known</source>
        <translation>mientras se conozca el momento</translation>
    </message>
    <message>
        <source>in one slot, again and again</source>
        <translation>en un solo puesto, las veces que sea</translation>
    </message>
    <message>
        <source>once out, once back, same partner</source>
        <translation>una salida, una vuelta, misma pareja</translation>
    </message>
    <message>
        <source>is allowed in the same dead ball</source>
        <translation>se permite en la misma interrupción</translation>
    </message>
    <message>
        <source>is allowed after a completed rally</source>
        <translation>se permite tras una jugada completa</translation>
    </message>
    <message>
        <source>is allowed after a rally or a time-out</source>
        <translation>se permite tras una jugada o un tiempo</translation>
    </message>
    <message>
        <source>while any is left</source>
        <translation>mientras quede alguna</translation>
    </message>
    <message>
        <source>only when nobody else may</source>
        <translation>solo si nadie más puede</translation>
    </message>
    <message>
        <source>only when nobody else may, and not for a player sent off</source>
        <translation>solo si nadie más puede, y no por un jugador expulsado</translation>
    </message>
    <message>
        <source>plays on with a vacant place</source>
        <translation>sigue con un lugar vacante</translation>
    </message>
    <message>
        <source>is incomplete and loses</source>
        <translation>queda incompleto y pierde</translation>
    </message>
    <message>
        <source>a delay</source>
        <translation>una demora</translation>
    </message>
    <message>
        <source>an improper request</source>
        <translation>una solicitud improcedente</translation>
    </message>
    <message>
        <source>is a delay before the contact, a fault after it</source>
        <translation>es una demora antes del golpe, una falta después</translation>
    </message>
    <message>
        <source>is let pass once, then a delay penalty</source>
        <translation>se tolera una vez, luego castigo por demora</translation>
    </message>
    <message>
        <source>is warned in words once, then a delay</source>
        <translation>una advertencia verbal, luego una demora</translation>
    </message>
    <message>
        <source>a fault of alignment</source>
        <translation>una falta de posición</translation>
    </message>
    <message>
        <source>an illegal substitution</source>
        <translation>una sustitución ilegal</translation>
    </message>
    <message>
        <source>only whom she replaced</source>
        <translation>solo quien fue reemplazado</translation>
    </message>
    <message>
        <source>whom she replaced, or the other libero</source>
        <translation>quien fue reemplazado, o el otro líbero</translation>
    </message>
    <message>
        <source>when a libero cannot play on</source>
        <translation>cuando un líbero no puede seguir</translation>
    </message>
    <message>
        <source>when no libero is left</source>
        <translation>cuando no queda ningún líbero</translation>
    </message>
    <message>
        <source>with the other libero, if any</source>
        <translation>con el otro líbero, si lo hay</translation>
    </message>
    <message>
        <source>with the other libero, or a new one</source>
        <translation>con el otro líbero, o uno nuevo</translation>
    </message>
    <message>
        <source>is corrected</source>
        <translation>se corrige</translation>
    </message>
    <message>
        <source>means no libero that set</source>
        <translation>deja sin líbero en ese set</translation>
    </message>
    <message>
        <source>warning</source>
        <translation>amonestación</translation>
    </message>
    <message>
        <source>penalty</source>
        <translation>castigo</translation>
    </message>
    <message>
        <source>expulsion</source>
        <translation>expulsión</translation>
    </message>
    <message>
        <source>disqualification</source>
        <translation>descalificación</translation>
    </message>
    <message>
        <source>yellow</source>
        <translation>amarilla</translation>
    </message>
    <message>
        <source>red</source>
        <translation>roja</translation>
    </message>
    <message>
        <source>red and yellow together</source>
        <translation>roja y amarilla juntas</translation>
    </message>
    <message>
        <source>red and yellow apart</source>
        <translation>roja y amarilla separadas</translation>
    </message>
    <message>
        <source>each person</source>
        <translation>cada persona</translation>
    </message>
    <message>
        <source>the team</source>
        <translation>el equipo</translation>
    </message>
    <message>
        <source>after a warning</source>
        <translation>tras una amonestación</translation>
    </message>
    <message>
        <source>after a penalty</source>
        <translation>tras un castigo</translation>
    </message>
    <message>
        <source>YUD, RUD</source>
        <translation>YUD, RUD</translation>
    </message>
    <message>
        <source>D, by column</source>
        <translation>D, por columna</translation>
    </message>
    <message>
        <source>is recorded once, then a delay</source>
        <translation>se registra una vez, luego una demora</translation>
    </message>
    <message>
        <source>is a delay at once</source>
        <translation>es una demora desde la primera</translation>
    </message>
    <message>
        <source>told the second referee</source>
        <translation>se avisa al segundo árbitro</translation>
    </message>
    <message>
        <source>is free</source>
        <translation>sin costo</translation>
    </message>
    <message>
        <source>costs a point</source>
        <translation>cuesta un punto</translation>
    </message>
    <message>
        <source>is not allowed</source>
        <translation>no se permite</translation>
    </message>
    <message>
        <source>is added</source>
        <translation>se añade</translation>
    </message>
    <message>
        <source>is added, for a point</source>
        <translation>se añade, por un punto</translation>
    </message>
    <message>
        <source>may not play</source>
        <translation>no puede jugar</translation>
    </message>
    <message>
        <source>costs all that was won with her</source>
        <translation>cuesta todo lo ganado con él</translation>
    </message>
    <message>
        <source>ringed</source>
        <translation>con círculo</translation>
    </message>
    <message>
        <source>slashed</source>
        <translation>con barra</translation>
    </message>
    <message>
        <source>a C</source>
        <translation>una C</translation>
    </message>
    <message>
        <source>a ring</source>
        <translation>un círculo</translation>
    </message>
    <message>
        <source>a place of its own</source>
        <translation>un lugar propio</translation>
    </message>
    <message>
        <source>scorer</source>
        <translation>anotador</translation>
    </message>
    <message>
        <source>assistant scorer</source>
        <translation>anotador asistente</translation>
    </message>
    <message>
        <source>captains</source>
        <translation>capitanes</translation>
    </message>
    <message>
        <source>coaches</source>
        <translation>entrenadores</translation>
    </message>
    <message>
        <source>second referee</source>
        <translation>segundo árbitro</translation>
    </message>
    <message>
        <source>first referee</source>
        <translation>primer árbitro</translation>
    </message>
    <message>
        <source>Sets and match</source>
        <translation>Sets y partido</translation>
    </message>
    <message>
        <source>Serve and wrong server</source>
        <translation>Saque y sacador incorrecto</translation>
    </message>
    <message>
        <source>Substitutions</source>
        <translation>Sustituciones</translation>
    </message>
    <message>
        <source>Time-outs</source>
        <translation>Tiempos</translation>
    </message>
    <message>
        <source>Libero</source>
        <translation>Líbero</translation>
    </message>
    <message>
        <source>Sanctions and requests</source>
        <translation>Sanciones y solicitudes</translation>
    </message>
    <message>
        <source>Rosters and line-ups</source>
        <translation>Planteles y formaciones</translation>
    </message>
    <message>
        <source>Score sheet and notices</source>
        <translation>Hoja de anotación y avisos</translation>
    </message>
    <message>
        <source>Rules without a value</source>
        <translation>Reglas sin valor</translation>
    </message>
    <message>
        <source>any</source>
        <translation>cualquiera</translation>
    </message>
    <message>
        <source>no limit</source>
        <translation>sin límite</translation>
    </message>
    <message>
        <source>%1 min</source>
        <translation>%1 min</translation>
    </message>
    <message>
        <source>%1 s</source>
        <translation>%1 s</translation>
    </message>
    <message>
        <source>%1, point</source>
        <translation>%1, punto</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>sí</translation>
    </message>
    <message>
        <source>no</source>
        <translation>no</translation>
    </message>
    <message>
        <source>%1. Look it up before the season.</source>
        <translation>%1. Consultarlo antes de la temporada.</translation>
    </message>
    <message>
        <source>Grade A: the rule-making body&apos;s own text.</source>
        <translation>Grado A: texto propio del organismo que dicta las reglas.</translation>
    </message>
    <message>
        <source>Grade B: teaching text of an association.</source>
        <translation>Grado B: texto de enseñanza de una asociación.</translation>
    </message>
    <message>
        <source>No open points: everything has its source.</source>
        <translation>Nada por aclarar: todo tiene su fuente.</translation>
    </message>
    <message>
        <source>choose at least one number.</source>
        <translation>elegir al menos un número.</translation>
    </message>
    <message>
        <source>it cannot be below the points that win a set.</source>
        <translation>no puede ser menor que los puntos que ganan un set.</translation>
    </message>
    <message>
        <source>it cannot come after the end of the time-out.</source>
        <translation>no puede ser posterior al fin del tiempo.</translation>
    </message>
    <message>
        <source>it cannot be below the lowest one.</source>
        <translation>no puede ser menor que el más bajo.</translation>
    </message>
    <message>
        <source>%1: this value cannot be used. Put it back, or choose another one.</source>
        <translation>%1: este valor no se puede usar. Restablecerlo, o elegir otro.</translation>
    </message>
    <message>
        <source>%1 is not a rulebook: choose a file that was written as one.</source>
        <translation>%1 no es un reglamento: elegir un archivo escrito como tal.</translation>
    </message>
    <message>
        <source>%1 cannot be used: this version does not know %2. Take it out of the file, or have the file written anew.</source>
        <translation>%1 no se puede usar: esta versión no conoce %2. Quitarlo del archivo, o hacer escribir el archivo de nuevo.</translation>
    </message>
    <message>
        <source>%1 cannot be used: %2 is missing. Put it into the file, or adapt a published rulebook instead.</source>
        <translation>%1 no se puede usar: falta %2. Ponerlo en el archivo, o adaptar un reglamento publicado.</translation>
    </message>
    <message>
        <source>%1 cannot be used: %2 has a value that it cannot have. Put it right in the file, or adapt a published rulebook instead.</source>
        <translation>%1 no se puede usar: %2 tiene un valor que no puede tener. Corregirlo en el archivo, o adaptar un reglamento publicado.</translation>
    </message>
    <message>
        <source>Rules differ by state and league, and the referee is right.</source>
        <translation>Las reglas difieren según el estado y la liga, y el árbitro tiene la razón.</translation>
    </message>
    <message>
        <source>Nothing has to be done now: the match can start with this rulebook as it is. One setting differs between leagues or is not published; look it up before the season. It stands under “Open points”.</source>
        <translation>No hace falta hacer nada ahora: el partido puede empezar con este reglamento tal como está. Un ajuste difiere entre ligas o no está publicado; conviene consultarlo antes de la temporada. Está en “Por aclarar”.</translation>
    </message>
    <message>
        <source>Nothing has to be done now: the match can start with this rulebook as it is. %1 settings differ between leagues or are not published; look them up before the season. They stand under “Open points”.</source>
        <translation>No hace falta hacer nada ahora: el partido puede empezar con este reglamento tal como está. %1 ajustes difieren entre ligas o no están publicados; conviene consultarlos antes de la temporada. Están en “Por aclarar”.</translation>
    </message>
    <message>
        <source>A libero may come or go once a serve was contacted, though the rally is played again</source>
        <translation>Un líbero puede entrar o salir una vez golpeado un saque, aunque la jugada se repita</translation>
    </message>
</context>
<context>
    <name>setfolio::SealWords</name>
    <message>
        <source>line %1, of the original: %2, %3</source>
        <translation>línea %1, del original: %2, %3</translation>
    </message>
    <message>
        <source>line %1: %2, %3</source>
        <translation>línea %1: %2, %3</translation>
    </message>
    <message>
        <source>Line %1 reopens it (%2): %3, %4.</source>
        <translation>La línea %1 lo reabre (%2): %3, %4.</translation>
    </message>
    <message>
        <source>Line %1 strikes entry %2.</source>
        <translation>La línea %1 tacha la anotación %2.</translation>
    </message>
    <message>
        <source>Line %1 seals it anew: %2.</source>
        <translation>La línea %1 lo sella de nuevo: %2.</translation>
    </message>
    <message>
        <source>Line %1 takes the place of entry %2.</source>
        <translation>La línea %1 ocupa el lugar de la anotación %2.</translation>
    </message>
    <message>
        <source>Line %1 is put in before entry %2.</source>
        <translation>La línea %1 se inserta antes de la anotación %2.</translation>
    </message>
    <message>
        <source>%1: this is not what was signed under this seal.</source>
        <translation>%1: esto no es lo que se firmó bajo este sello.</translation>
    </message>
    <message>
        <source>%1: lines 1 to %2 are, byte for byte, what was signed under this seal.</source>
        <translation>%1: las líneas 1 a %2 son, byte por byte, lo que se firmó bajo este sello.</translation>
    </message>
    <message>
        <source>%1: lines 1 to %2 are what was signed under this seal, but the file is damaged or altered after them.</source>
        <translation>%1: las líneas 1 a %2 son lo que se firmó bajo este sello, pero el archivo está dañado o alterado después de ellas.</translation>
    </message>
    <message>
        <source>%1: lines 1 to %2 are what was signed under this seal; it was reopened or corrected later.</source>
        <translation>%1: las líneas 1 a %2 son lo que se firmó bajo este sello; después fue reabierto o corregido.</translation>
    </message>
    <message>
        <source>The chain of the file is whole: it is another match, an older state of this one, or it was written anew from some line on. Compare the code with the paper, and the file with another copy.</source>
        <translation>La cadena del archivo está íntegra: es otro partido, un estado anterior de este, o fue escrito de nuevo desde alguna línea. Comparar el código con el papel, y el archivo con otra copia.</translation>
    </message>
    <message>
        <source>Seal in the file, %1.</source>
        <translation>Sello en el archivo, %1.</translation>
    </message>
    <message>
        <source>No seal is recorded after them: its line was cut off, or never written.</source>
        <translation>Después de ellas no hay sello registrado: su línea fue cortada, o nunca se escribió.</translation>
    </message>
    <message>
        <source>Entries after the seal that leave it alone: %1.</source>
        <translation>Anotaciones posteriores al sello que no lo tocan: %1.</translation>
    </message>
</context>
<context>
    <name>setfolio::SetEndDialog</name>
    <message>
        <source>End of set %1</source>
        <translation>Fin del set %1</translation>
    </message>
    <message>
        <source>Confirm winner and score with the second referee.</source>
        <translation>Confirmar ganador y marcador con el segundo árbitro.</translation>
    </message>
    <message>
        <source>Confirmed: end the set</source>
        <translation>Confirmado: terminar el set</translation>
    </message>
    <message>
        <source>wins the set</source>
        <translation>gana el set</translation>
    </message>
    <message>
        <source>loses the set</source>
        <translation>pierde el set</translation>
    </message>
    <message>
        <source>Finished at</source>
        <translation>Fin a las</translation>
    </message>
</context>
<context>
    <name>setfolio::SettingPanel</name>
    <message>
        <source>Put back</source>
        <translation>Restablecer</translation>
    </message>
    <message>
        <source>Looked up: it is so</source>
        <translation>Consultado: es así</translation>
    </message>
    <message>
        <source>Where it comes from (may be empty)</source>
        <translation>De dónde viene (puede quedar vacío)</translation>
    </message>
    <message>
        <source>Published: %1</source>
        <translation>Publicado: %1</translation>
    </message>
    <message>
        <source>It differs between leagues or is not published: look it up before the season.</source>
        <translation>Difiere entre ligas o no está publicado: consultarlo antes de la temporada.</translation>
    </message>
    <message>
        <source>Source: %1</source>
        <translation>Fuente: %1</translation>
    </message>
</context>
<context>
    <name>setfolio::SheetChooser</name>
    <message>
        <source>Match</source>
        <translation>Partido</translation>
    </message>
    <message>
        <source>Sets</source>
        <translation>Sets</translation>
    </message>
    <message>
        <source>Hand-over</source>
        <translation>Relevo</translation>
    </message>
    <message>
        <source>Liberos</source>
        <translation>Líberos</translation>
    </message>
    <message>
        <source>For the coach</source>
        <translation>Entrenador</translation>
    </message>
    <message>
        <source>Entries</source>
        <translation>Anotaciones</translation>
    </message>
    <message>
        <source>Line-up slips</source>
        <translation>Papeletas</translation>
    </message>
    <message>
        <source>Blank slips</source>
        <translation>Pap. en blanco</translation>
    </message>
    <message>
        <source>Blank set</source>
        <translation>Set en blanco</translation>
    </message>
    <message>
        <source>Sheets</source>
        <translation>Hojas</translation>
    </message>
    <message>
        <source>Of the sets</source>
        <translation>De los sets</translation>
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
        <translation>Hoja del set %1</translation>
    </message>
</context>
<context>
    <name>setfolio::SignOffDialog</name>
    <message>
        <source>Back</source>
        <translation>Atrás</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Cerrar</translation>
    </message>
    <message>
        <source>Later</source>
        <translation>Más tarde</translation>
    </message>
    <message>
        <source>Show the seal</source>
        <translation>Mostrar el sello</translation>
    </message>
    <message>
        <source>To the seal</source>
        <translation>Al sello</translation>
    </message>
    <message>
        <source>To the signatures</source>
        <translation>A las firmas</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Listo</translation>
    </message>
</context>
<context>
    <name>setfolio::SignOffWords</name>
    <message>
        <source>Home</source>
        <translation>Local</translation>
    </message>
    <message>
        <source>Visitors</source>
        <translation>Visitante</translation>
    </message>
    <message>
        <source>Signature, on screen</source>
        <translation>Firma, en pantalla</translation>
    </message>
    <message>
        <source>protest</source>
        <translation>protesta</translation>
    </message>
    <message>
        <source>not signed</source>
        <translation>sin firma</translation>
    </message>
    <message>
        <source>name left out</source>
        <translation>nombre omitido</translation>
    </message>
    <message>
        <source>Seal</source>
        <translation>Sello</translation>
    </message>
    <message>
        <source>Seal of the original</source>
        <translation>Sello del original</translation>
    </message>
    <message>
        <source>set %1</source>
        <translation>set %1</translation>
    </message>
    <message>
        <source>match</source>
        <translation>partido</translation>
    </message>
    <message>
        <source>scorer</source>
        <translation>anotador</translation>
    </message>
    <message>
        <source>assistant scorer</source>
        <translation>anotador asistente</translation>
    </message>
    <message>
        <source>captain</source>
        <translation>capitán</translation>
    </message>
    <message>
        <source>coach</source>
        <translation>entrenador</translation>
    </message>
    <message>
        <source>second referee</source>
        <translation>segundo árbitro</translation>
    </message>
    <message>
        <source>first referee</source>
        <translation>primer árbitro</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>%1, under protest</source>
        <translation>%1, bajo protesta</translation>
    </message>
    <message>
        <source>names left out</source>
        <translation>nombres omitidos</translation>
    </message>
    <message>
        <source>Names of persons were left out of this document.</source>
        <translation>En este documento se omitieron nombres de personas.</translation>
    </message>
    <message>
        <source>This document names persons.</source>
        <translation>Este documento nombra a personas.</translation>
    </message>
    <message>
        <source>Nobody is named in this document.</source>
        <translation>Este documento no nombra a nadie.</translation>
    </message>
    <message>
        <source>%1: to sign</source>
        <translation>%1: por firmar</translation>
    </message>
    <message>
        <source>%1: signed</source>
        <translation>%1: firmado</translation>
    </message>
    <message>
        <source>%1: signed under protest</source>
        <translation>%1: firmado bajo protesta</translation>
    </message>
    <message>
        <source>%1: left unsigned</source>
        <translation>%1: sin firma</translation>
    </message>
    <message>
        <source>Sign-off of set %1</source>
        <translation>Firmas del set %1</translation>
    </message>
    <message>
        <source>Sign-off of the match</source>
        <translation>Firmas del partido</translation>
    </message>
    <message>
        <source>Seal set %1</source>
        <translation>Sellar el set %1</translation>
    </message>
    <message>
        <source>Seal the match</source>
        <translation>Sellar el partido</translation>
    </message>
    <message>
        <source>Nobody is still to sign. The seal closes set %1: whoever changes it later reopens it, with a name and a reason.</source>
        <translation>No falta ninguna firma. El sello cierra el set %1: quien lo cambie después lo reabre, con un nombre y un motivo.</translation>
    </message>
    <message>
        <source>Nobody is still to sign. The seal closes the match: whoever changes it later reopens it, with a name and a reason.</source>
        <translation>No falta ninguna firma. El sello cierra el partido: quien lo cambie después lo reabre, con un nombre y un motivo.</translation>
    </message>
    <message>
        <source>Set %1 is sealed. This code is printed on its sheet: keep the paper, or write the code down, to check the file against it.</source>
        <translation>El set %1 está sellado. Este código se imprime en su hoja: guardar el papel, o anotar el código, para comprobar con él el archivo.</translation>
    </message>
    <message>
        <source>The match is sealed. This code is printed on its page: keep the paper, or write the code down, to check the file against it.</source>
        <translation>El partido está sellado. Este código se imprime en su página: guardar el papel, o anotar el código, para comprobar con él el archivo.</translation>
    </message>
    <message>
        <source>Reopen set %1</source>
        <translation>Reabrir el set %1</translation>
    </message>
    <message>
        <source>Reopen the match</source>
        <translation>Reabrir el partido</translation>
    </message>
    <message>
        <source>Set %1 is signed and sealed. To reopen it voids its seal and its signatures: they stay on the sheet, struck, and it is signed anew.</source>
        <translation>El set %1 está firmado y sellado. Reabrirlo deja sin valor su sello y sus firmas: quedan en la hoja, tachados, y se firma de nuevo.</translation>
    </message>
    <message>
        <source>The match is signed and sealed. To reopen it voids its seal and its signatures: they stay on its page, struck, and it is signed anew.</source>
        <translation>El partido está firmado y sellado. Reabrirlo deja sin valor su sello y sus firmas: quedan en su página, tachados, y se firma de nuevo.</translation>
    </message>
    <message>
        <source>persons named</source>
        <translation>con nombres</translation>
    </message>
</context>
<context>
    <name>setfolio::SignaturePad</name>
    <message>
        <source>Sign here by finger, pen or mouse</source>
        <translation>Firmar aquí con el dedo, el lápiz o el ratón</translation>
    </message>
</context>
<context>
    <name>setfolio::SignerPage</name>
    <message>
        <source>Who signs, in the rulebook&apos;s order</source>
        <translation>Quién firma, en el orden del reglamento</translation>
    </message>
    <message>
        <source>Printed name</source>
        <translation>Nombre en letra de molde</translation>
    </message>
    <message>
        <source>Clear the signature</source>
        <translation>Borrar la firma</translation>
    </message>
    <message>
        <source>Signs</source>
        <translation>Firma</translation>
    </message>
    <message>
        <source>Signs under protest</source>
        <translation>Firma bajo protesta</translation>
    </message>
    <message>
        <source>Left unsigned</source>
        <translation>Sin firma</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Por qué</translation>
    </message>
    <message>
        <source>Remark of the protest</source>
        <translation>Observación de la protesta</translation>
    </message>
    <message>
        <source>Leave unsigned</source>
        <translation>Dejar sin firma</translation>
    </message>
    <message>
        <source>Record the signature</source>
        <translation>Registrar la firma</translation>
    </message>
    <message>
        <source>such as: agreed by word</source>
        <translation>p. ej.: acuerdo verbal</translation>
    </message>
</context>
<context>
    <name>setfolio::SignersField</name>
    <message>
        <source>In the order in which they are pressed.</source>
        <translation>En el orden en que se pulsan.</translation>
    </message>
</context>
<context>
    <name>setfolio::StartPage</name>
    <message>
        <source>The file is no longer there: %1</source>
        <translation>El archivo ya no está: %1</translation>
    </message>
    <message>
        <source>The score sheet of a volleyball match, kept at the table and printed for the signatures.</source>
        <translation>La hoja de anotación de un partido de voleibol, llevada en la mesa e impresa para las firmas.</translation>
    </message>
    <message>
        <source>New match…</source>
        <translation>Nuevo partido…</translation>
    </message>
    <message>
        <source>Teams, rosters, officials and rulebook</source>
        <translation>Equipos, planteles, oficiales y reglamento</translation>
    </message>
    <message>
        <source>Open a match file…</source>
        <translation>Abrir un archivo de partido…</translation>
    </message>
    <message>
        <source>Go on with a match, or read and print it</source>
        <translation>Seguir con un partido, o leerlo e imprimirlo</translation>
    </message>
    <message>
        <source>Practice…</source>
        <translation>Práctica…</translation>
    </message>
    <message>
        <source>A set is told to you, and your sheet compared</source>
        <translation>Se relata un set y se compara la hoja propia</translation>
    </message>
    <message>
        <source>Open the demo match</source>
        <translation>Abrir el partido de muestra</translation>
    </message>
    <message>
        <source>Invented teams, to look round</source>
        <translation>Equipos inventados, para conocer el programa</translation>
    </message>
    <message>
        <source>Recent matches</source>
        <translation>Partidos recientes</translation>
    </message>
    <message>
        <source>None yet. Matches that you keep or open are listed here.</source>
        <translation>Ninguno aún. Aquí aparecen los partidos que se guardan o se abren.</translation>
    </message>
    <message>
        <source>Open a match file</source>
        <translation>Abrir un archivo de partido</translation>
    </message>
    <message>
        <source>Matches (*.setfolio)</source>
        <translation>Partidos (*.setfolio)</translation>
    </message>
    <message>
        <source>Team book…</source>
        <translation>Libro de equipos…</translation>
    </message>
    <message>
        <source>Help…</source>
        <translation>Ayuda…</translation>
    </message>
    <message>
        <source>How things are entered, F1</source>
        <translation>Cómo se anota, F1</translation>
    </message>
</context>
<context>
    <name>setfolio::StoryBand</name>
    <message>
        <source>Practice: enter what you are told here.</source>
        <translation>Práctica: anotar lo que se relata aquí.</translation>
    </message>
    <message>
        <source>The teams are on court. Ask for what happens next.</source>
        <translation>Los equipos están en cancha. Pedir lo que sigue.</translation>
    </message>
    <message>
        <source>That was all: compare your sheet with the right one.</source>
        <translation>Eso fue todo: comparar la hoja propia con la correcta.</translation>
    </message>
    <message>
        <source>Next (F4)</source>
        <translation>Sigue (F4)</translation>
    </message>
    <message>
        <source>Hold (F5)</source>
        <translation>Pausa (F5)</translation>
    </message>
    <message>
        <source>Go on (F5)</source>
        <translation>Seguir (F5)</translation>
    </message>
    <message>
        <source>Compare (F9)</source>
        <translation>Comparar (F9)</translation>
    </message>
</context>
<context>
    <name>setfolio::TeamBookDialog</name>
    <message>
        <source>Team book</source>
        <translation>Libro de equipos</translation>
    </message>
    <message>
        <source>Teams kept on this machine, to begin a match with.</source>
        <translation>Equipos guardados en esta máquina, para comenzar un partido.</translation>
    </message>
    <message>
        <source>Keep the team book</source>
        <translation>Guardar el libro de equipos</translation>
    </message>
    <message>
        <source>There is no team in the book yet: add one.</source>
        <translation>Aún no hay equipos en el libro: añadir uno.</translation>
    </message>
    <message>
        <source>No team can be read from %1: it is left as it is.</source>
        <translation>De %1 no se puede leer ningún equipo: se deja como está.</translation>
    </message>
    <message>
        <source>What you have changed is not kept yet: press Cancel or Escape once more to drop it.</source>
        <translation>Los cambios aún no están guardados: pulsar otra vez Cancelar o Escape para descartarlos.</translation>
    </message>
    <message>
        <source>Teams of the book</source>
        <translation>Equipos del libro</translation>
    </message>
    <message>
        <source>New team</source>
        <translation>Nuevo equipo</translation>
    </message>
    <message>
        <source>Take over %1</source>
        <translation>Tomar %1</translation>
    </message>
    <message>
        <source>Delete the team</source>
        <translation>Borrar el equipo</translation>
    </message>
    <message>
        <source>Bring it back</source>
        <translation>Recuperarlo</translation>
    </message>
    <message>
        <source>%1 has the roster of the match now.</source>
        <translation>%1 tiene ahora el plantel del partido.</translation>
    </message>
    <message>
        <source>%1 is out of the book once it is kept.</source>
        <translation>%1 sale del libro en cuanto se guarde.</translation>
    </message>
    <message>
        <source>A team needs a name: type it, or delete the team.</source>
        <translation>Un equipo necesita un nombre: escribirlo, o borrar el equipo.</translation>
    </message>
    <message>
        <source>Two teams are called %1: give one of them another name.</source>
        <translation>Dos equipos se llaman %1: dar a uno otro nombre.</translation>
    </message>
    <message>
        <source>A line of the roster has no number: give it one, or empty the line.</source>
        <translation>Una línea del plantel no tiene número: darle uno, o vaciar la línea.</translation>
    </message>
    <message>
        <source>%1 could not be deleted: its file is still there.</source>
        <translation>%1 no se pudo borrar: su archivo sigue ahí.</translation>
    </message>
</context>
<context>
    <name>setfolio::TeamPage</name>
    <message>
        <source>such as navy</source>
        <translation>como azul</translation>
    </message>
    <message>
        <source>may be empty</source>
        <translation>puede quedar vacío</translation>
    </message>
    <message>
        <source>no roster</source>
        <translation>sin plantel</translation>
    </message>
    <message numerus="yes">
        <source>%n players</source>
        <translation>
            <numerusform>%n jugador</numerusform>
            <numerusform>%n jugadores</numerusform>
        </translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>Short name, 2 to 5 letters</source>
        <translation>Nombre corto, 2 a 5 letras</translation>
    </message>
    <message>
        <source>Shirt colour</source>
        <translation>Color de camiseta</translation>
    </message>
    <message>
        <source>Coach</source>
        <translation>Entrenador</translation>
    </message>
    <message>
        <source>Team book</source>
        <translation>Libro de equipos</translation>
    </message>
    <message>
        <source>Keep in it</source>
        <translation>Guardar en él</translation>
    </message>
    <message>
        <source>Keeps this team with its roster in the team book</source>
        <translation>Guarda este equipo con su plantel en el libro de equipos</translation>
    </message>
</context>
<context>
    <name>setfolio::TossCourt</name>
    <message>
        <source>your table is on this side</source>
        <translation>la mesa está de este lado</translation>
    </message>
    <message>
        <source>Court: the sides are not chosen yet</source>
        <translation>Cancha: los lados aún no están elegidos</translation>
    </message>
    <message>
        <source>Court: %1 left, %2 right</source>
        <translation>Cancha: %1 izquierda, %2 derecha</translation>
    </message>
    <message>
        <source>Court: %1 left, %2 right, %3 serves first</source>
        <translation>Cancha: %1 izquierda, %2 derecha, saca primero %3</translation>
    </message>
</context>
<context>
    <name>setfolio::TossDialog</name>
    <message>
        <source>Toss for the deciding set</source>
        <translation>Sorteo del set decisivo</translation>
    </message>
    <message>
        <source>Toss</source>
        <translation>Sorteo</translation>
    </message>
    <message>
        <source>Ask the referee. Left and right are as you see the court from your table.</source>
        <translation>Preguntar al árbitro. Izquierda y derecha, como se ve la cancha desde la mesa.</translation>
    </message>
    <message>
        <source>Record the toss</source>
        <translation>Registrar el sorteo</translation>
    </message>
    <message>
        <source>Stands left of the scorer</source>
        <translation>A la izquierda del anotador</translation>
    </message>
    <message>
        <source>1 2</source>
        <translation>1 2</translation>
    </message>
    <message>
        <source>Serves first</source>
        <translation>Saca primero</translation>
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
        <translation>El árbitro lo deja valer</translation>
    </message>
    <message>
        <source>for this reason</source>
        <translation>por este motivo</translation>
    </message>
    <message>
        <source>Reason for which the referee lets it stand</source>
        <translation>Motivo por el que el árbitro lo deja valer</translation>
    </message>
</context>
<context>
    <name>setfolio::ViewBar</name>
    <message>
        <source>Page before</source>
        <translation>Página anterior</translation>
    </message>
    <message>
        <source>Next page</source>
        <translation>Página siguiente</translation>
    </message>
    <message>
        <source>Smaller</source>
        <translation>Más pequeño</translation>
    </message>
    <message>
        <source>Larger</source>
        <translation>Más grande</translation>
    </message>
    <message>
        <source>Whole page</source>
        <translation>Página entera</translation>
    </message>
    <message>
        <source>Page width</source>
        <translation>Ancho de página</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 de %2</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
</context>
</TS>
