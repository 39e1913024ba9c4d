<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>AirText</name>
    <message>
        <source>Vapour pressure over temperature, hPa</source>
        <translation>Dampfdruck über der Temperatur, hPa</translation>
    </message>
    <message>
        <source>dry bulb, %1</source>
        <translation>trockenes Thermometer, %1</translation>
    </message>
    <message>
        <source>relative humidity</source>
        <translation>relative Feuchte</translation>
    </message>
</context>
<context>
    <name>CauseText</name>
    <message>
        <source>read ten high</source>
        <translation>zehn zu hoch abgelesen</translation>
    </message>
    <message>
        <source>read ten low</source>
        <translation>zehn zu niedrig abgelesen</translation>
    </message>
    <message>
        <source>read five high</source>
        <translation>fünf zu hoch abgelesen</translation>
    </message>
    <message>
        <source>read five low</source>
        <translation>fünf zu niedrig abgelesen</translation>
    </message>
    <message>
        <source>its sign lost or added</source>
        <translation>Vorzeichen verloren oder zu viel</translation>
    </message>
    <message>
        <source>its decimal mark lost or moved</source>
        <translation>Komma verloren oder verrückt</translation>
    </message>
    <message>
        <source>two digits exchanged</source>
        <translation>zwei Ziffern vertauscht</translation>
    </message>
    <message>
        <source>a digit dropped</source>
        <translation>eine Ziffer fehlt</translation>
    </message>
    <message>
        <source>a digit written twice</source>
        <translation>eine Ziffer doppelt geschrieben</translation>
    </message>
    <message>
        <source>a digit too many</source>
        <translation>eine Ziffer zu viel</translation>
    </message>
    <message>
        <source>its tenths counted the wrong way below zero</source>
        <translation>unter null die Zehntel verkehrt gezählt</translation>
    </message>
    <message>
        <source>its column parted: look at the thread for a gap</source>
        <translation>Faden getrennt: nach einer Lücke im Faden sehen</translation>
    </message>
    <message>
        <source>dry and wet swapped: %1</source>
        <translation>trocken und feucht vertauscht: %1</translation>
    </message>
    <message>
        <source>both read ten high: %1</source>
        <translation>beide zehn zu hoch abgelesen: %1</translation>
    </message>
    <message>
        <source>both read ten low: %1</source>
        <translation>beide zehn zu niedrig abgelesen: %1</translation>
    </message>
    <message>
        <source>both signs lost or added: %1</source>
        <translation>beide Vorzeichen verloren oder zu viel: %1</translation>
    </message>
    <message>
        <source>both decimal marks lost: %1</source>
        <translation>bei beiden das Komma verloren: %1</translation>
    </message>
    <message>
        <source>°F written as °C: %1</source>
        <translation>°F als °C geschrieben: %1</translation>
    </message>
    <message>
        <source>°C written as °F: %1</source>
        <translation>°C als °F geschrieben: %1</translation>
    </message>
    <message>
        <source>the wick was ice, not water</source>
        <translation>der Strumpf war Eis, nicht Wasser</translation>
    </message>
    <message>
        <source>the wick was water, not ice</source>
        <translation>der Strumpf war Wasser, nicht Eis</translation>
    </message>
    <message>
        <source>the line above was copied</source>
        <translation>die Zeile darüber abgeschrieben</translation>
    </message>
    <message>
        <source>the wick was dry: the wet bulb is of no use</source>
        <translation>der Strumpf war trocken: das feuchte Thermometer ist unbrauchbar</translation>
    </message>
    <message>
        <source>%1 / %2</source>
        <extracomment>%1 the dry bulb, %2 the wet bulb</extracomment>
        <translation>%1 / %2</translation>
    </message>
    <message>
        <source>dry bulb: %1</source>
        <translation>trocken: %1</translation>
    </message>
    <message>
        <source>wet bulb: %1</source>
        <translation>feucht: %1</translation>
    </message>
    <message>
        <source>dry bulb is %1, %2</source>
        <extracomment>%1 a temperature, %2 what went wrong</extracomment>
        <translation>trocken ist %1, %2</translation>
    </message>
    <message>
        <source>wet bulb is %1, %2</source>
        <translation>feucht ist %1, %2</translation>
    </message>
</context>
<context>
    <name>ChangedText</name>
    <message>
        <source>There is no reading yet that it could change.</source>
        <translation>Es gibt noch keine Ablesung, die sich dadurch ändern könnte.</translation>
    </message>
    <message>
        <source>None of the %1 readings would have another humidity or dew point.</source>
        <translation>Keine der %1 Ablesungen hätte eine andere Feuchte oder einen anderen Taupunkt.</translation>
    </message>
    <message>
        <source>Of %1 readings %2 would have another humidity or dew point, all in one month.</source>
        <translation>Von %1 Ablesungen hätten %2 eine andere Feuchte oder einen anderen Taupunkt, alle in einem Monat.</translation>
    </message>
    <message>
        <source>Of %1 readings %2 would have another humidity or dew point, in %3 months.</source>
        <translation>Von %1 Ablesungen hätten %2 eine andere Feuchte oder einen anderen Taupunkt, in %3 Monaten.</translation>
    </message>
    <message>
        <source>%1 would lose their humidity.</source>
        <translation>%1 verlören ihre Feuchte.</translation>
    </message>
    <message>
        <source>%1 would gain one.</source>
        <translation>%1 bekämen eine.</translation>
    </message>
    <message>
        <source>What was read stays as it is.</source>
        <translation>Was abgelesen wurde, bleibt, wie es ist.</translation>
    </message>
</context>
<context>
    <name>ChartText</name>
    <message>
        <source>extra</source>
        <translation>zusätzlich</translation>
    </message>
    <message>
        <source>doubtful</source>
        <translation>zweifelhaft</translation>
    </message>
    <message>
        <source>erroneous</source>
        <translation>falsch</translation>
    </message>
    <message>
        <source>wick changed</source>
        <translation>Strumpf gewechselt</translation>
    </message>
    <message>
        <source>station or instruments changed</source>
        <translation>Station oder Geräte geändert</translation>
    </message>
    <message>
        <source>exposure diary</source>
        <translation>Stationschronik</translation>
    </message>
    <message>
        <source>station average, %1 years</source>
        <extracomment>the station&apos;s own mean range; %1 is how many years</extracomment>
        <translation>Stationsmittel, %1 Jahre</translation>
    </message>
</context>
<context>
    <name>ChoiceWords</name>
    <message>
        <source>Humidity table</source>
        <translation>Feuchtetafel</translation>
    </message>
    <message>
        <source>For the wall of the hut: relative humidity and dew point for this station&apos;s exposure and pressure, a wick with water and one with ice.</source>
        <translation>Für die Wand der Hütte: relative Feuchte und Taupunkt für Aufstellung und Luftdruck dieser Station, mit Wasser und mit Eis am Strumpf.</translation>
    </message>
    <message>
        <source>&amp;Scale</source>
        <translation>&amp;Skala</translation>
    </message>
    <message>
        <source>half degrees</source>
        <translation>halbe Grad</translation>
    </message>
    <message>
        <source>whole degrees</source>
        <translation>ganze Grad</translation>
    </message>
    <message>
        <source>Dry less &amp;wet by</source>
        <translation>Trocken &amp;minus feucht bis</translation>
    </message>
    <message>
        <source>There is no table without a coefficient: say on the page Station how the thermometers hang.</source>
        <translation>Ohne Koeffizient gibt es keine Tafel: auf der Seite Station angeben, wie die Thermometer hängen.</translation>
    </message>
    <message>
        <source>Month form</source>
        <translation>Monatsformular</translation>
    </message>
    <message>
        <source>A month to write in by hand: a line for each observing hour, with boxes for the degrees.</source>
        <translation>Ein Monat zum Ausfüllen von Hand: eine Zeile je Termin, mit Kästchen für die Grade.</translation>
    </message>
    <message>
        <source>&amp;Month</source>
        <translation>&amp;Monat</translation>
    </message>
    <message>
        <source>Deputy&apos;s card</source>
        <translation>Vertretungskarte</translation>
    </message>
    <message>
        <source>A card for whoever reads in your place: hours, order of reading, frost, wick, what to do in doubt. A5, both sides.</source>
        <translation>Eine Karte für die Vertretung: Termine, Reihenfolge, Frost, Strumpf, was im Zweifel zu tun ist. A5, beidseitig.</translation>
    </message>
    <message>
        <source>Year book</source>
        <translation>Jahrbuch</translation>
    </message>
    <message>
        <source>A year bound: numbers, charts, twelve months, and the hut&apos;s humidity table. It takes a few seconds.</source>
        <translation>Ein Jahr gebunden: Zahlen, Diagramme, zwölf Monate und die Feuchtetafel der Hütte. Es dauert einige Sekunden.</translation>
    </message>
    <message>
        <source>&amp;Year</source>
        <translation>&amp;Jahr</translation>
    </message>
    <message>
        <source>Reading the year…</source>
        <translation>Das Jahr wird gelesen…</translation>
    </message>
    <message>
        <source>&amp;Cancel</source>
        <translation>A&amp;bbrechen</translation>
    </message>
    <message>
        <source>Stopped; no page was made.</source>
        <translation>Angehalten; keine Seite wurde gemacht.</translation>
    </message>
</context>
<context>
    <name>ClassText</name>
    <message>
        <source>Dry and wet were probably written in each other&apos;s place: look again which is which.</source>
        <translation>Trocken und feucht stehen wohl vertauscht: noch einmal nachsehen, welches welches ist.</translation>
    </message>
    <message>
        <source>Both were probably read on the °F scale: read the other side of the stem.</source>
        <translation>Beide wohl an der °F-Skala abgelesen: die andere Seite ablesen.</translation>
    </message>
    <message>
        <source>The dry bulb was probably misread by ten: read it again, tenths first.</source>
        <translation>Trocken wohl um zehn verlesen: noch einmal ablesen, Zehntel zuerst.</translation>
    </message>
    <message>
        <source>The wet bulb was probably misread by ten: read it again, tenths first.</source>
        <translation>Feucht wohl um zehn verlesen: noch einmal ablesen, Zehntel zuerst.</translation>
    </message>
    <message>
        <source>The dry bulb was probably misread by five: count the lines from the nearest figure.</source>
        <translation>Trocken wohl um fünf verlesen: die Striche von der nächsten Zahl an zählen.</translation>
    </message>
    <message>
        <source>The wet bulb was probably misread by five: count the lines from the nearest figure.</source>
        <translation>Feucht wohl um fünf verlesen: die Striche von der nächsten Zahl an zählen.</translation>
    </message>
    <message>
        <source>The decimal point of the dry bulb probably moved: look at what was written.</source>
        <translation>Beim trockenen Thermometer wohl das Komma verrückt: nachsehen, was geschrieben steht.</translation>
    </message>
    <message>
        <source>The decimal point of the wet bulb probably moved: look at what was written.</source>
        <translation>Beim feuchten Thermometer wohl das Komma verrückt: nachsehen, was geschrieben steht.</translation>
    </message>
    <message>
        <source>The wick was probably dry, or the reading came too early: wet the wick, go on until it falls no further, and read again.</source>
        <translation>Der Strumpf war wohl trocken oder es wurde zu früh abgelesen: benetzen, weitermachen, bis es nicht mehr fällt, und noch einmal ablesen.</translation>
    </message>
    <message>
        <source>The air round this pair was probably warmer: keep it in the shade and away from people, and read again.</source>
        <translation>Um dieses Paar war die Luft wohl wärmer: im Schatten und fern von Menschen noch einmal ablesen.</translation>
    </message>
    <message>
        <source>Water or ice was given otherwise than by most: touch the wick and see.</source>
        <translation>Wasser oder Eis wurde anders angegeben als bei den meisten: den Strumpf berühren.</translation>
    </message>
    <message>
        <source>Dry bulb %1 %2 above the middle.</source>
        <translation>Trocken %1&#xa0;%2 über der Mitte.</translation>
    </message>
    <message>
        <source>Dry bulb %1 %2 below the middle.</source>
        <translation>Trocken %1&#xa0;%2 unter der Mitte.</translation>
    </message>
    <message>
        <source>Wet bulb %1 %2 above the middle.</source>
        <translation>Feucht %1&#xa0;%2 über der Mitte.</translation>
    </message>
    <message>
        <source>Wet bulb %1 %2 below the middle.</source>
        <translation>Feucht %1&#xa0;%2 unter der Mitte.</translation>
    </message>
    <message>
        <source>Read both again, wet bulb first.</source>
        <translation>Beide noch einmal ablesen, das feuchte zuerst.</translation>
    </message>
    <message>
        <source>No pair gives a humidity yet.</source>
        <translation>Noch gibt kein Paar eine Feuchte.</translation>
    </message>
    <message>
        <source>1 pair.</source>
        <translation>1 Paar.</translation>
    </message>
    <message numerus="yes">
        <source>%n pairs.</source>
        <translation>
            <numerusform>%n Paar.</numerusform>
            <numerusform>%n Paare.</numerusform>
        </translation>
    </message>
    <message>
        <source>The middle value is %1.</source>
        <translation>Der mittlere Wert ist %1.</translation>
    </message>
    <message>
        <source>Half of them lie between %1 and %2, all between %3 and %4.</source>
        <translation>Die Hälfte liegt zwischen %1 und %2, alle zwischen %3 und %4.</translation>
    </message>
    <message>
        <source>With fewer than %1 pairs nobody is called far off.</source>
        <translation>Bei weniger als %1 Paaren gilt keines als weit entfernt.</translation>
    </message>
    <message>
        <source>Nobody is far off.</source>
        <translation>Keines liegt weit entfernt.</translation>
    </message>
    <message>
        <source>Far off: %1.</source>
        <translation>Weit entfernt: %1.</translation>
    </message>
</context>
<context>
    <name>CopyText</name>
    <message>
        <source>daily</source>
        <translation>täglich</translation>
    </message>
    <message>
        <source>by hand</source>
        <translation>von Hand</translation>
    </message>
    <message>
        <source>before bringing in</source>
        <translation>vor dem Einlesen</translation>
    </message>
    <message>
        <source>before taking back</source>
        <translation>vor dem Zurücknehmen</translation>
    </message>
    <message>
        <source>d MMM yyyy, HH:mm</source>
        <extracomment>day, short month, year and clock time, in Qt&apos;s date format</extracomment>
        <translation>d. MMM yyyy, HH:mm</translation>
    </message>
    <message>
        <source>No copy was kept, for the book did not verify; the copies made before stay. %1</source>
        <translation>Es wurde keine Kopie angelegt, denn das Buch ließ sich nicht bestätigen; die früheren Kopien bleiben. %1</translation>
    </message>
    <message>
        <source>No copy was kept: the folder for copies, “%1”, is not there. Plug in the drive it lies on, or choose another folder. The copies made before stay.</source>
        <translation>Es wurde keine Kopie angelegt: den Ordner für Kopien, „%1“, gibt es nicht. Das Laufwerk anschließen oder einen anderen Ordner wählen. Die früheren Kopien bleiben.</translation>
    </message>
    <message>
        <source>No copy was kept: the disk that holds “%1” is full. Free some space, or choose another folder. The copies made before stay.</source>
        <translation>Es wurde keine Kopie angelegt: der Datenträger mit „%1“ ist voll. Platz schaffen oder einen anderen Ordner wählen. Die früheren Kopien bleiben.</translation>
    </message>
    <message>
        <source>No copy was kept: nothing can be written in “%1”. Make it writable, or choose another folder. The copies made before stay. (%2)</source>
        <translation>Es wurde keine Kopie angelegt: in „%1“ lässt sich nicht schreiben. Schreibrecht geben oder einen anderen Ordner wählen. Die früheren Kopien bleiben. (%2)</translation>
    </message>
    <message>
        <source>No copy was kept: another program is writing in the book. It is tried again later.</source>
        <translation>Es wurde keine Kopie angelegt: ein anderes Programm schreibt gerade im Buch. Es wird später wieder versucht.</translation>
    </message>
    <message>
        <source>No copy was kept in “%1”: check the drive, or choose another folder. The copies made before stay. (%2)</source>
        <translation>Es wurde keine Kopie in „%1“ angelegt: das Laufwerk prüfen oder einen anderen Ordner wählen. Die früheren Kopien bleiben. (%2)</translation>
    </message>
    <message>
        <source>No copy was made: “%1” can&apos;t be written there. Choose another folder. (%2)</source>
        <translation>Es wurde keine Kopie angelegt: „%1“ lässt sich dort nicht schreiben. Einen anderen Ordner wählen. (%2)</translation>
    </message>
    <message>
        <source>No copy was made. %1</source>
        <translation>Es wurde keine Kopie angelegt. %1</translation>
    </message>
    <message>
        <source>The old copy “%1” could not be deleted and stays: delete it by hand if it is not wanted. (%2)</source>
        <translation>Die alte Kopie „%1“ ließ sich nicht löschen und bleibt: von Hand löschen, wenn sie nicht gebraucht wird. (%2)</translation>
    </message>
    <message>
        <source>damaged; it is never deleted by itself</source>
        <translation>beschädigt; wird nie von selbst gelöscht</translation>
    </message>
    <message>
        <source>can&apos;t be read (%1)</source>
        <translation>nicht lesbar (%1)</translation>
    </message>
    <message>
        <source>1 copy</source>
        <translation>1 Kopie</translation>
    </message>
    <message numerus="yes">
        <source>%1 copies</source>
        <translation>
            <numerusform>%1 Kopie</numerusform>
            <numerusform>%1 Kopien</numerusform>
        </translation>
    </message>
    <message>
        <source>1 reading</source>
        <translation>1 Ablesung</translation>
    </message>
    <message numerus="yes">
        <source>%1 readings</source>
        <translation>
            <numerusform>%1 Ablesung</numerusform>
            <numerusform>%1 Ablesungen</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>DiaryText</name>
    <message>
        <source>screen washed</source>
        <translation>Hütte gewaschen</translation>
    </message>
    <message>
        <source>screen painted</source>
        <translation>Hütte gestrichen</translation>
    </message>
    <message>
        <source>louvres choked with snow</source>
        <translation>Jalousien voll Schnee</translation>
    </message>
    <message>
        <source>hedge or trees grown</source>
        <translation>Hecke oder Bäume gewachsen</translation>
    </message>
    <message>
        <source>hedge or trees cut</source>
        <translation>Hecke oder Bäume geschnitten</translation>
    </message>
    <message>
        <source>screen moved</source>
        <translation>Hütte versetzt</translation>
    </message>
    <message>
        <source>photograph taken</source>
        <translation>Foto gemacht</translation>
    </message>
    <message>
        <source>new wick</source>
        <translation>neuer Strumpf</translation>
    </message>
    <message>
        <source>reservoir cleaned and filled</source>
        <translation>Gefäß gereinigt und gefüllt</translation>
    </message>
    <message>
        <source>other</source>
        <translation>anderes</translation>
    </message>
</context>
<context>
    <name>DifferenceText</name>
    <message>
        <source>only in %1</source>
        <translation>nur in %1</translation>
    </message>
    <message>
        <source>revised later in %1</source>
        <translation>später berichtigt in %1</translation>
    </message>
    <message>
        <source>revised in each for itself</source>
        <translation>in beiden je für sich berichtigt</translation>
    </message>
    <message>
        <source>The station&apos;s name and rules</source>
        <translation>Name und Regeln der Station</translation>
    </message>
    <message>
        <source>A period of the station</source>
        <translation>Ein Abschnitt der Station</translation>
    </message>
    <message>
        <source>A thermometer</source>
        <translation>Ein Thermometer</translation>
    </message>
    <message>
        <source>The thermometers in use</source>
        <translation>Die benutzten Thermometer</translation>
    </message>
    <message>
        <source>A thermometer&apos;s correction</source>
        <translation>Die Korrektion eines Thermometers</translation>
    </message>
    <message>
        <source>An absence</source>
        <translation>Eine Abwesenheit</translation>
    </message>
    <message>
        <source>A note in the diary</source>
        <translation>Ein Eintrag der Chronik</translation>
    </message>
    <message>
        <source>A check of the pair</source>
        <translation>Eine Prüfung des Paars</translation>
    </message>
    <message>
        <source>A check over salts</source>
        <translation>Eine Prüfung über Salzen</translation>
    </message>
    <message>
        <source>Another instrument beside the station&apos;s</source>
        <translation>Ein anderes Gerät neben dem der Station</translation>
    </message>
    <message>
        <source>A reading of another instrument</source>
        <translation>Eine Ablesung eines anderen Geräts</translation>
    </message>
    <message>
        <source>A limit of the checks</source>
        <translation>Ein Grenzwert der Prüfungen</translation>
    </message>
    <message>
        <source>Another entry (%1)</source>
        <translation>Ein anderer Eintrag (%1)</translation>
    </message>
    <message>
        <source>d MMM yyyy</source>
        <translation>d. MMM yyyy</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>withdrawn</source>
        <translation>zurückgezogen</translation>
    </message>
    <message>
        <source>missing</source>
        <translation>fehlend</translation>
    </message>
    <message>
        <source>%1: %2, %3</source>
        <translation>%1: %2, %3</translation>
    </message>
    <message>
        <source>%1: %2 in both, with other words or marks; %3</source>
        <translation>%1: %2 in beiden, mit anderen Worten oder Zeichen; %3</translation>
    </message>
    <message>
        <source>%1: %2 in %3, %4 in %5; %6</source>
        <translation>%1: %2 in %3, %4 in %5; %6</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>, entered %1</source>
        <translation>, eingetragen %1</translation>
    </message>
    <message>
        <source>%1 and %2 have nothing in common: they are not copies of one book.</source>
        <translation>%1 und %2 haben nichts gemeinsam: sie sind keine Kopien eines Buchs.</translation>
    </message>
    <message>
        <source>%1 and %2 hold the same readings and the same facts.</source>
        <translation>%1 und %2 enthalten dieselben Ablesungen und dieselben Angaben.</translation>
    </message>
    <message>
        <source>1 reading: %1.</source>
        <translation>1 Ablesung: %1.</translation>
    </message>
    <message>
        <source>%1 readings: %2.</source>
        <translation>%1 Ablesungen: %2.</translation>
    </message>
    <message>
        <source>1 fact of the station: %1.</source>
        <translation>1 Angabe zur Station: %1.</translation>
    </message>
    <message>
        <source>%1 facts of the station: %2.</source>
        <translation>%1 Angaben zur Station: %2.</translation>
    </message>
    <message>
        <source>… and %1 more</source>
        <translation>… und %1 weitere</translation>
    </message>
</context>
<context>
    <name>EntryTextContext</name>
    <message>
        <source>%1 never came that night: the clocks were put forward. Write the time that the clock showed.</source>
        <translation>%1 gab es in jener Nacht nicht: die Uhren wurden vorgestellt. Die Zeit schreiben, die die Uhr zeigte.</translation>
    </message>
    <message>
        <source>There is no such date. Write it as day, month and year.</source>
        <translation>Dieses Datum gibt es nicht. Tag, Monat und Jahr schreiben.</translation>
    </message>
    <message>
        <source>The station does not read at that hour on that date. Choose another hour, or an extra reading.</source>
        <translation>Zu dieser Stunde liest die Station an diesem Tag nicht ab. Einen anderen Termin wählen oder eine zusätzliche Ablesung.</translation>
    </message>
    <message>
        <source>dry bulb</source>
        <translation>trockenes Thermometer</translation>
    </message>
    <message>
        <source>wet bulb</source>
        <translation>feuchtes Thermometer</translation>
    </message>
    <message>
        <source>maximum</source>
        <translation>Maximum</translation>
    </message>
    <message>
        <source>minimum</source>
        <translation>Minimum</translation>
    </message>
    <message>
        <source>pressure</source>
        <translation>Luftdruck</translation>
    </message>
    <message>
        <source>wind</source>
        <translation>Wind</translation>
    </message>
    <message>
        <source>Wind is a Beaufort force from 0 to 12, a whole number.</source>
        <translation>Wind ist eine Beaufort-Stärke von 0 bis 12, eine ganze Zahl.</translation>
    </message>
    <message>
        <source>whirl %1, wet bulb</source>
        <translation>Durchgang %1, feucht</translation>
    </message>
    <message>
        <source>whirl %1, dry bulb</source>
        <translation>Durchgang %1, trocken</translation>
    </message>
</context>
<context>
    <name>ErrorText</name>
    <message>
        <source>the book</source>
        <translation>das Buch</translation>
    </message>
    <message>
        <source>%1 is not there: look for it in another folder, or start a new station.</source>
        <translation>%1 ist nicht da: in einem anderen Ordner suchen oder eine neue Station beginnen.</translation>
    </message>
    <message>
        <source>%1 is there already and was left as it is: choose another name.</source>
        <translation>%1 gibt es schon und wurde nicht verändert: einen anderen Namen wählen.</translation>
    </message>
    <message>
        <source>%1 is not a book of this program and was left untouched: choose another file.</source>
        <translation>%1 ist kein Buch dieses Programms und wurde nicht verändert: eine andere Datei wählen.</translation>
    </message>
    <message>
        <source>%1 is damaged and was left untouched: keep it, and restore the newest backup into a new file. (%2)</source>
        <translation>%1 ist beschädigt und wurde nicht verändert: aufheben und die neueste Kopie in eine neue Datei wiederherstellen. (%2)</translation>
    </message>
    <message>
        <source>%1 was written by a later version: it can be read here but not written. Install the later version to write in it.</source>
        <translation>%1 wurde von einer neueren Fassung geschrieben: es lässt sich hier lesen, aber nicht beschreiben. Zum Schreiben die neuere Fassung installieren.</translation>
    </message>
    <message>
        <source>%1 can&apos;t be written: make the file and its folder writable, or copy the book to a folder of your own.</source>
        <translation>%1 lässt sich nicht beschreiben: Datei und Ordner beschreibbar machen oder das Buch in einen eigenen Ordner kopieren.</translation>
    </message>
    <message>
        <source>%1 is being written by another program: nothing was saved yet. Try again in a moment.</source>
        <translation>In %1 schreibt gerade ein anderes Programm: es wurde noch nichts gespeichert. Gleich noch einmal versuchen.</translation>
    </message>
    <message>
        <source>The disk that holds %1 is full: nothing was saved. Free some space and try again.</source>
        <translation>Der Datenträger mit %1 ist voll: es wurde nichts gespeichert. Platz schaffen und noch einmal versuchen.</translation>
    </message>
    <message>
        <source>%1 can&apos;t be opened: check that you may read the file and its folder. (%2)</source>
        <translation>%1 lässt sich nicht öffnen: prüfen, ob Datei und Ordner gelesen werden dürfen. (%2)</translation>
    </message>
    <message>
        <source>The disk that holds %1 failed to read or write: nothing was saved. Check the drive or the network, then try again. (%2)</source>
        <translation>Der Datenträger mit %1 konnte nicht lesen oder schreiben: es wurde nichts gespeichert. Laufwerk oder Netz prüfen, dann noch einmal versuchen. (%2)</translation>
    </message>
    <message>
        <source>There is a reading at this hour already: open it in the register to correct it, or choose another hour.</source>
        <translation>Zu diesem Termin gibt es schon eine Ablesung: im Tagebuch öffnen und berichtigen oder einen anderen Termin wählen.</translation>
    </message>
    <message>
        <source>This reading was changed meanwhile: look at it again, then make your change.</source>
        <translation>Diese Ablesung wurde inzwischen geändert: noch einmal ansehen, dann ändern.</translation>
    </message>
    <message>
        <source>There is no reading at this time: check date and hour.</source>
        <translation>Zu dieser Zeit gibt es keine Ablesung: Datum und Stunde prüfen.</translation>
    </message>
    <message>
        <source>There is too little memory free to work with %1: nothing was saved. Close other programs and try again.</source>
        <translation>Für die Arbeit mit %1 ist zu wenig Speicher frei: es wurde nichts gespeichert. Andere Programme schließen und noch einmal versuchen.</translation>
    </message>
    <message>
        <source>%1 could not be written because of an error in the program: nothing was saved. Please report it. (%2)</source>
        <translation>%1 ließ sich wegen eines Fehlers im Programm nicht schreiben: es wurde nichts gespeichert. Bitte melden. (%2)</translation>
    </message>
    <message>
        <source>Revision %1</source>
        <translation>Fassung %1</translation>
    </message>
    <message>
        <source>The book</source>
        <translation>Das Buch</translation>
    </message>
    <message>
        <source>%1 is empty: choose another file.</source>
        <translation>%1 ist leer: eine andere Datei wählen.</translation>
    </message>
    <message>
        <source>%1 can&apos;t be read as text: save it as CSV in UTF-8 and try again.</source>
        <translation>%1 ist nicht als Text lesbar: als CSV in UTF-8 speichern und noch einmal versuchen.</translation>
    </message>
    <message>
        <source>%1 has a line of names and nothing below: choose another file.</source>
        <translation>%1 hat eine Zeile mit Namen und nichts darunter: eine andere Datei wählen.</translation>
    </message>
    <message>
        <source>%1 is no text: save the register as CSV and try again.</source>
        <translation>%1 ist kein Text: das Tagebuch als CSV speichern und noch einmal versuchen.</translation>
    </message>
    <message>
        <source>This is the Station Exchange Format in version %1; versions 1.0.0 and 0.2.0 can be read. Ask for the file in one of these.</source>
        <translation>Das ist das Station Exchange Format in der Fassung %1; lesbar sind 1.0.0 und 0.2.0. Um die Datei in einer davon bitten.</translation>
    </message>
    <message>
        <source>The file begins as the Station Exchange Format does, but its line %1 is not as that format has it: look at the first thirteen lines.</source>
        <translation>Die Datei beginnt wie das Station Exchange Format, aber ihre Zeile %1 ist nicht, wie dieses Format sie hat: die ersten dreizehn Zeilen ansehen.</translation>
    </message>
    <message>
        <source>The values are in “%1”; bulbs can be read in C, F or K and pressures in hPa, Pa or kPa. Have them worked out in one of these.</source>
        <translation>Die Werte sind in „%1“; Thermometer sind in C, F oder K lesbar und Luftdruck in hPa, Pa oder kPa. Die Werte in eines davon umrechnen lassen.</translation>
    </message>
    <message>
        <source>The days are counted by another calendar (%1), and only the Gregorian one can be read: have the dates worked out in it first.</source>
        <translation>Die Tage zählen nach einem anderen Kalender (%1), lesbar ist nur der gregorianische: die Daten vorher umrechnen lassen.</translation>
    </message>
    <message>
        <source>These files are of different stations (%1): bring them in one by one, each into its own book.</source>
        <translation>Diese Dateien sind von verschiedenen Stationen (%1): einzeln einlesen, jede in ihr eigenes Buch.</translation>
    </message>
    <message>
        <source>None of these files holds a dry bulb (ta), a wet bulb (tb) or a pressure (p), read at a moment: give at least one that does. (%1)</source>
        <translation>Keine dieser Dateien enthält ein trockenes (ta) oder feuchtes Thermometer (tb) oder den Luftdruck (p), zu einem Zeitpunkt abgelesen: mindestens eine solche angeben. (%1)</translation>
    </message>
    <message>
        <source>No column tells the time: name one with --map COLUMN=time, or two with =date and =hour. (%1)</source>
        <translation>Keine Spalte nennt die Zeit: eine mit --map SPALTE=time angeben oder zwei mit =date und =hour. (%1)</translation>
    </message>
    <message>
        <source>The first line of %1 must name the columns: time (or date and clock), and rh or other_dry and other_wet.</source>
        <translation>Die erste Zeile von %1 muss die Spalten nennen: time (oder date und clock) und rh oder other_dry und other_wet.</translation>
    </message>
    <message>
        <source>No column holds the dry or wet bulb: name them with --map COLUMN=dry and --map COLUMN=wet. (%1)</source>
        <translation>Keine Spalte enthält das trockene oder feuchte Thermometer: mit --map SPALTE=dry und --map SPALTE=wet angeben. (%1)</translation>
    </message>
    <message>
        <source>There is no column %1 in the file: check the name in the --map option.</source>
        <translation>In der Datei gibt es keine Spalte %1: den Namen in der Option --map prüfen.</translation>
    </message>
    <message>
        <source>Two columns would be the same field (%1): say with --map which one it is.</source>
        <translation>Zwei Spalten wären dasselbe Feld (%1): mit --map angeben, welche es ist.</translation>
    </message>
    <message>
        <source>Stopped: nothing was imported.</source>
        <translation>Abgebrochen: es wurde nichts eingelesen.</translation>
    </message>
    <message>
        <source>More than %1 lines have dates that can be read as day and month or as month and day: say with --date-order which it is, or import from a file.</source>
        <translation>In mehr als %1 Zeilen lässt sich das Datum als Tag und Monat oder als Monat und Tag lesen: mit --date-order angeben, was gilt, oder aus einer Datei einlesen.</translation>
    </message>
    <message>
        <source>The file has more lines than can be taken at once: split it and import the parts. (%1)</source>
        <translation>Die Datei hat mehr Zeilen, als auf einmal gehen: teilen und die Teile einlesen. (%1)</translation>
    </message>
    <message>
        <source>“%1” has a year of two digits: write all four</source>
        <translation>„%1“ hat ein zweistelliges Jahr: alle vier Ziffern schreiben</translation>
    </message>
    <message>
        <source>“%1” can be read as day and month or as month and day: write dates as 2025-03-01</source>
        <translation>„%1“ lässt sich als Tag und Monat oder als Monat und Tag lesen: Daten wie 2025-03-01 schreiben</translation>
    </message>
    <message>
        <source>“%1” is not a day of the calendar: check day and month</source>
        <translation>„%1“ ist kein Tag des Kalenders: Tag und Monat prüfen</translation>
    </message>
    <message>
        <source>“%1” is not an hour of the day: check hour and minute</source>
        <translation>„%1“ ist keine Uhrzeit: Stunde und Minute prüfen</translation>
    </message>
    <message>
        <source>the time and the hour beside it lie more than half a day apart: check “%1”</source>
        <translation>Zeit und Termin liegen mehr als einen halben Tag auseinander: „%1“ prüfen</translation>
    </message>
    <message>
        <source>“%1” in the column %2 has more than one mark: write one decimal mark and no groups</source>
        <translation>„%1“ in der Spalte %2 hat mehr als ein Zeichen: ein Dezimalzeichen und keine Gruppen schreiben</translation>
    </message>
    <message>
        <source>“%1” in the column %2 has too many digits: check it</source>
        <translation>„%1“ in der Spalte %2 hat zu viele Ziffern: prüfen</translation>
    </message>
    <message>
        <source>“%1” in the column %2 is not a Beaufort force: write 0 to 12</source>
        <translation>„%1“ in der Spalte %2 ist keine Beaufort-Stärke: 0 bis 12 schreiben</translation>
    </message>
    <message>
        <source>“%1” says that the value stands for a stretch of time, not for a moment: take what was read at a moment</source>
        <translation>„%1“ sagt, dass der Wert für eine Zeitspanne gilt, nicht für einen Zeitpunkt: nehmen, was zu einem Zeitpunkt abgelesen wurde</translation>
    </message>
    <message>
        <source>the line has too many cells, as a decimal comma makes it in a file with commas between cells: use semicolons or decimal points</source>
        <translation>die Zeile hat zu viele Zellen, wie es ein Dezimalkomma in einer Datei mit Kommas zwischen den Zellen macht: Strichpunkte oder Dezimalpunkte verwenden</translation>
    </message>
    <message>
        <source>the line has more cells than the first line: look for a stray separator</source>
        <translation>die Zeile hat mehr Zellen als die erste: nach einem Trennzeichen zu viel suchen</translation>
    </message>
    <message>
        <source>the line has fewer cells than the first line: complete it</source>
        <translation>die Zeile hat weniger Zellen als die erste: ergänzen</translation>
    </message>
    <message>
        <source>a quotation mark is opened and never closed: close it or take it away</source>
        <translation>ein Anführungszeichen wird geöffnet und nie geschlossen: schließen oder entfernen</translation>
    </message>
    <message>
        <source>text follows a closing quotation mark: look at the quotation marks</source>
        <translation>nach einem schließenden Anführungszeichen folgt Text: die Anführungszeichen ansehen</translation>
    </message>
    <message>
        <source>a quotation mark stands within the text: put the whole cell in quotation marks and double it</source>
        <translation>ein Anführungszeichen steht im Text: die ganze Zelle in Anführungszeichen setzen und es verdoppeln</translation>
    </message>
    <message>
        <source>the line is longer than any reading can be: look for missing line ends</source>
        <translation>die Zeile ist länger, als eine Ablesung sein kann: nach fehlenden Zeilenenden suchen</translation>
    </message>
    <message>
        <source>the line holds a zero byte and is no text: save the file again as CSV</source>
        <translation>die Zeile enthält ein Null-Byte und ist kein Text: die Datei noch einmal als CSV speichern</translation>
    </message>
    <message>
        <source>the line is broken UTF-16: save the file again as CSV in UTF-8</source>
        <translation>die Zeile ist beschädigtes UTF-16: die Datei noch einmal als CSV in UTF-8 speichern</translation>
    </message>
    <message>
        <source>another line of the file holds the same moment: keep one of them</source>
        <translation>eine andere Zeile der Datei hat denselben Zeitpunkt: eine davon behalten</translation>
    </message>
    <message>
        <source>no time is given: add it</source>
        <translation>es ist keine Zeit angegeben: ergänzen</translation>
    </message>
    <message>
        <source>“%1” is not a time that can be read: write it as 2025-03-01T09:00</source>
        <translation>„%1“ ist keine lesbare Zeit: wie 2025-03-01T09:00 schreiben</translation>
    </message>
    <message>
        <source>“%1” came twice that night, when the clocks went back: add the offset from UTC</source>
        <translation>„%1“ kam in jener Nacht zweimal, als die Uhren zurückgestellt wurden: den Abstand zu UTC dazuschreiben</translation>
    </message>
    <message>
        <source>“%1” never was on the clock, it was put forward that night: check the hour</source>
        <translation>„%1“ stand nie auf der Uhr, sie wurde in jener Nacht vorgestellt: die Stunde prüfen</translation>
    </message>
    <message>
        <source>“%1” in the column %2 is not a number that can be read: check it</source>
        <translation>„%1“ in der Spalte %2 ist keine lesbare Zahl: prüfen</translation>
    </message>
    <message>
        <source>“%1” in the column %2 is not a word known there: check it</source>
        <translation>„%1“ in der Spalte %2 ist dort kein bekanntes Wort: prüfen</translation>
    </message>
    <message>
        <source>nothing was read on this line: write a bulb, or the origin missing and why</source>
        <translation>auf dieser Zeile wurde nichts abgelesen: ein Thermometer schreiben oder als Herkunft missing und warum</translation>
    </message>
    <message>
        <source>the line has more or fewer cells than the first line: look for a stray separator</source>
        <translation>die Zeile hat mehr oder weniger Zellen als die erste: nach einem Trennzeichen zu viel suchen</translation>
    </message>
    <message>
        <source>another line of the file holds the same hour: keep one of them</source>
        <translation>eine andere Zeile der Datei hat denselben Termin: eine davon behalten</translation>
    </message>
    <message>
        <source>the book holds a reading at this hour already: keep it, or import with --on-conflict revise</source>
        <translation>das Buch hat zu diesem Termin schon eine Ablesung: behalten oder mit --on-conflict revise einlesen</translation>
    </message>
    <message>
        <source>the line can&apos;t be read as CSV: look at its quotation marks</source>
        <translation>die Zeile ist nicht als CSV lesbar: ihre Anführungszeichen ansehen</translation>
    </message>
    <message>
        <source>left aside: it holds “%1”, for which the register has no place.</source>
        <translation>beiseitegelegt: sie enthält „%1“, wofür das Tagebuch keinen Platz hat.</translation>
    </message>
    <message>
        <source>left aside: its values are “%1” over a time, not read at a moment.</source>
        <translation>beiseitegelegt: ihre Werte sind „%1“ über eine Zeit, nicht zu einem Zeitpunkt abgelesen.</translation>
    </message>
    <message>
        <source>Type the %1 as read.</source>
        <translation>%1 wie abgelesen eintragen.</translation>
    </message>
    <message>
        <source>“%2” is not a number: type the %1 as read, like 7.3.</source>
        <translation>„%2“ ist keine Zahl: %1 wie abgelesen eintragen, etwa 7,3.</translation>
    </message>
    <message>
        <source>“%2” has more than one mark: type the %1 with one decimal mark, like 7.3.</source>
        <translation>„%2“ hat mehr als ein Zeichen: %1 mit einem Dezimalzeichen eintragen, etwa 7,3.</translation>
    </message>
    <message>
        <source>“%2” has too many digits: type the %1 as read, like 7.3.</source>
        <translation>„%2“ hat zu viele Ziffern: %1 wie abgelesen eintragen, etwa 7,3.</translation>
    </message>
    <message>
        <source>A time is needed: write it as 2025-03-01T09:00.</source>
        <translation>Es braucht eine Zeit: wie 2025-03-01T09:00 schreiben.</translation>
    </message>
    <message>
        <source>“%1” is not a time: write it as 2025-03-01T09:00.</source>
        <translation>„%1“ ist keine Zeit: wie 2025-03-01T09:00 schreiben.</translation>
    </message>
    <message>
        <source>“%1” is not a day of the calendar: check day and month.</source>
        <translation>„%1“ ist kein Tag des Kalenders: Tag und Monat prüfen.</translation>
    </message>
    <message>
        <source>“%1” is not an hour of the day: check hour and minute.</source>
        <translation>„%1“ ist keine Uhrzeit: Stunde und Minute prüfen.</translation>
    </message>
    <message>
        <source>A temperature outside −60…60 °C can&apos;t be worked with: read again.</source>
        <translation>Mit einer Temperatur außerhalb −60…60&#xa0;°C lässt sich nicht rechnen: noch einmal ablesen.</translation>
    </message>
    <message>
        <source>A pressure outside 300…1100 hPa can&apos;t be worked with: check it.</source>
        <translation>Mit einem Luftdruck außerhalb 300…1100&#xa0;hPa lässt sich nicht rechnen: prüfen.</translation>
    </message>
    <message>
        <source>This coefficient can&apos;t be: check it, such numbers lie near 0.0007 per kelvin.</source>
        <translation>Dieser Koeffizient ist nicht möglich: prüfen, solche Zahlen liegen bei 0,0007 je Kelvin.</translation>
    </message>
    <message>
        <source>Say whether the wick is water or ice.</source>
        <translation>Angeben, ob am Strumpf Wasser oder Eis ist.</translation>
    </message>
    <message>
        <source>The wet bulb stands above the dry bulb: read both again.</source>
        <translation>Feucht steht über trocken: beide noch einmal ablesen.</translation>
    </message>
    <message>
        <source>The ice bulb stands too far above the dry bulb: read both again.</source>
        <translation>Das vereiste Thermometer steht zu weit über dem trockenen: beide noch einmal ablesen.</translation>
    </message>
    <message>
        <source>Ice can&apos;t be warmer than 0 °C: say water, or read again.</source>
        <translation>Eis kann nicht wärmer als 0&#xa0;°C sein: Wasser angeben oder noch einmal ablesen.</translation>
    </message>
    <message>
        <source>The bulbs stand too far apart: no air is that dry. Read both again.</source>
        <translation>Die Thermometer stehen zu weit auseinander: so trocken ist keine Luft. Beide noch einmal ablesen.</translation>
    </message>
    <message>
        <source>The dew point lies below −60 °C and is not given.</source>
        <translation>Der Taupunkt liegt unter −60&#xa0;°C und wird nicht angegeben.</translation>
    </message>
    <message>
        <source>The dew point lies above 60 °C and is not given.</source>
        <translation>Der Taupunkt liegt über 60&#xa0;°C und wird nicht angegeben.</translation>
    </message>
    <message>
        <source>No wet bulb belongs to this humidity: check the humidity and the dry bulb.</source>
        <translation>Zu dieser Feuchte gehört kein feuchtes Thermometer: Feuchte und trockenes Thermometer prüfen.</translation>
    </message>
</context>
<context>
    <name>ExportText</name>
    <message>
        <source>%1 could not be written: %2. Choose another folder or free some space, then try again.</source>
        <extracomment>%1 a path, %2 the system&apos;s own reason</extracomment>
        <translation>%1 ließ sich nicht schreiben: %2. Einen anderen Ordner wählen oder Platz schaffen, dann noch einmal versuchen.</translation>
    </message>
    <message>
        <source>%1 is a book or another database, and nothing is written over one. Choose another name.</source>
        <extracomment>%1 a path</extracomment>
        <translation>%1 ist ein Buch oder eine andere Datenbank, und über so etwas wird nicht geschrieben. Einen anderen Namen wählen.</translation>
    </message>
    <message>
        <source>Stopped; nothing was written.</source>
        <translation>Angehalten; es wurde nichts geschrieben.</translation>
    </message>
</context>
<context>
    <name>FileText</name>
    <message>
        <source>%1 could not be written: %2. Choose another folder or free some space, then try again.</source>
        <extracomment>%1 a path, %2 the system&apos;s own reason</extracomment>
        <translation>%1 ließ sich nicht schreiben: %2. Einen anderen Ordner wählen oder Platz schaffen, dann noch einmal versuchen.</translation>
    </message>
    <message>
        <source>The folder %1 could not be made. Choose another place and try again.</source>
        <translation>Der Ordner %1 ließ sich nicht anlegen. Einen anderen Ort wählen und noch einmal versuchen.</translation>
    </message>
    <message>
        <source>%1 could not be drawn because of an error in the program. The files before it were written. Please report it.</source>
        <translation>%1 ließ sich wegen eines Fehlers im Programm nicht zeichnen. Die Dateien davor wurden geschrieben. Bitte melden.</translation>
    </message>
</context>
<context>
    <name>FindingText</name>
    <message>
        <source>wet bulb</source>
        <translation>feuchtes Thermometer</translation>
    </message>
    <message>
        <source>dry bulb</source>
        <translation>trockenes Thermometer</translation>
    </message>
    <message>
        <source>Read again.</source>
        <translation>Noch einmal ablesen.</translation>
    </message>
    <message>
        <source>note</source>
        <translation>Hinweis</translation>
    </message>
    <message>
        <source>to confirm</source>
        <translation>zu bestätigen</translation>
    </message>
    <message>
        <source>doubtful</source>
        <translation>zweifelhaft</translation>
    </message>
    <message>
        <source>erroneous</source>
        <translation>falsch</translation>
    </message>
    <message>
        <source>impossible</source>
        <translation>unmöglich</translation>
    </message>
    <message>
        <source>One bulb only</source>
        <translation>Nur ein Thermometer</translation>
    </message>
    <message>
        <source>The wet bulb is missing, so there is no humidity.</source>
        <translation>Das feuchte Thermometer fehlt, daher gibt es keine Feuchte.</translation>
    </message>
    <message>
        <source>The dry bulb is missing, so there is no humidity.</source>
        <translation>Das trockene Thermometer fehlt, daher gibt es keine Feuchte.</translation>
    </message>
    <message>
        <source>Read the other bulb if you still can; the one reading is kept.</source>
        <translation>Das andere Thermometer ablesen, wenn es noch geht; die eine Ablesung bleibt erhalten.</translation>
    </message>
    <message>
        <source>Wet bulb a touch above dry bulb</source>
        <translation>Feucht ein wenig über trocken</translation>
    </message>
    <message>
        <source>The wet bulb stands %1 above the dry bulb. That is within reading error and taken as saturated air.</source>
        <translation>Feucht steht %1 über trocken. Das liegt im Ablesefehler und gilt als gesättigte Luft.</translation>
    </message>
    <message>
        <source>Nothing to do in fog or drizzle. Otherwise look at the wick and read once more.</source>
        <translation>Bei Nebel oder Sprühregen nichts zu tun. Sonst den Strumpf ansehen und noch einmal ablesen.</translation>
    </message>
    <message>
        <source>Wet bulb above dry bulb</source>
        <translation>Feucht über trocken</translation>
    </message>
    <message>
        <source>The wet bulb stands %1 above the dry bulb, corrections included. A wet wick can only cool, so no humidity is worked out.</source>
        <translation>Feucht steht %1 über trocken, Korrektionen eingerechnet. Ein nasser Strumpf kann nur kühlen, daher wird keine Feuchte berechnet.</translation>
    </message>
    <message>
        <source>Read both again. Were the two numbers swapped, or one read ten or five off?</source>
        <translation>Beide noch einmal ablesen. Wurden die Zahlen vertauscht oder eine um zehn oder fünf verlesen?</translation>
    </message>
    <message>
        <source>Further apart than air allows</source>
        <translation>Weiter auseinander, als Luft zulässt</translation>
    </message>
    <message>
        <source>The bulbs stand %1 apart. At this dry bulb even perfectly dry air brings them no further apart than %2.</source>
        <translation>Die Thermometer stehen %1 auseinander. Bei diesem trockenen Thermometer bringt sie auch völlig trockene Luft nicht weiter als %2 auseinander.</translation>
    </message>
    <message>
        <source>The bulbs stand %1 apart. Even perfectly dry air does not bring them that far.</source>
        <translation>Die Thermometer stehen %1 auseinander. Auch völlig trockene Luft bringt sie nicht so weit.</translation>
    </message>
    <message>
        <source>Read both again. One of them may have been read ten or five off.</source>
        <translation>Beide noch einmal ablesen. Eines kann um zehn oder fünf verlesen sein.</translation>
    </message>
    <message>
        <source>Very dry air</source>
        <translation>Sehr trockene Luft</translation>
    </message>
    <message>
        <source>The humidity comes out at %1. Under %2 it is asked about.</source>
        <translation>Die Feuchte kommt auf %1. Unter %2 wird nachgefragt.</translation>
    </message>
    <message>
        <source>Read both bulbs again. If it is so, keep it; where the air is often that dry, this limit can be lowered for the station.</source>
        <translation>Beide noch einmal ablesen. Ist es so, behalten; wo die Luft oft so trocken ist, lässt sich dieser Grenzwert für die Station senken.</translation>
    </message>
    <message>
        <source>Ice bulb above dry bulb</source>
        <translation>Vereistes Thermometer über trocken</translation>
    </message>
    <message>
        <source>The ice bulb stands %1 above the dry bulb, as it may in freezing fog. Taken as saturated air.</source>
        <translation>Das vereiste Thermometer steht %1 über dem trockenen, wie es in gefrierendem Nebel sein kann. Gilt als gesättigte Luft.</translation>
    </message>
    <message>
        <source>Nothing to do in fog. Otherwise read both again.</source>
        <translation>Bei Nebel nichts zu tun. Sonst beide noch einmal ablesen.</translation>
    </message>
    <message>
        <source>Ice bulb too far above dry bulb</source>
        <translation>Vereistes Thermometer zu weit über trocken</translation>
    </message>
    <message>
        <source>The ice bulb stands %1 above the dry bulb. That would be more than 100 %, so no humidity is worked out.</source>
        <translation>Das vereiste Thermometer steht %1 über dem trockenen. Das wären mehr als 100&#xa0;%, daher wird keine Feuchte berechnet.</translation>
    </message>
    <message>
        <source>Read both again. If the wet bulb stays at 0.0, the water is still freezing: wait until it falls.</source>
        <translation>Beide noch einmal ablesen. Bleibt das feuchte Thermometer bei 0,0, gefriert das Wasser noch: warten, bis es fällt.</translation>
    </message>
    <message>
        <source>Ice above zero</source>
        <translation>Eis über null</translation>
    </message>
    <message>
        <source>Ice was given, but the wet bulb stands at %1. Ice can&apos;t be warmer than 0 °C.</source>
        <translation>Eis wurde angegeben, aber das feuchte Thermometer steht bei %1. Eis kann nicht wärmer als 0&#xa0;°C sein.</translation>
    </message>
    <message>
        <source>Look at the wick: if it is wet, say water; if it is ice, read again.</source>
        <translation>Den Strumpf ansehen: ist er nass, Wasser angeben; ist er Eis, noch einmal ablesen.</translation>
    </message>
    <message>
        <source>Pressure out of range</source>
        <translation>Luftdruck außerhalb des Bereichs</translation>
    </message>
    <message>
        <source>A pressure of %1 can&apos;t be worked with: the range is 300…1100 hPa.</source>
        <translation>Mit einem Luftdruck von %1 lässt sich nicht rechnen: der Bereich ist 300…1100&#xa0;hPa.</translation>
    </message>
    <message>
        <source>Check the pressure, or leave it empty: it is then worked out from the elevation.</source>
        <translation>Den Luftdruck prüfen oder leer lassen: er wird dann aus der Höhe berechnet.</translation>
    </message>
    <message>
        <source>Temperature out of range</source>
        <translation>Temperatur außerhalb des Bereichs</translation>
    </message>
    <message>
        <source>%1 can&apos;t be worked with: the range is −60…60 °C.</source>
        <translation>Mit %1 lässt sich nicht rechnen: der Bereich ist −60…60&#xa0;°C.</translation>
    </message>
    <message>
        <source>Read again. Was the decimal mark lost?</source>
        <translation>Noch einmal ablesen. Ging das Komma verloren?</translation>
    </message>
    <message>
        <source>No coefficient</source>
        <translation>Kein Koeffizient</translation>
    </message>
    <message>
        <source>The station is set to work with a psychrometer coefficient of its own, but none is on record, so there is no humidity.</source>
        <translation>Die Station soll mit einem eigenen Psychrometerkoeffizienten rechnen, es ist aber keiner eingetragen; daher gibt es keine Feuchte.</translation>
    </message>
    <message>
        <source>Enter that coefficient, or say how the air reaches the bulbs: in a screen, whirled, by a fan.</source>
        <translation>Diesen Koeffizienten eintragen oder angeben, wie die Luft an die Thermometer kommt: in einer Hütte, geschleudert, belüftet.</translation>
    </message>
    <message>
        <source>Dew point not given</source>
        <translation>Taupunkt nicht angegeben</translation>
    </message>
    <message>
        <source>The dew point lies below −60 °C, where it is not worked out.</source>
        <translation>Der Taupunkt liegt unter −60&#xa0;°C, dort wird er nicht berechnet.</translation>
    </message>
    <message>
        <source>Read the wet bulb again. The humidity stands.</source>
        <translation>Das feuchte Thermometer noch einmal ablesen. Die Feuchte gilt.</translation>
    </message>
    <message>
        <source>Below the tested range</source>
        <translation>Unter dem geprüften Bereich</translation>
    </message>
    <message>
        <source>For a wick of water colder than −20 °C there are hardly any measurements to go by; the humidity may be up to 2 % off.</source>
        <translation>Für einen Strumpf mit Wasser unter −20&#xa0;°C gibt es kaum Messungen; die Feuchte kann bis 2&#xa0;% daneben liegen.</translation>
    </message>
    <message>
        <source>Nothing to do. An ice bulb is the surer reading in such cold.</source>
        <translation>Nichts zu tun. Bei solcher Kälte ist das vereiste Thermometer die sicherere Ablesung.</translation>
    </message>
    <message>
        <source>Pressure assumed</source>
        <translation>Luftdruck angenommen</translation>
    </message>
    <message>
        <source>No pressure and no elevation was given: 1013.25 hPa was used.</source>
        <translation>Weder Luftdruck noch Höhe angegeben: es wurde mit 1013,25&#xa0;hPa gerechnet.</translation>
    </message>
    <message>
        <source>Give the elevation with --elevation or the pressure with --pressure.</source>
        <translation>Die Höhe mit --elevation oder den Luftdruck mit --pressure angeben.</translation>
    </message>
    <message>
        <source>Below the scale</source>
        <translation>Unter der Skala</translation>
    </message>
    <message>
        <source>The column of the %1 has gone into the bulb: there is no number.</source>
        <translation>%1: der Faden ist in die Kugel gesunken, es gibt keine Zahl.</translation>
    </message>
    <message>
        <source>Nothing to do: it is kept as below scale.</source>
        <translation>Nichts zu tun: es bleibt als „unter der Skala“ erhalten.</translation>
    </message>
    <message>
        <source>Off the thermometer&apos;s scale</source>
        <translation>Außerhalb der Thermometerskala</translation>
    </message>
    <message>
        <source>The %1 was read as %2, above the last mark of the scale at %3.</source>
        <translation>%1 als %2 abgelesen, über dem letzten Strich der Skala bei %3.</translation>
    </message>
    <message>
        <source>The %1 was read as %2, below the last mark of the scale at %3.</source>
        <translation>%1 als %2 abgelesen, unter dem letzten Strich der Skala bei %3.</translation>
    </message>
    <message>
        <source>Read again. On an old page, look whether a figure was doubled or the decimal mark lost.</source>
        <translation>Noch einmal ablesen. Bei einer alten Seite nachsehen, ob eine Ziffer doppelt steht oder das Komma fehlt.</translation>
    </message>
    <message>
        <source>Beyond what this season brings</source>
        <translation>Mehr, als diese Jahreszeit bringt</translation>
    </message>
    <message>
        <source>The %1 was read as %2; in this latitude and season air rarely passes %3.</source>
        <translation>%1 als %2 abgelesen; in dieser Breite und Jahreszeit geht die Luft selten über %3 hinaus.</translation>
    </message>
    <message>
        <source>Read again, and look at the tens of the scale.</source>
        <translation>Noch einmal ablesen und auf die Zehner der Skala achten.</translation>
    </message>
    <message>
        <source>Dew point beyond what this season brings</source>
        <translation>Taupunkt, wie ihn diese Jahreszeit kaum bringt</translation>
    </message>
    <message>
        <source>The dew point comes out at %1; in this latitude and season it rarely passes %2.</source>
        <translation>Der Taupunkt kommt auf %1; in dieser Breite und Jahreszeit geht er selten über %2 hinaus.</translation>
    </message>
    <message>
        <source>Read both bulbs again.</source>
        <translation>Beide Thermometer noch einmal ablesen.</translation>
    </message>
    <message>
        <source>Unlikely pressure</source>
        <translation>Unwahrscheinlicher Luftdruck</translation>
    </message>
    <message>
        <source>The pressure was read as %1; at this elevation about %2 is usual.</source>
        <translation>Der Luftdruck wurde als %1 abgelesen; in dieser Höhe sind etwa %2 üblich.</translation>
    </message>
    <message>
        <source>The pressure was read as %1, which no station has.</source>
        <translation>Der Luftdruck wurde als %1 abgelesen, das hat keine Station.</translation>
    </message>
    <message>
        <source>Give the pressure at the station, not the one reduced to sea level, or leave it empty.</source>
        <translation>Den Luftdruck an der Station angeben, nicht den auf Meereshöhe reduzierten, oder leer lassen.</translation>
    </message>
    <message>
        <source>Unusual for this month and hour</source>
        <translation>Ungewöhnlich für diesen Monat und Termin</translation>
    </message>
    <message>
        <source>The dew point of %1 lies far from what this month and hour brought here in %4 years. Between %2 and %3 nothing would be asked.</source>
        <translation>Der Taupunkt von %1 liegt weit von dem, was dieser Monat und Termin hier in %4 Jahren brachte. Zwischen %2 und %3 würde nicht gefragt.</translation>
    </message>
    <message>
        <source>The dry bulb of %1 lies far from what this month and hour brought here in %4 years. Between %2 and %3 nothing would be asked.</source>
        <translation>Die Temperatur von %1 liegt weit von dem, was dieser Monat und Termin hier in %4 Jahren brachte. Zwischen %2 und %3 würde nicht gefragt.</translation>
    </message>
    <message>
        <source>Read again. If it is so, keep it: records happen.</source>
        <translation>Noch einmal ablesen. Ist es so, behalten: Rekorde kommen vor.</translation>
    </message>
    <message>
        <source>Fog, but dry air</source>
        <translation>Nebel, aber trockene Luft</translation>
    </message>
    <message>
        <source>Fog was noted, but the humidity comes out at %1; in fog it is hardly ever under %2.</source>
        <translation>Nebel wurde notiert, aber die Feuchte kommt auf %1; bei Nebel liegt sie kaum je unter %2.</translation>
    </message>
    <message>
        <source>Look whether the wick is clean and wet, and whether it was fog or haze. Then read again.</source>
        <translation>Nachsehen, ob der Strumpf sauber und nass ist und ob es Nebel oder Dunst war. Dann noch einmal ablesen.</translation>
    </message>
    <message>
        <source>Rain through dry air</source>
        <translation>Regen durch trockene Luft</translation>
    </message>
    <message>
        <source>Rain was noted at a humidity of %1. That happens, but seldom.</source>
        <translation>Regen wurde bei einer Feuchte von %1 notiert. Das kommt vor, aber selten.</translation>
    </message>
    <message>
        <source>Nothing to do if the wick was clean and wet.</source>
        <translation>Nichts zu tun, wenn der Strumpf sauber und nass war.</translation>
    </message>
    <message>
        <source>Saturated, but no fog or rain noted</source>
        <translation>Gesättigt, aber kein Nebel oder Regen notiert</translation>
    </message>
    <message>
        <source>The humidity comes out at %1 without fog, rain or dew in the weather column.</source>
        <translation>Die Feuchte kommt auf %1, ohne Nebel, Regen oder Tau in der Wetterspalte.</translation>
    </message>
    <message>
        <source>Look at the wick: is it wet? If not, wet it, wait and read again. If there was dew or fog, note it.</source>
        <translation>Den Strumpf ansehen: ist er nass? Wenn nicht, benetzen, warten und noch einmal ablesen. Gab es Tau oder Nebel, das notieren.</translation>
    </message>
    <message>
        <source>Look at the three numbers again: one of them was misread.</source>
        <translation>Die drei Zahlen noch einmal ansehen: eine wurde verlesen.</translation>
    </message>
    <message>
        <source>Maximum below minimum</source>
        <translation>Maximum unter dem Minimum</translation>
    </message>
    <message>
        <source>The maximum of %1 stands below the minimum of %2.</source>
        <translation>Das Maximum von %1 liegt unter dem Minimum von %2.</translation>
    </message>
    <message>
        <source>Outside maximum and minimum</source>
        <translation>Außerhalb von Maximum und Minimum</translation>
    </message>
    <message>
        <source>The dry bulb of %1 stands above the maximum of %2.</source>
        <translation>Trocken mit %1 steht über dem Maximum von %2.</translation>
    </message>
    <message>
        <source>The dry bulb of %1 stands below the minimum of %2.</source>
        <translation>Trocken mit %1 steht unter dem Minimum von %2.</translation>
    </message>
    <message>
        <source>Much colder than the last reading</source>
        <translation>Viel kälter als bei der letzten Ablesung</translation>
    </message>
    <message>
        <source>Much warmer than the last reading</source>
        <translation>Viel wärmer als bei der letzten Ablesung</translation>
    </message>
    <message>
        <source>The dry bulb went from %1 to %2 in %3 h.</source>
        <translation>Trocken ging in %3&#xa0;h von %1 auf %2.</translation>
    </message>
    <message>
        <source>Read again. If the weather changed, keep it and say so in a note.</source>
        <translation>Noch einmal ablesen. Hat sich das Wetter geändert, behalten und in einer Notiz sagen.</translation>
    </message>
    <message>
        <source>Much drier than the last reading</source>
        <translation>Viel trockener als bei der letzten Ablesung</translation>
    </message>
    <message>
        <source>Much moister than the last reading</source>
        <translation>Viel feuchter als bei der letzten Ablesung</translation>
    </message>
    <message>
        <source>The dew point went from %1 to %2 in %3 h.</source>
        <translation>Der Taupunkt ging in %3&#xa0;h von %1 auf %2.</translation>
    </message>
    <message>
        <source>Read the wet bulb again. If the air changed, keep it and say so in a note.</source>
        <translation>Das feuchte Thermometer noch einmal ablesen. Hat sich die Luft geändert, behalten und in einer Notiz sagen.</translation>
    </message>
    <message>
        <source>The same pair again</source>
        <translation>Dasselbe Paar noch einmal</translation>
    </message>
    <message>
        <source>The very same two numbers stand %1 times running.</source>
        <translation>Genau dieselben zwei Zahlen stehen %1-mal hintereinander.</translation>
    </message>
    <message>
        <source>Read both once more. If the air stands so still, keep it; with fog in the weather column nothing is asked.</source>
        <translation>Beide noch einmal ablesen. Steht die Luft so still, behalten; mit Nebel in der Wetterspalte wird nicht gefragt.</translation>
    </message>
    <message>
        <source>Two readings for one hour</source>
        <translation>Zwei Ablesungen zu einem Termin</translation>
    </message>
    <message>
        <source>This hour stands twice with the same numbers.</source>
        <translation>Dieser Termin steht zweimal mit denselben Zahlen da.</translation>
    </message>
    <message>
        <source>This hour stands twice with different numbers.</source>
        <translation>Dieser Termin steht zweimal mit verschiedenen Zahlen da.</translation>
    </message>
    <message>
        <source>Choose one and withdraw the other; both stay in the history.</source>
        <translation>Eine wählen und die andere zurückziehen; beide bleiben in der Geschichte.</translation>
    </message>
    <message>
        <source>A day like another</source>
        <translation>Ein Tag wie ein anderer</translation>
    </message>
    <message>
        <source>All readings of this day are those of %1.</source>
        <translation>Alle Ablesungen dieses Tages sind die vom %1.</translation>
    </message>
    <message>
        <source>Look at the page: was one day&apos;s line written twice? If both days are right, judge them sound.</source>
        <translation>Die Seite ansehen: wurde die Zeile eines Tages zweimal geschrieben? Stimmen beide Tage, als in Ordnung beurteilen.</translation>
    </message>
    <message>
        <source>Not yet</source>
        <translation>Noch nicht</translation>
    </message>
    <message>
        <source>The time of this reading has not come yet.</source>
        <translation>Die Zeit dieser Ablesung ist noch nicht gekommen.</translation>
    </message>
    <message>
        <source>Check date and hour, and the clock of this computer.</source>
        <translation>Datum, Stunde und die Uhr dieses Rechners prüfen.</translation>
    </message>
    <message>
        <source>Early</source>
        <translation>Früh</translation>
    </message>
    <message>
        <source>Read %1 min before the hour. The true time is kept.</source>
        <translation>%1 Minuten vor dem Termin abgelesen. Die wahre Zeit bleibt erhalten.</translation>
    </message>
    <message>
        <source>Nothing to do.</source>
        <translation>Nichts zu tun.</translation>
    </message>
    <message>
        <source>Late</source>
        <translation>Spät</translation>
    </message>
    <message>
        <source>Read %1 min after the hour. The true time is kept.</source>
        <translation>%1 Minuten nach dem Termin abgelesen. Die wahre Zeit bleibt erhalten.</translation>
    </message>
    <message>
        <source>A favoured tenth</source>
        <translation>Ein bevorzugtes Zehntel</translation>
    </message>
    <message>
        <source>Of %1 readings of the %2, %3 end in %4; about one in ten is to be expected.</source>
        <translation>%2: von %1 Ablesungen enden %3 auf %4; zu erwarten ist etwa jede zehnte.</translation>
    </message>
    <message>
        <source>Read the tenths before the whole degrees, with the eye level with the column.</source>
        <translation>Die Zehntel vor den ganzen Graden ablesen, das Auge in Höhe des Fadenendes.</translation>
    </message>
    <message>
        <source>A slip in reading or writing would explain these numbers better than the weather does.</source>
        <translation>Ein Versehen beim Ablesen oder Schreiben würde diese Zahlen besser erklären als das Wetter.</translation>
    </message>
    <message>
        <source>From the readings round it one would expect a dry bulb near %1 and a dew point near %2.</source>
        <translation>Nach den Ablesungen ringsum wäre trocken etwa %1 und ein Taupunkt etwa %2 zu erwarten.</translation>
    </message>
    <message>
        <source>Unlike the readings round it</source>
        <translation>Anders als die Ablesungen ringsum</translation>
    </message>
    <message>
        <source>Read again. On an old page, compare with what is written there.</source>
        <translation>Noch einmal ablesen. Bei einer alten Seite mit dem vergleichen, was dort steht.</translation>
    </message>
    <message>
        <source>Wet the wick, wait until the wet bulb has fallen and settled, and read again.</source>
        <translation>Den Strumpf benetzen, warten, bis das feuchte Thermometer gefallen und eingespielt ist, und noch einmal ablesen.</translation>
    </message>
    <message>
        <source>The wick may be drying</source>
        <translation>Der Strumpf trocknet vielleicht aus</translation>
    </message>
    <message>
        <source>The wet bulb rose by %1 from whirl to whirl. It should only fall or stand.</source>
        <translation>Das feuchte Thermometer stieg von Durchgang zu Durchgang um %1. Es sollte nur fallen oder stehen.</translation>
    </message>
    <message>
        <source>The wick may be dry</source>
        <translation>Der Strumpf ist vielleicht trocken</translation>
    </message>
    <message>
        <source>The bulbs stand only %1 apart. The air would hold far more moisture than in the last readings (%2 of vapour against %3), and no fog, rain or dew was noted to bring it.</source>
        <translation>Die Thermometer stehen nur %1 auseinander. Die Luft enthielte weit mehr Dampf als bei den letzten Ablesungen (%2 gegen %3), und es wurde weder Nebel noch Regen noch Tau notiert, der ihn brächte.</translation>
    </message>
    <message>
        <source>The wet bulb stands at %1, and it is not said whether the wick is water or ice. The answer changes the humidity, so none is worked out.</source>
        <translation>Das feuchte Thermometer steht bei %1, und es ist nicht gesagt, ob am Strumpf Wasser oder Eis ist. Davon hängt die Feuchte ab, daher wird keine berechnet.</translation>
    </message>
    <message>
        <source>Water would give %1, ice %2.</source>
        <translation>Wasser gäbe %1, Eis %2.</translation>
    </message>
    <message>
        <source>Water or ice?</source>
        <translation>Wasser oder Eis?</translation>
    </message>
    <message>
        <source>Touch the wick with a splinter of wood: if it is soft, say water; if it is hard, say ice.</source>
        <translation>Den Strumpf mit einem Holzspan berühren: ist er weich, Wasser angeben, ist er hart, Eis.</translation>
    </message>
    <message>
        <source>The wick may be thawing</source>
        <translation>Der Strumpf taut vielleicht</translation>
    </message>
    <message>
        <source>The wet bulb stands at %1 while the air is at %2: melting ice holds it there, and the humidity is not yet true.</source>
        <translation>Das feuchte Thermometer steht bei %1, die Luft bei %2: schmelzendes Eis hält es dort, und die Feuchte stimmt noch nicht.</translation>
    </message>
    <message>
        <source>Melt the ice with tepid water and wait until the wet bulb rises, then read again.</source>
        <translation>Das Eis mit lauem Wasser schmelzen und warten, bis das feuchte Thermometer steigt, dann noch einmal ablesen.</translation>
    </message>
    <message>
        <source>The wick may be freezing</source>
        <translation>Der Strumpf gefriert vielleicht</translation>
    </message>
    <message>
        <source>The wet bulb stands at %1 with the air at %2: while the water freezes it holds there, and the humidity comes out too high.</source>
        <translation>Das feuchte Thermometer steht bei %1, die Luft bei %2: solange das Wasser gefriert, bleibt es dort, und die Feuchte kommt zu hoch heraus.</translation>
    </message>
    <message>
        <source>Wait until the wet bulb falls and settles, then read again and say ice.</source>
        <translation>Warten, bis das feuchte Thermometer fällt und einspielt, dann noch einmal ablesen und Eis angeben.</translation>
    </message>
    <message>
        <source>Is the wick ice?</source>
        <translation>Ist am Strumpf Eis?</translation>
    </message>
    <message>
        <source>Water was given at a wet bulb of %1. As ice the humidity would be %2 rather than %3.</source>
        <translation>Wasser wurde bei einem feuchten Thermometer von %1 angegeben. Mit Eis wäre die Feuchte %2 statt %3.</translation>
    </message>
    <message>
        <source>Touch the wick with a piece of ice or a splinter of wood: if it is hard, say ice. If it is still wet, keep it.</source>
        <translation>Den Strumpf mit einem Stück Eis oder einem Holzspan berühren: ist er hart, Eis angeben. Ist er noch nass, behalten.</translation>
    </message>
</context>
<context>
    <name>HistoryText</name>
    <message>
        <source>wetted</source>
        <translation>benetzt</translation>
    </message>
    <message>
        <source>changed</source>
        <translation>gewechselt</translation>
    </message>
    <message>
        <source>dry</source>
        <translation>trocken</translation>
    </message>
    <message>
        <source>wet</source>
        <translation>feucht</translation>
    </message>
    <message>
        <source>wick</source>
        <translation>Strumpf</translation>
    </message>
    <message>
        <source>pressure</source>
        <translation>Luftdruck</translation>
    </message>
    <message>
        <source>weather</source>
        <translation>Wetter</translation>
    </message>
    <message>
        <source>wind</source>
        <translation>Wind</translation>
    </message>
    <message>
        <source>max</source>
        <translation>Max</translation>
    </message>
    <message>
        <source>min</source>
        <translation>Min</translation>
    </message>
    <message>
        <source>whirls, wet / dry</source>
        <translation>Durchgänge, feucht / trocken</translation>
    </message>
    <message>
        <source>note</source>
        <translation>Hinweis</translation>
    </message>
    <message>
        <source>observer</source>
        <translation>Beobachter</translation>
    </message>
    <message>
        <source>wick care</source>
        <translation>Strumpfpflege</translation>
    </message>
    <message>
        <source>read at</source>
        <translation>abgelesen um</translation>
    </message>
    <message>
        <source>hour</source>
        <translation>Termin</translation>
    </message>
    <message>
        <source>reason</source>
        <translation>Grund</translation>
    </message>
    <message>
        <source>origin</source>
        <translation>Herkunft</translation>
    </message>
    <message>
        <source>judged</source>
        <translation>beurteilt</translation>
    </message>
    <message>
        <source>paper</source>
        <translation>Papier</translation>
    </message>
    <message>
        <source>missing: %1</source>
        <translation>fehlend: %1</translation>
    </message>
    <message>
        <source>withdrawn</source>
        <translation>zurückgezogen</translation>
    </message>
    <message>
        <source>no longer withdrawn</source>
        <translation>nicht mehr zurückgezogen</translation>
    </message>
    <message>
        <source>read back against the paper</source>
        <translation>gegen das Papier gelesen</translation>
    </message>
    <message>
        <source>no longer read back</source>
        <translation>nicht mehr gegengelesen</translation>
    </message>
    <message>
        <source>empty</source>
        <translation>leer</translation>
    </message>
    <message>
        <source>%1 %2, was %3</source>
        <extracomment>%1 what, %2 new value, %3 old value</extracomment>
        <translation>%1 %2, war %3</translation>
    </message>
</context>
<context>
    <name>InstrumentText</name>
    <message>
        <source>%1 °C</source>
        <translation>%1&#xa0;°C</translation>
    </message>
    <message>
        <source>%1: no trend to be seen (%2).</source>
        <translation>%1: kein Gang zu erkennen (%2).</translation>
    </message>
    <message>
        <source>%1: %2, which is more than chance.</source>
        <translation>%1: %2, das ist mehr als Zufall.</translation>
    </message>
    <message>
        <source>%1 to %2 %3, read to %4</source>
        <translation>%1 bis %2&#xa0;%3, abgelesen auf %4</translation>
    </message>
    <message>
        <source>at %1 add %2</source>
        <translation>bei %1 dazu %2</translation>
    </message>
    <message>
        <source>%1 × 10⁻⁴ per degree</source>
        <translation>%1 × 10⁻⁴ je Grad</translation>
    </message>
    <message>
        <source> ± %1 %</source>
        <translation> ± %1&#xa0;%</translation>
    </message>
    <message>
        <source>, ice %1</source>
        <translation>, Eis %1</translation>
    </message>
    <message>
        <source>a reference to compare with</source>
        <translation>eine Referenz zum Vergleich</translation>
    </message>
    <message>
        <source>what will follow the station&apos;s</source>
        <translation>was das Gerät der Station ablösen wird</translation>
    </message>
    <message>
        <source>the register has no reading within five minutes</source>
        <translation>das Tagebuch hat keine Ablesung innerhalb von fünf Minuten</translation>
    </message>
    <message>
        <source>the station&apos;s own reading gives no humidity</source>
        <translation>die eigene Ablesung der Station gibt keine Feuchte</translation>
    </message>
    <message>
        <source>the other instrument&apos;s humidity is missing</source>
        <translation>die Feuchte des anderen Geräts fehlt</translation>
    </message>
    <message>
        <source>Nothing has been read yet.</source>
        <translation>Noch wurde nichts abgelesen.</translation>
    </message>
    <message>
        <source>The two differ by more than %1 °C.</source>
        <translation>Die beiden weichen um mehr als %1&#xa0;°C voneinander ab.</translation>
    </message>
    <message>
        <source>They are a pair: no difference above %1 °C.</source>
        <translation>Sie sind ein Paar: kein Unterschied über %1&#xa0;°C.</translation>
    </message>
    <message>
        <source>%1 at the ice point: %2 off ± %3.</source>
        <translation>%1 am Eispunkt: %2 daneben, ± %3.</translation>
    </message>
    <message>
        <source>Dry</source>
        <translation>Trocken</translation>
    </message>
    <message>
        <source>Wet</source>
        <translation>Feucht</translation>
    </message>
    <message>
        <source>%1: dry is %2 against wet ± %3.</source>
        <translation>%1: trocken steht %2 gegen feucht, ± %3.</translation>
    </message>
    <message>
        <source>In the bath, as read</source>
        <translation>Im Bad, wie abgelesen</translation>
    </message>
    <message>
        <source>In the bath, both corrected by the ice point</source>
        <translation>Im Bad, beide nach dem Eispunkt korrigiert</translation>
    </message>
    <message>
        <source>A difference does not say which of them errs; the ice point does.</source>
        <translation>Ein Unterschied sagt nicht, welches falsch geht; das sagt der Eispunkt.</translation>
    </message>
    <message>
        <source>The sensor agrees with every solution within ± 2 %.</source>
        <translation>Der Fühler stimmt bei jeder Lösung auf ± 2&#xa0;%.</translation>
    </message>
    <message>
        <source>%1 of %2 solutions are read more than 2 % off.</source>
        <translation>%1 von %2 Lösungen werden mehr als 2&#xa0;% falsch angezeigt.</translation>
    </message>
    <message>
        <source>%1: published %2 %, read %3 %, %4</source>
        <translation>%1: veröffentlicht %2&#xa0;%, abgelesen %3&#xa0;%, %4</translation>
    </message>
    <message>
        <source>The published values are of 25 °C; at this temperature they do not hold.</source>
        <translation>Die veröffentlichten Werte gelten für 25&#xa0;°C; bei dieser Temperatur gelten sie nicht.</translation>
    </message>
    <message>
        <source>One solution says nothing of the rest of the range.</source>
        <translation>Eine Lösung sagt nichts über den übrigen Bereich.</translation>
    </message>
    <message>
        <source>Fewer than two readings stand beside one of the station&apos;s: nothing can be said yet.</source>
        <translation>Weniger als zwei Ablesungen stehen neben einer der Station: noch lässt sich nichts sagen.</translation>
    </message>
    <message>
        <source>The station reads %1 % RH against the reference (95&#xa0;%), over %2 readings; one difference scatters by %3.</source>
        <translation>Die Station liest %1&#xa0;% rF gegen die Referenz (95&#xa0;%), aus %2 Ablesungen; ein einzelner Unterschied streut um %3.</translation>
    </message>
    <message>
        <source>%1 to %2 %: %3, n %4</source>
        <translation>%1 bis %2&#xa0;%: %3, n %4</translation>
    </message>
    <message>
        <source>, scatter %1</source>
        <translation>, Streuung %1</translation>
    </message>
    <message>
        <source>% RH for each degree of depression</source>
        <translation>% rF je Grad Differenz</translation>
    </message>
    <message>
        <source>% RH for each step of wind</source>
        <translation>% rF je Windstärke</translation>
    </message>
    <message>
        <source>%1 readings gave no humidity and take no part.</source>
        <translation>%1 Ablesungen gaben keine Feuchte und nehmen nicht teil.</translation>
    </message>
    <message>
        <source>%1 pairs with a depression of 3 °C or more, and 30 are needed</source>
        <translation>%1 Paare mit einer Differenz von 3&#xa0;°C oder mehr, nötig sind 30</translation>
    </message>
    <message>
        <source>%1 of %2 pairs have a depression under 3 °C, where the coefficient hardly shows</source>
        <translation>%1 von %2 Paaren haben eine Differenz unter 3&#xa0;°C, wo sich der Koeffizient kaum zeigt</translation>
    </message>
    <message>
        <source>the depressions lie between %1 and %2 °C, and they must span 3 °C</source>
        <translation>die Differenzen liegen zwischen %1 und %2&#xa0;°C und müssen 3&#xa0;°C überspannen</translation>
    </message>
    <message>
        <source>no psychrometer has such a coefficient: look at units, wick and times</source>
        <translation>kein Psychrometer hat einen solchen Koeffizienten: Einheiten, Strumpf und Zeiten prüfen</translation>
    </message>
    <message>
        <source>Water</source>
        <translation>Wasser</translation>
    </message>
    <message>
        <source>Ice</source>
        <translation>Eis</translation>
    </message>
    <message>
        <source>%1: coefficient %2 × 10⁻⁴ per degree, standard error %3, 95 % from %4 to %5, %6 pairs, depressions %7 to %8 °C.</source>
        <translation>%1: Koeffizient %2 × 10⁻⁴ je Grad, Standardfehler %3, 95&#xa0;% von %4 bis %5, %6 Paare, Differenzen %7 bis %8&#xa0;°C.</translation>
    </message>
    <message>
        <source>The evidence is enough to use it, with ± %1 % (standard).</source>
        <translation>Die Belege reichen, ihn zu verwenden, mit ± %1&#xa0;% (Standard).</translation>
    </message>
    <message>
        <source>%1: not enough to use it: %2.</source>
        <translation>%1: nicht genug, um ihn zu verwenden: %2.</translation>
    </message>
    <message>
        <source>What is left over, hPa for each degree of depression</source>
        <translation>Was übrig bleibt, hPa je Grad Differenz</translation>
    </message>
    <message>
        <source>What is left over, hPa for each step of wind</source>
        <translation>Was übrig bleibt, hPa je Windstärke</translation>
    </message>
    <message>
        <source>%1 common readings: with fewer than 30 nothing is decided. Go on side by side.</source>
        <translation>%1 gemeinsame Ablesungen: unter 30 ist nichts entschieden. Nebeneinander weiterführen.</translation>
    </message>
    <message>
        <source>The two agree within 0.2 °C and 3 % RH: the records may be joined as they are.</source>
        <translation>Die beiden stimmen auf 0,2&#xa0;°C und 3&#xa0;% rF überein: die Reihen dürfen so verbunden werden.</translation>
    </message>
    <message>
        <source>The two differ: the record breaks here, and averages must not be pooled across it.</source>
        <translation>Die beiden weichen ab: die Reihe bricht hier, und Mittel dürfen nicht darüber hinweg gebildet werden.</translation>
    </message>
    <message>
        <source>The readings do not decide it yet. Go on side by side.</source>
        <translation>Die Ablesungen entscheiden es noch nicht. Nebeneinander weiterführen.</translation>
    </message>
    <message>
        <source>%1, new against old: %2 %3 (95&#xa0;%)</source>
        <translation>%1, neu gegen alt: %2&#xa0;%3 (95&#xa0;%)</translation>
    </message>
    <message>
        <source>Dry bulb</source>
        <translation>Trocken</translation>
    </message>
    <message>
        <source>Wet bulb</source>
        <translation>Feucht</translation>
    </message>
    <message>
        <source>Relative humidity</source>
        <translation>Relative Feuchte</translation>
    </message>
    <message>
        <source>Dew point</source>
        <translation>Taupunkt</translation>
    </message>
    <message>
        <source>%1 common readings in %2 of the 12 months.</source>
        <translation>%1 gemeinsame Ablesungen in %2 der 12 Monate.</translation>
    </message>
    <message>
        <source>A season that was not seen may differ: a whole year is better.</source>
        <translation>Eine nicht gesehene Jahreszeit kann abweichen: besser ein ganzes Jahr.</translation>
    </message>
</context>
<context>
    <name>InstrumentsPage</name>
    <message>
        <source>wetted</source>
        <translation>benetzt</translation>
    </message>
</context>
<context>
    <name>LimitChangeTextContext</name>
    <message>
        <source>The rules with limits are %1.</source>
        <translation>Regeln mit Grenzwerten sind %1.</translation>
    </message>
    <message>
        <source>That rule has %1.</source>
        <translation>Diese Regel hat %1.</translation>
    </message>
    <message>
        <source>1 reading</source>
        <translation>1 Ablesung</translation>
    </message>
    <message numerus="yes">
        <source>%n readings</source>
        <translation>
            <numerusform>%n Ablesung</numerusform>
            <numerusform>%n Ablesungen</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>There is no limit %1. %2</source>
        <translation>Einen Grenzwert %1 gibt es nicht. %2</translation>
    </message>
    <message>
        <source>%1 stays at %2: the humidity itself is worked out with it.</source>
        <translation>%1 bleibt bei %2: die Feuchte selbst wird damit berechnet.</translation>
    </message>
    <message>
        <source>%1 counts %2: give a whole number from %3 instead of %4.</source>
        <translation>%1 zählt %2: eine ganze Zahl ab %3 statt %4 angeben.</translation>
    </message>
    <message>
        <source>%1 can&apos;t be %2, above %3 at %4: give %4 or less, or change both.</source>
        <translation>%1 kann nicht %2 sein, über %3 mit %4: %4 oder weniger angeben oder beide ändern.</translation>
    </message>
    <message>
        <source>%1 can&apos;t be %2, below %3 at %4: give %4 or more, or change both.</source>
        <translation>%1 kann nicht %2 sein, unter %3 mit %4: %4 oder mehr angeben oder beide ändern.</translation>
    </message>
    <message>
        <source>%1 can&apos;t be %2: it may be %3.</source>
        <translation>%1 kann nicht %2 sein: möglich ist %3.</translation>
    </message>
    <message>
        <source>that</source>
        <translation>das</translation>
    </message>
    <message>
        <source>There are no readings yet that this could change.</source>
        <translation>Es gibt noch keine Ablesungen, die sich dadurch ändern könnten.</translation>
    </message>
    <message>
        <source>Of %1 in the book none would be judged otherwise.</source>
        <translation>Von %1 im Buch würde keine anders beurteilt.</translation>
    </message>
    <message>
        <source>%1 that are quiet now would be asked about</source>
        <translation>%1, die jetzt still sind, würden nachgefragt</translation>
    </message>
    <message>
        <source>%1 would be asked about no longer</source>
        <translation>%1 würden nicht mehr nachgefragt</translation>
    </message>
    <message>
        <source>%1 more would be left out of means until judged</source>
        <translation>%1 mehr blieben bis zum Urteil aus den Mitteln</translation>
    </message>
    <message>
        <source>%1 would count in means again</source>
        <translation>%1 zählten wieder in den Mitteln</translation>
    </message>
    <message>
        <source>Of %1 in the book %2 would be judged otherwise</source>
        <translation>Von %1 im Buch würden %2 anders beurteilt</translation>
    </message>
</context>
<context>
    <name>LimitText</name>
    <message>
        <source>Air too hot or too cold for the season</source>
        <translation>Luft zu heiß oder zu kalt für die Jahreszeit</translation>
    </message>
    <message>
        <source>Marks a bulb beyond what air does at this latitude and in this half of the year. The first pair is doubtful, the outer pair wrong.</source>
        <translation>Merkt eine Temperatur an, wie sie die Luft in dieser Breite und Jahreshälfte nicht erreicht. Das innere Paar ist zweifelhaft, das äußere falsch.</translation>
    </message>
    <message>
        <source>Dew point too high or too low for the season</source>
        <translation>Taupunkt zu hoch oder zu tief für die Jahreszeit</translation>
    </message>
    <message>
        <source>Marks a dew point that air hardly ever has. Used in summer poleward of the latitude above and in winter towards the equator; in the other half-years the temperature limits serve.</source>
        <translation>Merkt einen Taupunkt an, den die Luft kaum je hat. Gilt im Sommer polwärts der Breite oben und im Winter zum Äquator hin; in den anderen Jahreshälften gelten die Grenzen der Temperatur.</translation>
    </message>
    <message>
        <source>Pressure that can&apos;t be</source>
        <translation>Unmöglicher Luftdruck</translation>
    </message>
    <message>
        <source>Marks a pressure that no station has, or one far from what this elevation makes usual: often the sea-level value was written.</source>
        <translation>Merkt einen Luftdruck an, den keine Station hat oder der weit von dem liegt, was diese Höhe üblich macht: oft wurde der auf Meereshöhe geschrieben.</translation>
    </message>
    <message>
        <source>Wet bulb above dry bulb</source>
        <translation>Feucht über trocken</translation>
    </message>
    <message>
        <source>A wet wick can only cool. A little above counts as reading error and is taken as saturated air; more is doubtful.</source>
        <translation>Ein nasser Strumpf kann nur kühlen. Ein wenig darüber gilt als Ablesefehler und als gesättigte Luft; mehr ist zweifelhaft.</translation>
    </message>
    <message>
        <source>Very dry air</source>
        <translation>Sehr trockene Luft</translation>
    </message>
    <message>
        <source>Asks you to read again when the air seems drier than it usually gets. Lower it where the air really is that dry.</source>
        <translation>Bittet, noch einmal abzulesen, wenn die Luft trockener scheint als üblich. Senken, wo die Luft wirklich so trocken ist.</translation>
    </message>
    <message>
        <source>Wick run dry</source>
        <translation>Strumpf ausgetrocknet</translation>
    </message>
    <message>
        <source>A dry wick reads like a dry bulb: the bulbs stand close together, and the air seems to hold far more vapour than just before.</source>
        <translation>Ein trockener Strumpf zeigt wie das trockene Thermometer: beide stehen nahe beieinander, und die Luft scheint weit mehr Dampf zu enthalten als eben noch.</translation>
    </message>
    <message>
        <source>Wick freezing or thawing</source>
        <translation>Strumpf gefriert oder taut</translation>
    </message>
    <message>
        <source>While a wick freezes or thaws the wet bulb stands at 0.0 °C and tells nothing. Looks for frost in the last readings.</source>
        <translation>Solange der Strumpf gefriert oder taut, steht das feuchte Thermometer bei 0,0&#xa0;°C und sagt nichts. Sucht in den letzten Ablesungen nach Frost.</translation>
    </message>
    <message>
        <source>Ice taken for water</source>
        <translation>Eis für Wasser gehalten</translation>
    </message>
    <message>
        <source>Asks whether the wick is ice where water was given well below zero and the answer changes the humidity.</source>
        <translation>Fragt, ob am Strumpf Eis ist, wo weit unter null Wasser angegeben wurde und sich die Feuchte dadurch ändert.</translation>
    </message>
    <message>
        <source>Sudden change of temperature</source>
        <translation>Plötzlicher Temperatursprung</translation>
    </message>
    <message>
        <source>Asks you to confirm a jump since the last reading. Raise it where the days swing widely.</source>
        <translation>Bittet, einen Sprung seit der letzten Ablesung zu bestätigen. Heben, wo die Tage weit schwanken.</translation>
    </message>
    <message>
        <source>Sudden change of dew point</source>
        <translation>Plötzlicher Sprung des Taupunkts</translation>
    </message>
    <message>
        <source>Asks you to confirm a jump of the moisture since the last reading.</source>
        <translation>Bittet, einen Sprung der Feuchtigkeit seit der letzten Ablesung zu bestätigen.</translation>
    </message>
    <message>
        <source>The same pair again and again</source>
        <translation>Immer wieder dasselbe Paar</translation>
    </message>
    <message>
        <source>Asks whether a line was copied when the very same pair stands several times running. Quiet in fog.</source>
        <translation>Fragt, ob eine Zeile abgeschrieben wurde, wenn genau dasselbe Paar mehrmals hintereinander steht. Still bei Nebel.</translation>
    </message>
    <message>
        <source>A favoured last figure</source>
        <translation>Eine bevorzugte letzte Ziffer</translation>
    </message>
    <message>
        <source>Tells, privately, when one tenth is written far oftener than the others.</source>
        <translation>Sagt vertraulich, wenn ein Zehntel weit öfter geschrieben wird als die anderen.</translation>
    </message>
    <message>
        <source>A day like another</source>
        <translation>Ein Tag wie ein anderer</translation>
    </message>
    <message>
        <source>Marks a day whose readings all equal those of an earlier day.</source>
        <translation>Merkt einen Tag an, dessen Ablesungen alle denen eines früheren gleichen.</translation>
    </message>
    <message>
        <source>Read early</source>
        <translation>Früh abgelesen</translation>
    </message>
    <message>
        <source>Notes a reading made well before its hour. The true time is kept.</source>
        <translation>Vermerkt eine Ablesung lange vor ihrem Termin. Die wahre Zeit bleibt erhalten.</translation>
    </message>
    <message>
        <source>Read late</source>
        <translation>Spät abgelesen</translation>
    </message>
    <message>
        <source>Notes a reading made well after its hour. The true time is kept.</source>
        <translation>Vermerkt eine Ablesung lange nach ihrem Termin. Die wahre Zeit bleibt erhalten.</translation>
    </message>
    <message>
        <source>Time not yet come</source>
        <translation>Zeit noch nicht gekommen</translation>
    </message>
    <message>
        <source>Marks a reading whose time lies ahead of this computer&apos;s clock.</source>
        <translation>Merkt eine Ablesung an, deren Zeit vor der Uhr dieses Rechners liegt.</translation>
    </message>
    <message>
        <source>Unusual for this month and hour</source>
        <translation>Ungewöhnlich für diesen Monat und Termin</translation>
    </message>
    <message>
        <source>Compares a reading with the same month and hour of this station&apos;s other years and asks about what lies far outside.</source>
        <translation>Vergleicht eine Ablesung mit demselben Monat und Termin der anderen Jahre dieser Station und fragt nach dem, was weit außerhalb liegt.</translation>
    </message>
    <message>
        <source>Fog, but dry air</source>
        <translation>Nebel, aber trockene Luft</translation>
    </message>
    <message>
        <source>Asks about the wick or the remark when fog was noted and the air seems too dry for it.</source>
        <translation>Fragt nach Strumpf oder Bemerkung, wenn Nebel notiert wurde und die Luft dafür zu trocken scheint.</translation>
    </message>
    <message>
        <source>Rain through dry air</source>
        <translation>Regen durch trockene Luft</translation>
    </message>
    <message>
        <source>Notes rain in dry air: it happens, but seldom.</source>
        <translation>Vermerkt Regen in trockener Luft: das kommt vor, aber selten.</translation>
    </message>
    <message>
        <source>Outside maximum and minimum</source>
        <translation>Außerhalb von Maximum und Minimum</translation>
    </message>
    <message>
        <source>Asks which was misread when the dry bulb stands outside the maximum and minimum that were read.</source>
        <translation>Fragt, was verlesen wurde, wenn trocken außerhalb des abgelesenen Maximums und Minimums steht.</translation>
    </message>
    <message>
        <source>The month&apos;s numbers</source>
        <translation>Die Zahlen des Monats</translation>
    </message>
    <message>
        <source>When a month has too few readings for a mean, and which days are counted as damp or dry. The stricter rule is 5 and 3 days. Holds for whole months.</source>
        <translation>Wann ein Monat zu wenige Ablesungen für ein Mittel hat und welche Tage als feucht oder trocken zählen. Die strengere Regel ist 5 und 3 Tage. Gilt für ganze Monate.</translation>
    </message>
    <message>
        <source>Saturated in fine weather</source>
        <translation>Gesättigt bei schönem Wetter</translation>
    </message>
    <message>
        <source>Asks about the wick when the air seems saturated and neither fog nor rain nor dew was noted.</source>
        <translation>Fragt nach dem Strumpf, wenn die Luft gesättigt scheint und weder Nebel noch Regen noch Tau notiert wurde.</translation>
    </message>
    <message>
        <source>Unlike the readings round it</source>
        <translation>Anders als die Ablesungen ringsum</translation>
    </message>
    <message>
        <source>Marks a reading that a slip of the pen explains better than the weather does. Higher marks more readings.</source>
        <translation>Merkt eine Ablesung an, die ein Schreibversehen besser erklärt als das Wetter. Höher merkt mehr Ablesungen an.</translation>
    </message>
    <message>
        <source>latitude that parts high from low</source>
        <translation>Breite, die hohe von niedrigen trennt</translation>
    </message>
    <message>
        <source>high latitude, summer: doubtful below</source>
        <translation>hohe Breite, Sommer: zweifelhaft unter</translation>
    </message>
    <message>
        <source>high latitude, summer: doubtful above</source>
        <translation>hohe Breite, Sommer: zweifelhaft über</translation>
    </message>
    <message>
        <source>high latitude, summer: wrong below</source>
        <translation>hohe Breite, Sommer: falsch unter</translation>
    </message>
    <message>
        <source>high latitude, summer: wrong above</source>
        <translation>hohe Breite, Sommer: falsch über</translation>
    </message>
    <message>
        <source>high latitude, winter: doubtful below</source>
        <translation>hohe Breite, Winter: zweifelhaft unter</translation>
    </message>
    <message>
        <source>high latitude, winter: doubtful above</source>
        <translation>hohe Breite, Winter: zweifelhaft über</translation>
    </message>
    <message>
        <source>high latitude, winter: wrong below</source>
        <translation>hohe Breite, Winter: falsch unter</translation>
    </message>
    <message>
        <source>high latitude, winter: wrong above</source>
        <translation>hohe Breite, Winter: falsch über</translation>
    </message>
    <message>
        <source>low latitude, summer: doubtful below</source>
        <translation>niedrige Breite, Sommer: zweifelhaft unter</translation>
    </message>
    <message>
        <source>low latitude, summer: doubtful above</source>
        <translation>niedrige Breite, Sommer: zweifelhaft über</translation>
    </message>
    <message>
        <source>low latitude, summer: wrong below</source>
        <translation>niedrige Breite, Sommer: falsch unter</translation>
    </message>
    <message>
        <source>low latitude, summer: wrong above</source>
        <translation>niedrige Breite, Sommer: falsch über</translation>
    </message>
    <message>
        <source>low latitude, winter: doubtful below</source>
        <translation>niedrige Breite, Winter: zweifelhaft unter</translation>
    </message>
    <message>
        <source>low latitude, winter: doubtful above</source>
        <translation>niedrige Breite, Winter: zweifelhaft über</translation>
    </message>
    <message>
        <source>low latitude, winter: wrong below</source>
        <translation>niedrige Breite, Winter: falsch unter</translation>
    </message>
    <message>
        <source>low latitude, winter: wrong above</source>
        <translation>niedrige Breite, Winter: falsch über</translation>
    </message>
    <message>
        <source>doubtful below</source>
        <translation>zweifelhaft unter</translation>
    </message>
    <message>
        <source>doubtful above</source>
        <translation>zweifelhaft über</translation>
    </message>
    <message>
        <source>wrong below</source>
        <translation>falsch unter</translation>
    </message>
    <message>
        <source>wrong above</source>
        <translation>falsch über</translation>
    </message>
    <message>
        <source>doubtful farther from the usual than</source>
        <translation>zweifelhaft, weiter vom Üblichen als</translation>
    </message>
    <message>
        <source>reading error up to</source>
        <translation>Ablesefehler bis</translation>
    </message>
    <message>
        <source>ask below a humidity of</source>
        <translation>nachfragen unter einer Feuchte von</translation>
    </message>
    <message>
        <source>bulbs closer together than</source>
        <translation>Thermometer näher beieinander als</translation>
    </message>
    <message>
        <source>vapour at least so many times that of before</source>
        <translation>Dampf mindestens das Vielfache von vorher</translation>
    </message>
    <message>
        <source>vapour more than before by</source>
        <translation>Dampf mehr als vorher um</translation>
    </message>
    <message>
        <source>looks back</source>
        <translation>blickt zurück</translation>
    </message>
    <message>
        <source>or wet bulb rising from whirl to whirl by</source>
        <translation>oder feucht steigt von Durchgang zu Durchgang um</translation>
    </message>
    <message>
        <source>a thaw: air warmer than before by</source>
        <translation>Tauwetter: Luft wärmer als vorher um</translation>
    </message>
    <message>
        <source>ask with a wet bulb below</source>
        <translation>nachfragen bei feucht unter</translation>
    </message>
    <message>
        <source>where the humidity would differ by more than</source>
        <translation>wo sich die Feuchte unterschiede um mehr als</translation>
    </message>
    <message>
        <source>change within 3 hours</source>
        <translation>Änderung in 3 Stunden</translation>
    </message>
    <message>
        <source>change within 6 hours</source>
        <translation>Änderung in 6 Stunden</translation>
    </message>
    <message>
        <source>change within 12 hours</source>
        <translation>Änderung in 12 Stunden</translation>
    </message>
    <message>
        <source>times running, read to tenths</source>
        <translation>Male hintereinander, auf Zehntel gelesen</translation>
    </message>
    <message>
        <source>times running, read to half degrees</source>
        <translation>Male hintereinander, auf halbe Grad gelesen</translation>
    </message>
    <message>
        <source>times running, read to whole degrees</source>
        <translation>Male hintereinander, auf ganze Grad gelesen</translation>
    </message>
    <message>
        <source>a gap longer than this ends the run</source>
        <translation>eine längere Lücke beendet die Folge</translation>
    </message>
    <message>
        <source>only with at least</source>
        <translation>erst ab mindestens</translation>
    </message>
    <message>
        <source>how uneven the figures are (chi-square)</source>
        <translation>wie ungleich die Ziffern sind (Chi-Quadrat)</translation>
    </message>
    <message>
        <source>equal readings, read to tenths</source>
        <translation>gleiche Ablesungen, auf Zehntel gelesen</translation>
    </message>
    <message>
        <source>equal readings, read more coarsely</source>
        <translation>gleiche Ablesungen, gröber gelesen</translation>
    </message>
    <message>
        <source>by more than</source>
        <translation>um mehr als</translation>
    </message>
    <message>
        <source>how far outside the middle half, in widths of it</source>
        <translation>wie weit außerhalb der mittleren Hälfte, in ihren Breiten</translation>
    </message>
    <message>
        <source>note below a humidity of</source>
        <translation>vermerken unter einer Feuchte von</translation>
    </message>
    <message>
        <source>ask from a humidity of</source>
        <translation>nachfragen ab einer Feuchte von</translation>
    </message>
    <message>
        <source>also the next maximum and minimum within</source>
        <translation>auch das nächste Maximum und Minimum innerhalb</translation>
    </message>
    <message>
        <source>no mean with so many days missing</source>
        <translation>kein Mittel bei so vielen fehlenden Tagen</translation>
    </message>
    <message>
        <source>no mean with so many missing in a row</source>
        <translation>kein Mittel bei so vielen fehlenden hintereinander</translation>
    </message>
    <message>
        <source>count days at or above a humidity of</source>
        <translation>Tage zählen ab einer Feuchte von</translation>
    </message>
    <message>
        <source>count days at or below a humidity of</source>
        <translation>Tage zählen bis zu einer Feuchte von</translation>
    </message>
    <message>
        <source>mark where belief in the reading falls below</source>
        <translation>anmerken, wo das Zutrauen zur Ablesung fällt unter</translation>
    </message>
    <message>
        <source>readings</source>
        <translation>Ablesungen</translation>
    </message>
    <message>
        <source>days</source>
        <translation>Tage</translation>
    </message>
    <message>
        <source>years</source>
        <translation>Jahre</translation>
    </message>
    <message>
        <source>h</source>
        <translation>h</translation>
    </message>
    <message>
        <source>min</source>
        <translation>Min</translation>
    </message>
    <message>
        <source>widths</source>
        <translation>Breiten</translation>
    </message>
    <message>
        <source>common practice, no source</source>
        <translation>allgemeine Übung, ohne Quelle</translation>
    </message>
    <message>
        <source>WMO-No. 1203, from memory</source>
        <translation>WMO-Nr. 1203, aus dem Gedächtnis</translation>
    </message>
    <message>
        <source>our judgement</source>
        <translation>unser Urteil</translation>
    </message>
    <message>
        <source>computed</source>
        <translation>berechnet</translation>
    </message>
</context>
<context>
    <name>PageCellText</name>
    <message>
        <source>Write the wind as a Beaufort force, a whole number from 0 to 12; “%1” is none.</source>
        <translation>Den Wind als Beaufort-Stärke schreiben, eine ganze Zahl von 0 bis 12; „%1“ ist keine.</translation>
    </message>
    <message>
        <source>Write w for water or i for ice; “%1” is neither.</source>
        <translation>w für Wasser oder i für Eis schreiben; „%1“ ist keines von beiden.</translation>
    </message>
    <message>
        <source>Write the weather so that it can&apos;t be two things: %1, or 0 for none. “%2” is not clear; a remark in other words goes into the note.</source>
        <translation>Das Wetter so schreiben, dass es nicht zweierlei sein kann: %1, oder 0 für nichts. „%2“ ist nicht eindeutig; eine Bemerkung in anderen Worten gehört in die Notiz.</translation>
    </message>
    <message>
        <source>Say why nothing was read: %1; or m and your own words.</source>
        <translation>Sagen, warum nichts abgelesen wurde: %1; oder m und eigene Worte.</translation>
    </message>
    <message>
        <source>A bulb&apos;s reading is written out on every line; only a missing line is repeated so.</source>
        <translation>Eine Ablesung wird in jeder Zeile ausgeschrieben; nur eine fehlende Zeile lässt sich so wiederholen.</translation>
    </message>
    <message>
        <source>There is no line above to repeat: write the cell out.</source>
        <translation>Darüber ist keine Zeile zum Wiederholen: die Zelle ausschreiben.</translation>
    </message>
    <message>
        <source>illegible</source>
        <translation>unleserlich</translation>
    </message>
</context>
<context>
    <name>PairText</name>
    <message>
        <source>Dry and wet bulb, %1</source>
        <translation>Trocken und feucht, %1</translation>
    </message>
    <message>
        <source>dry bulb</source>
        <translation>trockenes Thermometer</translation>
    </message>
    <message>
        <source>wet bulb</source>
        <translation>feuchtes Thermometer</translation>
    </message>
    <message>
        <source>depression</source>
        <translation>Differenz</translation>
    </message>
</context>
<context>
    <name>PaperText</name>
    <message>
        <source>station</source>
        <translation>Station</translation>
    </message>
    <message>
        <source>height, m</source>
        <translation>Höhe, m</translation>
    </message>
    <message>
        <source>hour</source>
        <translation>Termin</translation>
    </message>
    <message>
        <source>n of</source>
        <translation>n von</translation>
    </message>
    <message>
        <source>mean RH</source>
        <translation>mittlere rF</translation>
    </message>
    <message>
        <source>highest</source>
        <translation>höchste</translation>
    </message>
    <message>
        <source>lowest</source>
        <translation>niedrigste</translation>
    </message>
    <message>
        <source>mean e, hPa</source>
        <translation>mittl. e, hPa</translation>
    </message>
    <message>
        <source>its dew point</source>
        <translation>sein Taupunkt</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>The club&apos;s stations · %1</source>
        <translation>Die Stationen des Vereins · %1</translation>
    </message>
    <message>
        <source>At observing hours; RH relative humidity, e vapour pressure, dew point in °C. n readings that count, of the days of the month.</source>
        <translation>Zu den Terminen; rF relative Feuchte, e Dampfdruck, Taupunkt in °C. n zählende Ablesungen, von den Tagen des Monats.</translation>
    </message>
    <message>
        <source>Thermometers that hang differently read differently in the same air, and so do other hours and heights: the groups below are not for ranking one another, and stations stand in alphabetical order.</source>
        <translation>Anders aufgestellte Thermometer zeigen in derselben Luft anderes, ebenso andere Termine und Höhen: die Gruppen unten sind nicht zum Vergleichen der Ränge, und die Stationen stehen nach dem Alphabet.</translation>
    </message>
    <message>
        <source>Reading %1 in my place</source>
        <translation>%1: Ablesen an meiner Stelle</translation>
    </message>
    <message>
        <source>In doubt ask</source>
        <translation>Im Zweifel fragen</translation>
    </message>
    <message>
        <source>Before you go out</source>
        <translation>Vor dem Hinausgehen</translation>
    </message>
    <message>
        <source>Reading</source>
        <translation>Ablesen</translation>
    </message>
    <message>
        <source>In frost</source>
        <translation>Bei Frost</translation>
    </message>
    <message>
        <source>Wick and water</source>
        <translation>Strumpf und Wasser</translation>
    </message>
    <message>
        <source>When something is not right</source>
        <translation>Wenn etwas nicht stimmt</translation>
    </message>
    <message>
        <source>Take care</source>
        <translation>Vorsicht</translation>
    </message>
    <message>
        <source>when</source>
        <translation>wann</translation>
    </message>
    <message>
        <source>where</source>
        <translation>wo</translation>
    </message>
    <message>
        <source>read to</source>
        <translation>abgelesen auf</translation>
    </message>
    <message>
        <source>away</source>
        <extracomment>%1 and %2 are dates, %3 a deputy&apos;s initials</extracomment>
        <translation>abwesend</translation>
    </message>
    <message>
        <source>%1 to %2; %3 reads</source>
        <translation>%1 bis %2; %3 liest ab</translation>
    </message>
    <message>
        <source>Half an hour ahead hang the instrument outdoors in the shade. Look at the wick: clean, wet, tight round the bulb. Look for a break in each column.</source>
        <translation>Eine halbe Stunde vorher das Gerät draußen in den Schatten hängen. Den Strumpf ansehen: sauber, nass, eng um die Kugel. In beiden Fäden nach einer Lücke sehen.</translation>
    </message>
    <message>
        <source>Check the cord and the swivel.</source>
        <translation>Schnur und Wirbel prüfen.</translation>
    </message>
    <message>
        <source>Look at the wick when you open the screen: clean, wet, tight round the bulb. Look for a break in each column.</source>
        <translation>Beim Öffnen der Hütte den Strumpf ansehen: sauber, nass, eng um die Kugel. In beiden Fäden nach einer Lücke sehen.</translation>
    </message>
    <message>
        <source>Stand in the shade and face the wind, arm out, nobody and nothing within 1.5 m. Whirl for about a minute at two turns a second, stop, and read the wet bulb first, at once, then the dry bulb. Whirl again until the wet bulb falls no further; the lowest counts, with the dry bulb beside it.</source>
        <translation>Im Schatten gegen den Wind stehen, Arm ausgestreckt, niemand und nichts näher als 1,5&#xa0;m. Etwa eine Minute mit zwei Umdrehungen in der Sekunde schleudern, anhalten, sofort erst feucht, dann trocken ablesen. Wieder schleudern, bis feucht nicht weiter fällt; das niedrigste zählt, mit dem trockenen daneben.</translation>
    </message>
    <message>
        <source>Read the dry bulb first, then the wet bulb, quickly and without breathing on them.</source>
        <translation>Erst trocken, dann feucht ablesen, rasch und ohne sie anzuhauchen.</translation>
    </message>
    <message>
        <source>Eye level with the top of the column. Tenths first, whole degrees after, then look once more whether you are ten off.</source>
        <translation>Auge in Höhe des Fadenendes. Zehntel zuerst, dann die ganzen Grade, dann noch einmal sehen, ob es zehn daneben ist.</translation>
    </message>
    <message>
        <source>Write both down as read, with the time and your initials, before you do anything else.</source>
        <translation>Beide aufschreiben, wie abgelesen, mit Zeit und Kürzel, bevor anderes getan wird.</translation>
    </message>
    <message>
        <source>32 °F</source>
        <translation>32&#xa0;°F</translation>
    </message>
    <message>
        <source>0 °C</source>
        <translation>0&#xa0;°C</translation>
    </message>
    <message>
        <source>With the wet bulb at %1 or below say whether the wick holds water or ice: touch it, or watch whether the column stands still at %1 on its way down.</source>
        <translation>Steht feucht bei %1 oder darunter, sagen, ob am Strumpf Wasser oder Eis ist: berühren oder sehen, ob der Faden beim Fallen bei %1 stehen bleibt.</translation>
    </message>
    <message>
        <source>Wet the wick a quarter of an hour ahead and let it freeze before you whirl.</source>
        <translation>Den Strumpf eine Viertelstunde vorher benetzen und gefrieren lassen, dann erst schleudern.</translation>
    </message>
    <message>
        <source>Take the reservoir away. A quarter of an hour ahead brush on a thin film of ice-cold water; melt thick ice off first.</source>
        <translation>Das Gefäß wegnehmen. Eine Viertelstunde vorher einen dünnen Film eiskaltes Wasser aufpinseln; dickes Eis zuerst abschmelzen.</translation>
    </message>
    <message>
        <source>After a thaw old ice holds the bulb at %1: melt it with tepid water and wait until the column has risen.</source>
        <translation>Nach Tauwetter hält altes Eis das Thermometer bei %1: mit lauem Wasser schmelzen und warten, bis der Faden gestiegen ist.</translation>
    </message>
    <message>
        <source>Distilled or rain water only, never from the tap. Do not touch the wick with your fingers. Put on a new one when it is yellow, frayed or beads the water; write that down too.</source>
        <translation>Nur destilliertes oder Regenwasser, nie aus der Leitung. Den Strumpf nicht mit den Fingern berühren. Einen neuen nehmen, wenn er gelb ist, ausfranst oder das Wasser abperlt; auch das aufschreiben.</translation>
    </message>
    <message>
        <source>The wet bulb stands above the dry one, or both read the same in clear dry weather: read again, wet the wick, wait, read once more. Write down what you read even if it looks wrong, and say so beside it.</source>
        <translation>Feucht steht über trocken, oder beide zeigen bei klarem trockenem Wetter dasselbe: noch einmal ablesen, benetzen, warten, wieder ablesen. Aufschreiben, was abgelesen wurde, auch wenn es falsch aussieht, und es danebenschreiben.</translation>
    </message>
    <message>
        <source>Missed an hour? Leave it empty and say why. A reading made late is written with its true time. Nothing is made up.</source>
        <translation>Einen Termin versäumt? Leer lassen und sagen, warum. Eine späte Ablesung bekommt ihre wahre Zeit. Nichts wird erfunden.</translation>
    </message>
    <message>
        <source>Deputy&apos;s card · %1</source>
        <translation>Vertretungskarte · %1</translation>
    </message>
    <message>
        <source>dry</source>
        <translation>trocken</translation>
    </message>
    <message>
        <source>dry less wet, %1</source>
        <translation>trocken minus feucht, %1</translation>
    </message>
    <message>
        <source>Humidity table</source>
        <translation>Feuchtetafel</translation>
    </message>
    <message>
        <source>%1 hPa</source>
        <translation>%1&#xa0;hPa</translation>
    </message>
    <message>
        <source>fitted at this station</source>
        <translation>an dieser Station bestimmt</translation>
    </message>
    <message>
        <source>coefficient %1 × 10⁻⁴ per K at 0 °C (%2)</source>
        <extracomment>%1 a number, %2 where it comes from</extracomment>
        <translation>Koeffizient %1 × 10⁻⁴ je K bei 0&#xa0;°C (%2)</translation>
    </message>
    <message>
        <source>Relative humidity, %</source>
        <translation>Relative Feuchte, %</translation>
    </message>
    <message>
        <source>Dew point, %1</source>
        <translation>Taupunkt, %1</translation>
    </message>
    <message>
        <source>water on the wick</source>
        <translation>Wasser am Strumpf</translation>
    </message>
    <message>
        <source>ICE on the wick</source>
        <translation>EIS am Strumpf</translation>
    </message>
    <message>
        <source>Find the dry bulb at the side, dry less wet at the top: the figure where they meet. Halfway between two figures take the middle. With ice on the wick use the pages that say so, also for a dry bulb above freezing.</source>
        <translation>Trocken am Rand suchen, trocken minus feucht oben: die Zahl, wo sie sich treffen. Zwischen zwei Zahlen die Mitte nehmen. Bei Eis am Strumpf die Seiten nehmen, auf denen es steht, auch wenn trocken über null ist.</translation>
    </message>
    <message>
        <source>%1, %2, %3. Within 1 % from %4 to %5 hPa.</source>
        <translation>%1, %2, %3. Auf 1&#xa0;% genau von %4 bis %5&#xa0;hPa.</translation>
    </message>
    <message>
        <source>Only for thermometers exposed as named above: in stiller air the wet bulb reads too high, and so does the humidity. Relative humidity is over liquid water, also with ice on the wick. Not for aviation, heat stress, spraying, food or process safety, medical or legal decisions.</source>
        <translation>Nur für Thermometer in der genannten Aufstellung: in ruhigerer Luft zeigt feucht zu hoch, und damit auch die Feuchte. Relative Feuchte gilt über flüssigem Wasser, auch bei Eis am Strumpf. Nicht für Luftfahrt, Hitzebelastung, Spritzen, Lebensmittel- oder Prozesssicherheit, medizinische oder rechtliche Entscheidungen.</translation>
    </message>
    <message>
        <source>Humidity table · %1</source>
        <translation>Feuchtetafel · %1</translation>
    </message>
    <message>
        <source>The station keeps no observing hour in this month.</source>
        <translation>Die Station hat in diesem Monat keinen Termin.</translation>
    </message>
    <message>
        <source>Observer</source>
        <translation>Beobachter</translation>
    </message>
    <message>
        <source>Book</source>
        <translation>Buch</translation>
    </message>
    <message>
        <source>Page</source>
        <translation>Seite</translation>
    </message>
    <message>
        <source>day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>time</source>
        <translation>Zeit</translation>
    </message>
    <message>
        <source>dry %1</source>
        <translation>trocken %1</translation>
    </message>
    <message>
        <source>wet %1</source>
        <translation>feucht %1</translation>
    </message>
    <message>
        <source>water</source>
        <translation>Wasser</translation>
    </message>
    <message>
        <source>ice</source>
        <translation>Eis</translation>
    </message>
    <message>
        <source>weather</source>
        <translation>Wetter</translation>
    </message>
    <message>
        <source>wind</source>
        <translation>Wind</translation>
    </message>
    <message>
        <source>who</source>
        <translation>wer</translation>
    </message>
    <message>
        <source>note</source>
        <translation>Hinweis</translation>
    </message>
    <message>
        <source>Whirl in the shade, facing the wind, until the wet bulb falls no further. Read the wet bulb first, at once, then the dry bulb.</source>
        <translation>Im Schatten gegen den Wind schleudern, bis feucht nicht weiter fällt. Sofort erst feucht, dann trocken ablesen.</translation>
    </message>
    <message>
        <source>Read the dry bulb first, then the wet bulb, without breathing on them.</source>
        <translation>Erst trocken, dann feucht ablesen, ohne sie anzuhauchen.</translation>
    </message>
    <message>
        <source>Tenths before whole degrees. Write what you read; corrections are made later.</source>
        <translation>Zehntel vor ganzen Graden. Schreiben, was abgelesen wurde; korrigiert wird später.</translation>
    </message>
    <message>
        <source>With the wet bulb at 0 °C (32 °F) or below tick water or ice.</source>
        <translation>Steht feucht bei 0&#xa0;°C (32&#xa0;°F) oder darunter, Wasser oder Eis ankreuzen.</translation>
    </message>
    <message>
        <source>A missed hour stays empty; say why in the note. Strike out a slip, so that it can still be read, and write the right figure beside it.</source>
        <translation>Ein versäumter Termin bleibt leer; in der Notiz sagen, warum. Ein Versehen so durchstreichen, dass es lesbar bleibt, und die richtige Zahl daneben schreiben.</translation>
    </message>
    <message>
        <source>Keep clear of people and glass when whirling; mind ice underfoot, and stay in when there is thunder.</source>
        <translation>Beim Schleudern Abstand zu Menschen und Glas; auf Eis am Boden achten, bei Gewitter drinnen bleiben.</translation>
    </message>
    <message>
        <source>Form for %1 · %2</source>
        <translation>Formular für %1 · %2</translation>
    </message>
    <message>
        <source>highest at observing hours</source>
        <translation>höchste zu den Terminen</translation>
    </message>
    <message>
        <source>lowest at observing hours</source>
        <translation>niedrigste zu den Terminen</translation>
    </message>
    <message>
        <source>mean relative humidity</source>
        <translation>mittlere relative Feuchte</translation>
    </message>
    <message>
        <source>mean dew point</source>
        <translation>mittlerer Taupunkt</translation>
    </message>
    <message>
        <source>mean vapour pressure, hPa</source>
        <translation>mittlerer Dampfdruck, hPa</translation>
    </message>
    <message>
        <source>dew point of the mean vapour pressure</source>
        <translation>Taupunkt des mittleren Dampfdrucks</translation>
    </message>
    <message>
        <source>mean depression</source>
        <translation>mittlere Differenz</translation>
    </message>
    <message>
        <source>mean dry bulb</source>
        <translation>Mittel trocken</translation>
    </message>
    <message>
        <source>mean wet bulb</source>
        <translation>Mittel feucht</translation>
    </message>
    <message>
        <source>days at or above %1</source>
        <translation>Tage mit %1 oder mehr</translation>
    </message>
    <message>
        <source>days at or below %1</source>
        <translation>Tage mit %1 oder weniger</translation>
    </message>
    <message>
        <source>days with fog noted</source>
        <translation>Tage mit notiertem Nebel</translation>
    </message>
    <message>
        <source>expected</source>
        <translation>erwartet</translation>
    </message>
    <message>
        <source>counted (n)</source>
        <translation>gezählt (n)</translation>
    </message>
    <message>
        <source>missing</source>
        <translation>fehlend</translation>
    </message>
    <message>
        <source>set aside</source>
        <translation>beiseite</translation>
    </message>
    <message>
        <source>mean of observing hours</source>
        <translation>Mittel der Termine</translation>
    </message>
    <message>
        <source>incomplete</source>
        <translation>unvollständig</translation>
    </message>
    <message>
        <source>corrected</source>
        <translation>berichtigt</translation>
    </message>
    <message>
        <source>T</source>
        <translation>T</translation>
    </message>
    <message>
        <source>Tw</source>
        <translation>Tf</translation>
    </message>
    <message>
        <source>RH</source>
        <translation>rF</translation>
    </message>
    <message>
        <source>Td</source>
        <translation>Td</translation>
    </message>
    <message>
        <source>wick</source>
        <translation>Strumpf</translation>
    </message>
    <message>
        <source>weather, remark</source>
        <translation>Wetter, Bemerkung</translation>
    </message>
    <message>
        <source>remark</source>
        <translation>Bemerkung</translation>
    </message>
    <message>
        <source>No mean yet: the month is not over, and days without a reading, also those to come, count as missing (WMO-No. 1203).</source>
        <translation>Noch kein Mittel: der Monat ist nicht vorbei, und Tage ohne Ablesung, auch künftige, zählen als fehlend (WMO-Nr. 1203).</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <extracomment>%1 an observing hour, %2 a sentence why there is no mean
----------
%1 date and hour, %2 why a reading was revised</extracomment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>revised</source>
        <translation>berichtigt</translation>
    </message>
    <message>
        <source>%1 could not be painted because of an error in the program; nothing was written. Please report it.</source>
        <translation>%1 ließ sich wegen eines Fehlers im Programm nicht zeichnen; es wurde nichts geschrieben. Bitte melden.</translation>
    </message>
    <message>
        <source>Monthly return · %1 · %2</source>
        <translation>Monatsmeldung · %1 · %2</translation>
    </message>
    <message>
        <source>T dry bulb and Tw wet bulb as read, Td dew point, in %1; RH relative humidity in %. All at observing hours.</source>
        <translation>T trocken und Tf feucht wie abgelesen, Td Taupunkt, in %1; rF relative Feuchte in %. Alles zu den Terminen.</translation>
    </message>
    <message>
        <source>Extra readings, outside the means</source>
        <translation>Zusätzliche Ablesungen, außerhalb der Mittel</translation>
    </message>
    <message>
        <source>The month&apos;s numbers, at observing hours</source>
        <translation>Die Zahlen des Monats, zu den Terminen</translation>
    </message>
    <message>
        <source>Queries still open, set aside until they are judged: %1.</source>
        <translation>Offene Rückfragen, beiseite bis zum Urteil: %1.</translation>
    </message>
    <message>
        <source>Signed off</source>
        <translation>Abgezeichnet</translation>
    </message>
    <message>
        <source>Corrections made</source>
        <translation>Berichtigungen</translation>
    </message>
    <message>
        <source>The station</source>
        <translation>Die Station</translation>
    </message>
    <message>
        <source>How the numbers were made</source>
        <translation>Wie die Zahlen entstanden</translation>
    </message>
    <message>
        <source>N</source>
        <translation>N</translation>
    </message>
    <message>
        <source>S</source>
        <translation>S</translation>
    </message>
    <message>
        <source>E</source>
        <translation>O</translation>
    </message>
    <message>
        <source>W</source>
        <translation>W</translation>
    </message>
    <message>
        <source>%1 × 10⁻⁴ per K</source>
        <translation>%1 × 10⁻⁴ je K</translation>
    </message>
    <message>
        <source>own, not stated</source>
        <translation>eigener, nicht angegeben</translation>
    </message>
    <message>
        <source>water %1</source>
        <translation>Wasser %1</translation>
    </message>
    <message>
        <source>, ice %1</source>
        <translation>, Eis %1</translation>
    </message>
    <message>
        <source>; fitted at this station</source>
        <translation>; an dieser Station bestimmt</translation>
    </message>
    <message>
        <source>water %1, ice %2; %3</source>
        <extracomment>%1 and %2 are coefficients, %3 where they come from</extracomment>
        <translation>Wasser %1, Eis %2; %3</translation>
    </message>
    <message>
        <source>none on record</source>
        <translation>keiner eingetragen</translation>
    </message>
    <message>
        <source>read to %1 %2</source>
        <translation>abgelesen auf %1&#xa0;%2</translation>
    </message>
    <message>
        <source>corrected (%1)</source>
        <translation>korrigiert (%1)</translation>
    </message>
    <message>
        <source>no correction on record</source>
        <translation>keine Korrektion eingetragen</translation>
    </message>
    <message>
        <source>%1 (%2 readings)</source>
        <extracomment>%1 &quot;read&quot; or &quot;from elevation&quot;, %2 how many readings</extracomment>
        <translation>%1 (%2 Ablesungen)</translation>
    </message>
    <message>
        <source>valid from</source>
        <translation>gültig ab</translation>
    </message>
    <message>
        <source>position</source>
        <translation>Lage</translation>
    </message>
    <message>
        <source>elevation</source>
        <translation>Höhe</translation>
    </message>
    <message>
        <source>%1 m above sea level</source>
        <translation>%1&#xa0;m über dem Meer</translation>
    </message>
    <message>
        <source>time zone</source>
        <translation>Zeitzone</translation>
    </message>
    <message>
        <source>observing hours</source>
        <translation>Termine</translation>
    </message>
    <message>
        <source>exposure</source>
        <translation>Aufstellung</translation>
    </message>
    <message>
        <source>psychrometer coefficient</source>
        <translation>Psychrometerkoeffizient</translation>
    </message>
    <message>
        <source>pressure</source>
        <translation>Luftdruck</translation>
    </message>
    <message>
        <source>dry thermometer</source>
        <translation>trockenes Thermometer</translation>
    </message>
    <message>
        <source>wet thermometer</source>
        <translation>feuchtes Thermometer</translation>
    </message>
    <message>
        <source>surroundings</source>
        <translation>Umgebung</translation>
    </message>
    <message>
        <source>T and Tw are given as read; corrections on record are applied before anything is worked out. Vapour pressure follows from the psychrometer equation with the coefficient above, saturation from Sonntag&apos;s formulae; relative humidity is always over liquid water, also below freezing.</source>
        <translation>T und Tf stehen wie abgelesen; eingetragene Korrektionen werden vor jeder Rechnung angebracht. Der Dampfdruck folgt aus der Psychrometerformel mit dem obigen Koeffizienten, die Sättigung aus Sonntags Formeln; die relative Feuchte gilt immer über flüssigem Wasser, auch unter null.</translation>
    </message>
    <message>
        <source>Means are of observing hours, each hour weighted equally; they are not means over 24 hours. A mean is not given where %1 or more days are missing, or %2 or more in a row.</source>
        <translation>Mittel sind Mittel der Termine, jeder Termin gleich gewichtet; es sind keine Mittel über 24 Stunden. Wo %1 oder mehr Tage fehlen oder %2 und mehr hintereinander, wird kein Mittel gegeben.</translation>
    </message>
    <message>
        <source>Set aside: readings judged doubtful or erroneous, readings marked so and not yet judged, and estimates. They stand above as read and stay out of means and extremes.</source>
        <translation>Beiseite: als zweifelhaft oder falsch beurteilte Ablesungen, so angemerkte und noch nicht beurteilte und Schätzungen. Sie stehen oben wie abgelesen und bleiben aus Mitteln und Extremen.</translation>
    </message>
    <message>
        <source>How sure: a single relative humidity is good to %1 %</source>
        <translation>Wie sicher: eine einzelne relative Feuchte ist auf %1&#xa0;% genau</translation>
    </message>
    <message>
        <source>, a dew point to %1 %2</source>
        <translation>, ein Taupunkt auf %1&#xa0;%2</translation>
    </message>
    <message>
        <source> (k = 2, the month&apos;s median).</source>
        <translation> (k = 2, Median des Monats).</translation>
    </message>
    <message>
        <source>The year in numbers</source>
        <translation>Das Jahr in Zahlen</translation>
    </message>
    <message>
        <source>The year in charts</source>
        <translation>Das Jahr in Diagrammen</translation>
    </message>
    <message>
        <source>This month is still to come.</source>
        <translation>Dieser Monat kommt noch.</translation>
    </message>
    <message>
        <source>Nothing was written down in this month.</source>
        <translation>In diesem Monat wurde nichts aufgeschrieben.</translation>
    </message>
    <message>
        <source>The hut&apos;s humidity table</source>
        <translation>Die Feuchtetafel der Hütte</translation>
    </message>
    <message>
        <source>Relative humidity and dew point from a dry and a wet bulb</source>
        <translation>Relative Feuchte und Taupunkt aus trockenem und feuchtem Thermometer</translation>
    </message>
    <message>
        <source>observers</source>
        <translation>Beobachter</translation>
    </message>
    <message>
        <source>This station is invented, and so are its readings.</source>
        <translation>Diese Station ist erfunden, ihre Ablesungen auch.</translation>
    </message>
    <message>
        <source>Contents</source>
        <translation>Inhalt</translation>
    </message>
    <message>
        <source>page</source>
        <translation>Seite</translation>
    </message>
    <message>
        <source>mean e</source>
        <translation>mittl. e</translation>
    </message>
    <message>
        <source>Td of e</source>
        <translation>Td von e</translation>
    </message>
    <message>
        <source>mean Td</source>
        <translation>mittl. Td</translation>
    </message>
    <message>
        <source>the month is not over</source>
        <translation>der Monat ist nicht vorbei</translation>
    </message>
    <message>
        <source>n readings that count, of those expected; RH relative humidity; e vapour pressure in hPa; Td of e the dew point of its mean, Td dew point, in %1. At observing hours; a mean of observing hours weights them equally and is no mean over 24 hours. Where there is no mean the reason stands below.</source>
        <translation>n zählende Ablesungen von den erwarteten; rF relative Feuchte; e Dampfdruck in hPa; Td von e der Taupunkt seines Mittels, Td Taupunkt, in %1. Zu den Terminen; ein Mittel der Termine gewichtet sie gleich und ist kein Mittel über 24 Stunden. Wo kein Mittel steht, steht unten der Grund.</translation>
    </message>
    <message>
        <source>Mean of observing hours</source>
        <translation>Mittel der Termine</translation>
    </message>
    <message>
        <source>No reading of this year is in the book.</source>
        <translation>Im Buch ist keine Ablesung dieses Jahres.</translation>
    </message>
    <message>
        <source>Year book · %1</source>
        <translation>Jahrbuch · %1</translation>
    </message>
</context>
<context>
    <name>ParagraphText</name>
    <message>
        <source>No humidity could be worked out at %1 in %2.</source>
        <translation>Im %2 ließ sich an der Station %1 keine Feuchte berechnen.</translation>
    </message>
    <message>
        <source>%1 and %2</source>
        <extracomment>several observing hours, &quot;7 h, 14 h and 21 h&quot;</extracomment>
        <translation>%1 und %2</translation>
    </message>
    <message>
        <source>%1 at %2 is not over, so there is no mean yet.</source>
        <translation>%1 an der Station %2 ist noch nicht vorbei, daher gibt es noch kein Mittel.</translation>
    </message>
    <message>
        <source>%1 at %2:</source>
        <translation>%1, Station %2:</translation>
    </message>
    <message>
        <source>In %1 the relative humidity at %2, read at %3, was %4 on average, and the dew point %5</source>
        <extracomment>%1 month, %2 station, %3 &quot;9 h and 21 h&quot;, %4 a humidity, %5 a temperature</extracomment>
        <translation>Im Monat %1 betrug die relative Feuchte an der Station %2, abgelesen um %3, im Mittel %4, der Taupunkt %5</translation>
    </message>
    <message>
        <source>; a single reading is sure to about %1 %2 and %3 %4</source>
        <translation>; eine einzelne Ablesung ist auf etwa %1&#xa0;%2 und %3&#xa0;%4 sicher</translation>
    </message>
    <message>
        <source>The one reading that counts (%1) gave %2 and a dew point of %3.</source>
        <translation>Die eine zählende Ablesung (%1) gab %2 und einen Taupunkt von %3.</translation>
    </message>
    <message>
        <source>The driest reading, %1, came on %2, the dampest, %3, on %4.</source>
        <translation>Die trockenste Ablesung, %1, kam am %2, die feuchteste, %3, am %4.</translation>
    </message>
    <message>
        <source>The dew point lay between %1 (%2) and %3 (%4).</source>
        <translation>Der Taupunkt lag zwischen %1 (%2) und %3 (%4).</translation>
    </message>
    <message>
        <source>fog on one day</source>
        <translation>an einem Tag Nebel</translation>
    </message>
    <message numerus="yes">
        <source>fog on %n days</source>
        <translation>
            <numerusform>an %n Tag Nebel</numerusform>
            <numerusform>an %n Tagen Nebel</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 or more on one day</source>
        <translation>an einem Tag %1 oder mehr</translation>
    </message>
    <message numerus="yes">
        <source>%1 or more on %n days</source>
        <translation>
            <numerusform>an %n Tag %1 oder mehr</numerusform>
            <numerusform>an %n Tagen %1 oder mehr</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 or less on one day</source>
        <translation>an einem Tag %1 oder weniger</translation>
    </message>
    <message numerus="yes">
        <source>%1 or less on %n days</source>
        <translation>
            <numerusform>an %n Tag %1 oder weniger</numerusform>
            <numerusform>an %n Tagen %1 oder weniger</numerusform>
        </translation>
    </message>
    <message>
        <source>At observing hours there was %1.</source>
        <translation>Zu den Terminen gab es %1.</translation>
    </message>
    <message>
        <source>%1 missing</source>
        <translation>%1 fehlend</translation>
    </message>
    <message>
        <source>%1 set aside</source>
        <translation>%1 beiseite</translation>
    </message>
    <message>
        <source>%1 still to come</source>
        <translation>%1 kommen noch</translation>
    </message>
    <message>
        <source>None of the %1 readings is missing.</source>
        <translation>Keine der %1 Ablesungen fehlt.</translation>
    </message>
    <message>
        <source>Of %1 readings %2 count (%3).</source>
        <translation>Von %1 Ablesungen zählen %2 (%3).</translation>
    </message>
    <message>
        <source>One reading was revised later; what was first written is kept.</source>
        <translation>Eine Ablesung wurde später berichtigt; was zuerst geschrieben wurde, ist erhalten.</translation>
    </message>
    <message numerus="yes">
        <source>%n readings were revised later; what was first written is kept.</source>
        <translation>
            <numerusform>%n Ablesung wurde später berichtigt; was zuerst geschrieben wurde, ist erhalten.</numerusform>
            <numerusform>%n Ablesungen wurden später berichtigt; was zuerst geschrieben wurde, ist erhalten.</numerusform>
        </translation>
    </message>
    <message>
        <source>One marked reading is not yet judged and is left out.</source>
        <translation>Eine angemerkte Ablesung ist noch nicht beurteilt und bleibt außen vor.</translation>
    </message>
    <message numerus="yes">
        <source>%n marked readings are not yet judged and are left out.</source>
        <translation>
            <numerusform>%n angemerkte Ablesung ist noch nicht beurteilt und bleibt außen vor.</numerusform>
            <numerusform>%n angemerkte Ablesungen sind noch nicht beurteilt und bleiben außen vor.</numerusform>
        </translation>
    </message>
    <message>
        <source>Worked out from a dry and a wet bulb read at fixed hours; these are not 24-hour means.</source>
        <translation>Berechnet aus trockenem und feuchtem Thermometer zu festen Terminen; es sind keine 24-Stunden-Mittel.</translation>
    </message>
    <message>
        <source>Station and readings are invented.</source>
        <translation>Station und Ablesungen sind erfunden.</translation>
    </message>
</context>
<context>
    <name>PromptText</name>
    <message>
        <source>Wickbook books (*.wickbook);;All files (*)</source>
        <translation>Wickbook-Bücher (*.wickbook);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Where the new book shall lie</source>
        <translation>Wo das neue Buch liegen soll</translation>
    </message>
    <message>
        <source>Open a book</source>
        <translation>Ein Buch öffnen</translation>
    </message>
</context>
<context>
    <name>QObject</name>
    <message>
        <source>undone: %1</source>
        <translation>zurückgenommen: %1</translation>
    </message>
    <message>
        <source>done again: %1</source>
        <translation>wiederholt: %1</translation>
    </message>
    <message>
        <source>%1 is a folder: choose a file in it.</source>
        <translation>%1 ist ein Ordner: eine Datei darin wählen.</translation>
    </message>
    <message>
        <source>%1 can&apos;t be read: %2. Check that you may read it, or choose another file.</source>
        <translation>%1 lässt sich nicht lesen: %2. Prüfen, ob es gelesen werden darf, oder eine andere Datei wählen.</translation>
    </message>
    <message>
        <source>Bring in one table at a time; several files together only where they are of the Station Exchange Format.</source>
        <translation>Eine Tabelle auf einmal einlesen; mehrere Dateien zusammen nur im Station Exchange Format.</translation>
    </message>
    <message>
        <source>Nothing was brought in. %1</source>
        <translation>Es wurde nichts eingelesen. %1</translation>
    </message>
    <message>
        <source>%1 could not be written: %2. Choose another folder or free some space, then try again.</source>
        <translation>%1 ließ sich nicht schreiben: %2. Einen anderen Ordner wählen oder Platz schaffen, dann noch einmal versuchen.</translation>
    </message>
    <message numerus="yes">
        <source>Writing %n readings…</source>
        <translation>
            <numerusform>%n Ablesung wird geschrieben…</numerusform>
            <numerusform>%n Ablesungen werden geschrieben…</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>RestoreText</name>
    <message>
        <source>%1 does not verify: choose another copy. (%2)</source>
        <translation>%1 ließ sich nicht bestätigen: eine andere Kopie wählen. (%2)</translation>
    </message>
    <message>
        <source>%1 is sound: %2 in %3 revisions.</source>
        <translation>%1 ist unversehrt: %2 in %3 Fassungen.</translation>
    </message>
    <message>
        <source>It could not be held against the other book. %1</source>
        <translation>Es ließ sich nicht mit dem anderen Buch vergleichen. %1</translation>
    </message>
    <message>
        <source>It was not held against the other book to the end.</source>
        <translation>Es wurde nicht bis zum Ende mit dem anderen Buch verglichen.</translation>
    </message>
    <message>
        <source>Restored and verified: %1, %2.</source>
        <translation>Wiederhergestellt und bestätigt: %1, %2.</translation>
    </message>
</context>
<context>
    <name>ReviewText</name>
    <message>
        <source>d MMM yyyy</source>
        <extracomment>day, short month and year, in Qt&apos;s date format</extracomment>
        <translation>d. MMM yyyy</translation>
    </message>
    <message>
        <source>%1–%2</source>
        <extracomment>a span of days within one month: 3–9 Jan 1881</extracomment>
        <translation>%1–%2</translation>
    </message>
    <message>
        <source>%1 – %2</source>
        <extracomment>a span from one month into another: 28 Jan – 2 Feb 1881</extracomment>
        <translation>%1 – %2</translation>
    </message>
    <message>
        <source>1 reading</source>
        <translation>1 Ablesung</translation>
    </message>
    <message numerus="yes">
        <source>%n readings</source>
        <translation>
            <numerusform>%n Ablesung</numerusform>
            <numerusform>%n Ablesungen</numerusform>
        </translation>
    </message>
    <message>
        <source>%1, %2, %3</source>
        <extracomment>what is asked, how many readings, when</extracomment>
        <translation>%1, %2, %3</translation>
    </message>
</context>
<context>
    <name>SalvageText</name>
    <message>
        <source>name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>place and hours</source>
        <translation>Ort und Termine</translation>
    </message>
    <message>
        <source>thermometer</source>
        <translation>Thermometer</translation>
    </message>
    <message>
        <source>which thermometers hang</source>
        <translation>welche Thermometer hängen</translation>
    </message>
    <message>
        <source>correction</source>
        <translation>Korrektion</translation>
    </message>
    <message>
        <source>limit of the checks</source>
        <translation>Grenzwert der Prüfungen</translation>
    </message>
    <message>
        <source>absence</source>
        <translation>Abwesenheit</translation>
    </message>
    <message>
        <source>diary</source>
        <translation>Chronik</translation>
    </message>
    <message>
        <source>check of the pair</source>
        <translation>Prüfung des Paars</translation>
    </message>
    <message>
        <source>check over salts</source>
        <translation>Prüfung über Salzen</translation>
    </message>
    <message>
        <source>comparison with another instrument</source>
        <translation>Vergleich mit einem anderen Gerät</translation>
    </message>
    <message>
        <source>a fact of a later version</source>
        <translation>eine Angabe einer neueren Fassung</translation>
    </message>
    <message>
        <source>salvaged from a damaged book</source>
        <translation>aus einem beschädigten Buch gerettet</translation>
    </message>
    <message>
        <source>salvage: bytes of this reading changed in the damaged book, so that it may not be what was read</source>
        <translation>Rettung: Bytes dieser Ablesung haben sich im beschädigten Buch geändert, sie muss nicht sein, was abgelesen wurde</translation>
    </message>
    <message>
        <source>salvage: a reading written later stands at this hour; what withdrew or moved this one is lost</source>
        <translation>Rettung: zu diesem Termin steht eine später geschriebene Ablesung; was diese zurückzog oder verlegte, ist verloren</translation>
    </message>
    <message>
        <source>Salvaged station, its facts lost</source>
        <translation>Gerettete Station, ihre Angaben verloren</translation>
    </message>
    <message>
        <source>%1 and %2 more</source>
        <translation>%1 und %2 weitere</translation>
    </message>
    <message>
        <source>Stopped: there is no new book, and the damaged one is as it was.</source>
        <translation>Abgebrochen: es gibt kein neues Buch, und das beschädigte ist, wie es war.</translation>
    </message>
    <message>
        <source>Everything came back: all %1 revisions are there and proved.</source>
        <translation>Alles kam zurück: alle %1 Fassungen sind da und bewiesen.</translation>
    </message>
    <message>
        <source>%1 of %2 revisions came back, %3 of them proved to be as they were written.</source>
        <translation>%1 von %2 Fassungen kamen zurück, %3 davon sind bewiesen, wie sie geschrieben wurden.</translation>
    </message>
    <message>
        <source>Revisions that can&apos;t be read and are lost: %1 (number %2). Look for them in the newest copy that verifies, or in the paper register.</source>
        <translation>Nicht lesbare, verlorene Fassungen: %1 (Nummer %2). In der neuesten bestätigten Kopie oder im Tagebuch auf Papier suchen.</translation>
    </message>
    <message>
        <source>Revisions that came in altered, as they now read: %1 (number %2).</source>
        <translation>Verändert hereingekommene Fassungen, wie sie jetzt lauten: %1 (Nummer %2).</translation>
    </message>
    <message>
        <source>Altered readings that are judged doubtful: %1. Compare them with the paper register, correct them, or judge them sound.</source>
        <translation>Veränderte Ablesungen, als zweifelhaft beurteilt: %1. Mit dem Papier vergleichen, berichtigen oder als in Ordnung beurteilen.</translation>
    </message>
    <message>
        <source>Facts of the station are altered (%1): check them on the pages Station and Instruments.</source>
        <translation>Angaben der Station sind verändert (%1): auf den Seiten Station und Geräte prüfen.</translation>
    </message>
    <message>
        <source>Revisions that can&apos;t be proved, since the one before is hurt: %1 (number %2). Nothing says that they changed.</source>
        <translation>Fassungen, die sich nicht beweisen lassen, weil die davor beschädigt ist: %1 (Nummer %2). Nichts spricht dafür, dass sie sich änderten.</translation>
    </message>
    <message>
        <source>Readings that became extra ones, judged doubtful: %1. A reading written later stands at their hour, and what withdrew or moved them is lost: withdraw them or give them another hour.</source>
        <translation>Ablesungen, die zu zusätzlichen wurden, als zweifelhaft beurteilt: %1. Zu ihrem Termin steht eine später geschriebene Ablesung, und was sie zurückzog oder verlegte, ist verloren: zurückziehen oder einen anderen Termin geben.</translation>
    </message>
    <message>
        <source>The station&apos;s name is lost: enter it, and what else is missing, on the pages Station and Instruments.</source>
        <translation>Der Name der Station ist verloren: ihn und was sonst fehlt auf den Seiten Station und Geräte eintragen.</translation>
    </message>
    <message>
        <source>%1 of %2 pages of the file could not be read as what they should be.</source>
        <translation>%1 von %2 Seiten der Datei ließen sich nicht als das lesen, was sie sein sollten.</translation>
    </message>
    <message>
        <source>A write that had been interrupted was taken back, as opening the book would have done.</source>
        <translation>Ein unterbrochener Schreibvorgang wurde zurückgenommen, wie es das Öffnen des Buchs getan hätte.</translation>
    </message>
</context>
<context>
    <name>SheetText</name>
    <message>
        <source>One bulb is missing.</source>
        <translation>Ein Thermometer fehlt.</translation>
    </message>
    <message>
        <source>Number</source>
        <translation>Nummer</translation>
    </message>
    <message>
        <source>Dry %1</source>
        <translation>Trocken %1</translation>
    </message>
    <message>
        <source>Wet %1</source>
        <translation>Feucht %1</translation>
    </message>
    <message>
        <source>Dry less wet</source>
        <translation>Trocken minus feucht</translation>
    </message>
    <message>
        <source>Humidity</source>
        <translation>Feuchte</translation>
    </message>
    <message>
        <source>What I notice</source>
        <translation>Was mir auffällt</translation>
    </message>
    <message>
        <source>Dry</source>
        <translation>Trocken</translation>
    </message>
    <message>
        <source>Relative humidity in %, ice on the wick</source>
        <translation>Relative Feuchte in %, Eis am Strumpf</translation>
    </message>
    <message>
        <source>Relative humidity in %</source>
        <translation>Relative Feuchte in %</translation>
    </message>
    <message>
        <source>Down: the dry bulb in %1. Across: dry less wet in %1. Where your row and your column meet stands the humidity.</source>
        <translation>Nach unten: trocken in %1. Nach rechts: trocken minus feucht in %1. Wo Zeile und Spalte sich treffen, steht die Feuchte.</translation>
    </message>
    <message>
        <source>Answers</source>
        <translation>Antworten</translation>
    </message>
    <message>
        <source>Questions</source>
        <translation>Fragen</translation>
    </message>
    <message>
        <source>The middle value stays where it is when a few go wrong; the mean would move with them. Pairs differ because thermometers, wicks, places and eyes do.</source>
        <translation>Der mittlere Wert bleibt, wo er ist, wenn einige danebenliegen; der Durchschnitt ginge mit. Paare unterscheiden sich, weil Thermometer, Strümpfe, Plätze und Augen es tun.</translation>
    </message>
    <message>
        <source>1. Write all humidities in order, lowest first. Which one stands in the middle?</source>
        <translation>1. Alle Feuchten der Größe nach aufschreiben, die kleinste zuerst. Welche steht in der Mitte?</translation>
    </message>
    <message>
        <source>2. Between which two values does the middle half of the class lie?</source>
        <translation>2. Zwischen welchen zwei Werten liegt die mittlere Hälfte der Klasse?</translation>
    </message>
    <message>
        <source>3. Whose pair is far from the others? What may have happened? How would you find out?</source>
        <translation>3. Wessen Paar liegt weit von den anderen? Was kann geschehen sein? Wie ließe es sich herausfinden?</translation>
    </message>
    <message>
        <source>4. Compare the mean with the middle value. Which of them moves when one wick is dry?</source>
        <translation>4. Den Durchschnitt mit dem mittleren Wert vergleichen. Welcher ändert sich, wenn ein Strumpf trocken ist?</translation>
    </message>
    <message>
        <source>How damp is the air? Answers</source>
        <translation>Wie feucht ist die Luft? Antworten</translation>
    </message>
    <message>
        <source>How damp is the air? Work sheet</source>
        <translation>Wie feucht ist die Luft? Arbeitsblatt</translation>
    </message>
    <message>
        <source>Date ____________   Time ____________   Place ______________________________</source>
        <translation>Datum ____________   Zeit ____________   Ort ______________________________</translation>
    </message>
    <message>
        <source>All read the same air at the same time. Wet the wick, move air past the bulbs until the wet one falls no further, read the wet bulb first and tenths before whole degrees. Write down what you read, also when it looks odd. You are a number here, not a name.</source>
        <translation>Alle lesen dieselbe Luft zur selben Zeit ab. Den Strumpf benetzen, Luft an den Thermometern vorbeibewegen, bis das feuchte nicht weiter fällt, erst feucht ablesen und Zehntel vor ganzen Graden. Aufschreiben, was abgelesen wurde, auch wenn es seltsam aussieht. Hier gelten Nummern, keine Namen.</translation>
    </message>
    <message>
        <source>Table and answers hold for this instrument (%1) and %2 hPa.</source>
        <translation>Tafel und Antworten gelten für dieses Gerät (%1) und %2&#xa0;hPa.</translation>
    </message>
</context>
<context>
    <name>SheetWords</name>
    <message>
        <source>Before printing · %1</source>
        <translation>Vor dem Drucken · %1</translation>
    </message>
    <message>
        <source>Sent to the printer.</source>
        <translation>An den Drucker geschickt.</translation>
    </message>
    <message>
        <source>The printer took nothing: look whether it is on, and try again.</source>
        <translation>Der Drucker nahm nichts an: nachsehen, ob er an ist, und noch einmal versuchen.</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>Written to %1.</source>
        <translation>Geschrieben nach %1.</translation>
    </message>
</context>
<context>
    <name>SigningText</name>
    <message>
        <source>expected</source>
        <translation>erwartet</translation>
    </message>
    <message>
        <source>counted (n)</source>
        <translation>gezählt (n)</translation>
    </message>
    <message>
        <source>missing</source>
        <translation>fehlend</translation>
    </message>
    <message>
        <source>set aside</source>
        <translation>beiseite</translation>
    </message>
    <message>
        <source>mean dry bulb, °C</source>
        <translation>Mittel trocken, °C</translation>
    </message>
    <message>
        <source>mean wet bulb, °C</source>
        <translation>Mittel feucht, °C</translation>
    </message>
    <message>
        <source>mean vapour pressure, hPa</source>
        <translation>mittlerer Dampfdruck, hPa</translation>
    </message>
    <message>
        <source>dew point of the mean vapour pressure, °C</source>
        <translation>Taupunkt des mittleren Dampfdrucks, °C</translation>
    </message>
    <message>
        <source>mean dew point, °C</source>
        <translation>mittlerer Taupunkt, °C</translation>
    </message>
    <message>
        <source>mean relative humidity, %</source>
        <translation>mittlere relative Feuchte, %</translation>
    </message>
    <message>
        <source>highest relative humidity, %</source>
        <translation>höchste relative Feuchte, %</translation>
    </message>
    <message>
        <source>lowest relative humidity, %</source>
        <translation>niedrigste relative Feuchte, %</translation>
    </message>
    <message>
        <source>highest dew point, °C</source>
        <translation>höchster Taupunkt, °C</translation>
    </message>
    <message>
        <source>lowest dew point, °C</source>
        <translation>niedrigster Taupunkt, °C</translation>
    </message>
    <message>
        <source>why there is no mean</source>
        <translation>warum es kein Mittel gibt</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <source>one reading revised</source>
        <translation>eine Ablesung berichtigt</translation>
    </message>
    <message numerus="yes">
        <source>%n readings revised</source>
        <translation>
            <numerusform>%n Ablesung berichtigt</numerusform>
            <numerusform>%n Ablesungen berichtigt</numerusform>
        </translation>
    </message>
    <message>
        <source>one reading added</source>
        <translation>eine Ablesung dazugekommen</translation>
    </message>
    <message numerus="yes">
        <source>%n readings added</source>
        <translation>
            <numerusform>%n Ablesung dazugekommen</numerusform>
            <numerusform>%n Ablesungen dazugekommen</numerusform>
        </translation>
    </message>
    <message>
        <source>one reading taken out</source>
        <translation>eine Ablesung herausgenommen</translation>
    </message>
    <message numerus="yes">
        <source>%n readings taken out</source>
        <translation>
            <numerusform>%n Ablesung herausgenommen</numerusform>
            <numerusform>%n Ablesungen herausgenommen</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 %2 → %3</source>
        <extracomment>%1 a number&apos;s name, %2 and %3 its value as signed and now</extracomment>
        <translation>%1 %2 → %3</translation>
    </message>
    <message>
        <source>at %1 %2</source>
        <translation>um %1 %2</translation>
    </message>
    <message>
        <source>%1 more</source>
        <translation>%1 weitere</translation>
    </message>
    <message>
        <source>Signed off by %1 on %2.</source>
        <extracomment>%1 initials or a name, %2 a date</extracomment>
        <translation>Abgezeichnet von %1 am %2.</translation>
    </message>
    <message>
        <source>Note: %1.</source>
        <translation>Notiz: %1.</translation>
    </message>
    <message>
        <source>Queries then open: %1.</source>
        <translation>Damals offene Rückfragen: %1.</translation>
    </message>
    <message>
        <source>Nothing has changed since.</source>
        <translation>Seither hat sich nichts geändert.</translation>
    </message>
    <message>
        <source>Changed since it was signed: %1.</source>
        <translation>Geändert, seit abgezeichnet wurde: %1.</translation>
    </message>
</context>
<context>
    <name>TakeInText</name>
    <message>
        <source>date and time</source>
        <translation>Datum und Zeit</translation>
    </message>
    <message>
        <source>date</source>
        <translation>Datum</translation>
    </message>
    <message>
        <source>observing hour</source>
        <translation>Termin</translation>
    </message>
    <message>
        <source>clock time</source>
        <translation>Uhrzeit</translation>
    </message>
    <message>
        <source>dry bulb</source>
        <translation>trockenes Thermometer</translation>
    </message>
    <message>
        <source>wet bulb</source>
        <translation>feuchtes Thermometer</translation>
    </message>
    <message>
        <source>wick</source>
        <translation>Strumpf</translation>
    </message>
    <message>
        <source>pressure, hPa</source>
        <translation>Luftdruck, hPa</translation>
    </message>
    <message>
        <source>weather</source>
        <translation>Wetter</translation>
    </message>
    <message>
        <source>wind, Beaufort</source>
        <translation>Wind, Beaufort</translation>
    </message>
    <message>
        <source>maximum</source>
        <translation>Maximum</translation>
    </message>
    <message>
        <source>minimum</source>
        <translation>Minimum</translation>
    </message>
    <message>
        <source>note</source>
        <translation>Hinweis</translation>
    </message>
    <message>
        <source>observer</source>
        <translation>Beobachter</translation>
    </message>
    <message>
        <source>origin</source>
        <translation>Herkunft</translation>
    </message>
    <message>
        <source>quality</source>
        <translation>Güte</translation>
    </message>
    <message>
        <source>unit of the bulbs</source>
        <translation>Einheit der Thermometer</translation>
    </message>
    <message>
        <source>pressure source</source>
        <translation>Herkunft des Luftdrucks</translation>
    </message>
    <message>
        <source>unit of maximum and minimum</source>
        <translation>Einheit von Maximum und Minimum</translation>
    </message>
    <message>
        <source>care of the wick</source>
        <translation>Pflege des Strumpfs</translation>
    </message>
    <message>
        <source>whirls</source>
        <translation>Durchgänge</translation>
    </message>
    <message>
        <source>why missing</source>
        <translation>warum fehlend</translation>
    </message>
    <message>
        <source>copied from paper</source>
        <translation>vom Papier abgeschrieben</translation>
    </message>
    <message>
        <source>paper book</source>
        <translation>Buch auf Papier</translation>
    </message>
    <message>
        <source>paper page</source>
        <translation>Seite auf Papier</translation>
    </message>
    <message>
        <source>read back</source>
        <translation>gegengelesen</translation>
    </message>
    <message>
        <source>time zone</source>
        <translation>Zeitzone</translation>
    </message>
    <message>
        <source>offset from UTC</source>
        <translation>Abstand von UTC</translation>
    </message>
    <message>
        <source>Say above which column is the date and time, or which are the date and the hour.</source>
        <translation>Oben angeben, welche Spalte Datum und Zeit ist oder welche Datum und Termin.</translation>
    </message>
    <message>
        <source>Say above which column is the dry bulb and which the wet bulb.</source>
        <translation>Oben angeben, welche Spalte trocken und welche feucht ist.</translation>
    </message>
    <message>
        <source>Two columns can&apos;t be the same: choose “left aside” for one of them.</source>
        <translation>Zwei Spalten können nicht dasselbe sein: für eine „beiseite“ wählen.</translation>
    </message>
    <message>
        <source>%1 has more than %2 lines, too many to be shown one by one: bring it in with the command wickbook import, or in parts.</source>
        <translation>%1 hat mehr als %2 Zeilen, zu viele, um sie einzeln zu zeigen: mit dem Befehl wickbook import einlesen oder in Teilen.</translation>
    </message>
    <message>
        <source>new</source>
        <translation>neu</translation>
    </message>
    <message>
        <source>new, marked</source>
        <translation>neu, angemerkt</translation>
    </message>
    <message>
        <source>there already</source>
        <translation>schon da</translation>
    </message>
    <message>
        <source>conflict: kept</source>
        <translation>Widerspruch: behalten</translation>
    </message>
    <message>
        <source>conflict: revised</source>
        <translation>Widerspruch: berichtigt</translation>
    </message>
    <message>
        <source>conflict: left out</source>
        <translation>Widerspruch: weggelassen</translation>
    </message>
    <message>
        <source>left out</source>
        <translation>weggelassen</translation>
    </message>
    <message>
        <source>“%1” came twice that night, when the clocks went back: say above which is meant.</source>
        <translation>„%1“ kam in jener Nacht zweimal, als die Uhren zurückgestellt wurden: oben angeben, was gemeint ist.</translation>
    </message>
    <message>
        <source>“%1” can be read as day and month or as month and day: say above which.</source>
        <translation>„%1“ lässt sich als Tag und Monat oder als Monat und Tag lesen: oben angeben, was gilt.</translation>
    </message>
    <message>
        <source>The bulbs agree; the file differs in what stands beside them.</source>
        <translation>Die Thermometer stimmen überein; die Datei unterscheidet sich in dem, was daneben steht.</translation>
    </message>
    <message>
        <source>The book has %1, the file %2.</source>
        <translation>Das Buch hat %1, die Datei %2.</translation>
    </message>
    <message>
        <source>The old one stays in the history.</source>
        <translation>Das alte bleibt in der Geschichte.</translation>
    </message>
    <message>
        <source>%1 new</source>
        <translation>%1 neu</translation>
    </message>
    <message>
        <source>(%1 marked)</source>
        <translation>(%1 angemerkt)</translation>
    </message>
    <message>
        <source>%1 there already</source>
        <translation>%1 schon da</translation>
    </message>
    <message>
        <source>%1 in conflict with the book</source>
        <translation>%1 im Widerspruch zum Buch</translation>
    </message>
    <message>
        <source>%1 that can&apos;t come in</source>
        <translation>%1, die nicht hereinkommen</translation>
    </message>
    <message>
        <source>The first %1 lines of a long file</source>
        <translation>Die ersten %1 Zeilen einer langen Datei</translation>
    </message>
    <message>
        <source>One line</source>
        <translation>Eine Zeile</translation>
    </message>
    <message numerus="yes">
        <source>%1 lines</source>
        <translation>
            <numerusform>%1 Zeile</numerusform>
            <numerusform>%1 Zeilen</numerusform>
        </translation>
    </message>
    <message>
        <source>semicolon</source>
        <translation>Strichpunkt</translation>
    </message>
    <message>
        <source>tab</source>
        <translation>Tabulator</translation>
    </message>
    <message>
        <source>comma</source>
        <translation>Komma</translation>
    </message>
</context>
<context>
    <name>TakenText</name>
    <message>
        <source>%1 is open in another window, which was brought forward: go on there.</source>
        <translation>%1 ist in einem anderen Fenster offen, das nach vorn geholt wurde: dort weitermachen.</translation>
    </message>
    <message>
        <source>%1 is open in another window and can only be read here: close it there, then open it here again.</source>
        <translation>%1 ist in einem anderen Fenster offen und lässt sich hier nur lesen: dort schließen, dann hier noch einmal öffnen.</translation>
    </message>
    <message>
        <source>%1 is open on the computer %2 and can only be read here: close it there, then open it here again.</source>
        <translation>%1 ist auf dem Rechner %2 offen und lässt sich hier nur lesen: dort schließen, dann hier noch einmal öffnen.</translation>
    </message>
</context>
<context>
    <name>TermText</name>
    <message>
        <source>drawn by a fan</source>
        <translation>belüftet</translation>
    </message>
    <message>
        <source>whirled by hand</source>
        <translation>von Hand geschleudert</translation>
    </message>
    <message>
        <source>sling, US practice</source>
        <translation>Schleuder, US-Verfahren</translation>
    </message>
    <message>
        <source>in a louvred screen</source>
        <translation>in einer Hütte mit Jalousien</translation>
    </message>
    <message>
        <source>still air indoors</source>
        <translation>unbewegte Luft im Raum</translation>
    </message>
    <message>
        <source>own coefficient</source>
        <translation>eigener Koeffizient</translation>
    </message>
    <message>
        <source>A fan draws air past both bulbs at 2.5 m/s or more.</source>
        <translation>Ein Lüfter zieht die Luft mit 2,5&#xa0;m/s oder mehr an beiden Thermometern vorbei.</translation>
    </message>
    <message>
        <source>The frame is whirled by hand, 3 m/s or more at the bulbs.</source>
        <translation>Der Rahmen wird von Hand geschleudert, mit 3&#xa0;m/s oder mehr an den Thermometern.</translation>
    </message>
    <message>
        <source>A sling with the coefficient of the older US tables.</source>
        <translation>Eine Schleuder mit dem Koeffizienten der älteren US-Tafeln.</translation>
    </message>
    <message>
        <source>Both thermometers hang in a louvred screen, in natural air of about 1 m/s.</source>
        <translation>Beide Thermometer hängen in einer Hütte mit Jalousien, in natürlicher Luft von etwa 1&#xa0;m/s.</translation>
    </message>
    <message>
        <source>No ventilation. The humidity is only a rough guide.</source>
        <translation>Keine Belüftung. Die Feuchte ist nur ein grober Anhalt.</translation>
    </message>
    <message>
        <source>A coefficient fitted by comparison at this station.</source>
        <translation>Ein durch Vergleich an dieser Station bestimmter Koeffizient.</translation>
    </message>
    <message>
        <source>water</source>
        <translation>Wasser</translation>
    </message>
    <message>
        <source>ice</source>
        <translation>Eis</translation>
    </message>
    <message>
        <source>haze</source>
        <translation>trockener Dunst</translation>
    </message>
    <message>
        <source>mist</source>
        <translation>feuchter Dunst</translation>
    </message>
    <message>
        <source>fog</source>
        <translation>Nebel</translation>
    </message>
    <message>
        <source>drizzle</source>
        <translation>Sprühregen</translation>
    </message>
    <message>
        <source>rain</source>
        <translation>Regen</translation>
    </message>
    <message>
        <source>snow</source>
        <translation>Schnee</translation>
    </message>
    <message>
        <source>sleet</source>
        <translation>Schneeregen</translation>
    </message>
    <message>
        <source>hail</source>
        <translation>Hagel</translation>
    </message>
    <message>
        <source>thunder</source>
        <translation>Gewitter</translation>
    </message>
    <message>
        <source>dew</source>
        <translation>Tau</translation>
    </message>
    <message>
        <source>hoar frost</source>
        <translation>Reif</translation>
    </message>
    <message>
        <source>rime</source>
        <translation>Raueis</translation>
    </message>
    <message>
        <source>glaze</source>
        <translation>Klareis</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <source>observed</source>
        <translation>beobachtet</translation>
    </message>
    <message>
        <source>corrected</source>
        <translation>berichtigt</translation>
    </message>
    <message>
        <source>estimated</source>
        <translation>geschätzt</translation>
    </message>
    <message>
        <source>missing</source>
        <translation>fehlend</translation>
    </message>
    <message>
        <source>not judged</source>
        <translation>nicht beurteilt</translation>
    </message>
    <message>
        <source>sound</source>
        <translation>in Ordnung</translation>
    </message>
    <message>
        <source>doubtful</source>
        <translation>zweifelhaft</translation>
    </message>
    <message>
        <source>erroneous</source>
        <translation>falsch</translation>
    </message>
    <message>
        <source>UTC</source>
        <translation>UTC</translation>
    </message>
    <message>
        <source>standard time, all the year</source>
        <translation>Normalzeit, das ganze Jahr</translation>
    </message>
    <message>
        <source>the clock, with summer time</source>
        <translation>die Uhr, mit Sommerzeit</translation>
    </message>
    <message>
        <source>read</source>
        <translation>abgelesen</translation>
    </message>
    <message>
        <source>station mean</source>
        <translation>Stationsmittel</translation>
    </message>
    <message>
        <source>from elevation</source>
        <translation>aus der Höhe</translation>
    </message>
    <message>
        <source>WMO-No. 1203</source>
        <translation>WMO-Nr. 1203</translation>
    </message>
    <message>
        <source>this station&apos;s rule</source>
        <translation>Regel dieser Station</translation>
    </message>
    <message>
        <source>No mean: %1 or more days are missing (%2).</source>
        <translation>Kein Mittel: %1 oder mehr Tage fehlen (%2).</translation>
    </message>
    <message>
        <source>No mean: %1 or more days in a row are missing (%2).</source>
        <translation>Kein Mittel: %1 oder mehr Tage hintereinander fehlen (%2).</translation>
    </message>
    <message>
        <source>No mean: nothing was read.</source>
        <translation>Kein Mittel: nichts wurde abgelesen.</translation>
    </message>
    <message>
        <source>invented station</source>
        <translation>erfundene Station</translation>
    </message>
    <message>
        <source>Whirl in clear space, away from people, walls and glasses: keep 1.5 m clear. Check the cord, the swivel and the binding first. Not in a thunderstorm, and mind the ground underfoot.</source>
        <translation>In freiem Raum schleudern, fern von Menschen, Wänden und Gläsern: 1,5&#xa0;m frei halten. Vorher Schnur, Wirbel und Bindung prüfen. Nicht bei Gewitter, und auf den Boden unter den Füßen achten.</translation>
    </message>
    <message>
        <source>Broken glass cuts. Spilled mercury is poisonous: leave the room, air it, use neither broom nor vacuum cleaner, and follow your local rules for disposal. Prefer spirit thermometers.</source>
        <translation>Zerbrochenes Glas schneidet. Verschüttetes Quecksilber ist giftig: den Raum verlassen, lüften, weder Besen noch Staubsauger nehmen und es nach den örtlichen Vorschriften entsorgen. Besser Alkoholthermometer verwenden.</translation>
    </message>
    <message>
        <source>In frost look out for ice on the path, the ladder and the screen; in heat, for yourself.</source>
        <translation>Bei Frost auf Eis am Weg, an der Leiter und an der Hütte achten; bei Hitze auf sich selbst.</translation>
    </message>
    <message>
        <source>These numbers serve a weather register. They are not for aviation, heat stress, spraying, burning, frost protection, food or process safety, medical or legal decisions, nor for claims of records: those need instruments and people licensed for them.</source>
        <translation>Diese Zahlen dienen einem Wettertagebuch. Sie sind nicht für Luftfahrt, Hitzebelastung, Spritzen, Abbrennen, Frostschutz, Lebensmittel- oder Prozesssicherheit, medizinische oder rechtliche Entscheidungen und nicht zum Beleg von Rekorden: das verlangt Geräte und Menschen, die dafür zugelassen sind.</translation>
    </message>
</context>
<context>
    <name>UsualText</name>
    <message>
        <source>normal of %1 years</source>
        <extracomment>%1 number of years</extracomment>
        <translation>Normalwert aus %1 Jahren</translation>
    </message>
    <message>
        <source>average of %1 other years</source>
        <translation>Mittel aus %1 anderen Jahren</translation>
    </message>
    <message>
        <source>That is about as usual at this station (%1: %2).</source>
        <extracomment>%1 &quot;average of 12 other years&quot;, %2 a humidity</extracomment>
        <translation>Das ist etwa wie üblich an dieser Station (%1: %2).</translation>
    </message>
    <message>
        <source>It was drier than usual at this station (%1: %2).</source>
        <translation>Es war trockener als üblich an dieser Station (%1: %2).</translation>
    </message>
    <message>
        <source>It was moister than usual at this station (%1: %2).</source>
        <translation>Es war feuchter als üblich an dieser Station (%1: %2).</translation>
    </message>
    <message>
        <source>It was the driest such month of this station&apos;s record (%1: %2; until now %3 with %4).</source>
        <extracomment>%1 and %2 as above, %3 a year, %4 its humidity</extracomment>
        <translation>Es war der trockenste solche Monat in der Reihe dieser Station (%1: %2; bisher %3 mit %4).</translation>
    </message>
    <message>
        <source>It was the moistest such month of this station&apos;s record (%1: %2; until now %3 with %4).</source>
        <translation>Es war der feuchteste solche Monat in der Reihe dieser Station (%1: %2; bisher %3 mit %4).</translation>
    </message>
    <message>
        <source>The air held more vapour than usual: the dew point&apos;s average is %1.</source>
        <translation>Die Luft enthielt mehr Dampf als üblich: das Mittel des Taupunkts ist %1.</translation>
    </message>
    <message>
        <source>The air held less vapour than usual: the dew point&apos;s average is %1.</source>
        <translation>Die Luft enthielt weniger Dampf als üblich: das Mittel des Taupunkts ist %1.</translation>
    </message>
    <message>
        <source>No station average of this month yet: it takes %1 other years with a mean, at the same place and hours, and there are %2.</source>
        <translation>Noch kein Stationsmittel dieses Monats: es braucht %1 andere Jahre mit einem Mittel, am selben Ort und zu denselben Terminen, und es gibt %2.</translation>
    </message>
    <message>
        <source>RH %1</source>
        <translation>rF %1</translation>
    </message>
    <message>
        <source>dew point %1</source>
        <translation>Taupunkt %1</translation>
    </message>
    <message>
        <source>vapour pressure %1 hPa</source>
        <translation>Dampfdruck %1&#xa0;hPa</translation>
    </message>
    <message>
        <source>%1 hPa</source>
        <translation>%1&#xa0;hPa</translation>
    </message>
    <message>
        <source>This month here, %1: %2.</source>
        <extracomment>%1 &quot;average of 12 other years&quot;, %2 its numbers</extracomment>
        <translation>Dieser Monat hier, %1: %2.</translation>
    </message>
    <message>
        <source>Departure: %1.</source>
        <translation>Abweichung: %1.</translation>
    </message>
</context>
<context>
    <name>WorkingTextContext</name>
    <message>
        <source>dry bulb, scale and correction</source>
        <translation>trocken, Skala und Korrektion</translation>
    </message>
    <message>
        <source>wet bulb, scale and correction</source>
        <translation>feucht, Skala und Korrektion</translation>
    </message>
    <message>
        <source>what the two corrections share</source>
        <translation>was beide Korrektionen gemeinsam haben</translation>
    </message>
    <message>
        <source>coefficient of the exposure</source>
        <translation>Koeffizient der Aufstellung</translation>
    </message>
    <message>
        <source>pressure</source>
        <translation>Luftdruck</translation>
    </message>
    <message>
        <source>%1 °C</source>
        <translation>%1&#xa0;°C</translation>
    </message>
    <message>
        <source>%1 °F, that is %2</source>
        <translation>%1&#xa0;°F, das sind %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1: read %2 %3, correction %4 %3, so %5</source>
        <translation>%1: abgelesen %2&#xa0;%3, Korrektion %4&#xa0;%3, also %5</translation>
    </message>
    <message>
        <source>The wet bulb stands above the dry bulb within the reading&apos;s error: the air is taken as saturated, and e is what it can hold at the dry bulb.</source>
        <translation>Feucht steht im Rahmen des Ablesefehlers über trocken: die Luft gilt als gesättigt, und e ist, was sie bei der Temperatur des trockenen Thermometers halten kann.</translation>
    </message>
    <message>
        <source>e = f·e&lt;sub&gt;w&lt;/sub&gt;(t) = %1 × %2 = &lt;b&gt;%3 hPa&lt;/b&gt;</source>
        <translation>e = f·e&lt;sub&gt;w&lt;/sub&gt;(t) = %1 × %2 = &lt;b&gt;%3 hPa&lt;/b&gt;</translation>
    </message>
    <message>
        <source>Over the wet bulb, %1 °C, %2: e&lt;sub&gt;s&lt;/sub&gt; = %3 hPa</source>
        <translation>Über dem feuchten Thermometer, %1&#xa0;°C, %2: e&lt;sub&gt;s&lt;/sub&gt; = %3&#xa0;hPa</translation>
    </message>
    <message>
        <source>ice</source>
        <translation>Eis</translation>
    </message>
    <message>
        <source>water</source>
        <translation>Wasser</translation>
    </message>
    <message>
        <source>e = f·e&lt;sub&gt;s&lt;/sub&gt;(t&lt;sub&gt;w&lt;/sub&gt;) − A·p·(t − t&lt;sub&gt;w&lt;/sub&gt;)</source>
        <translation>e = f·e&lt;sub&gt;s&lt;/sub&gt;(t&lt;sub&gt;f&lt;/sub&gt;) − A·p·(t − t&lt;sub&gt;f&lt;/sub&gt;)</translation>
    </message>
    <message>
        <source>e = %1 × %2 − %3 × 10⁻⁴ × %4 × (%5 − %6) = &lt;b&gt;%7 hPa&lt;/b&gt;</source>
        <translation>e = %1 × %2 − %3 × 10⁻⁴ × %4 × (%5 − %6) = &lt;b&gt;%7 hPa&lt;/b&gt;</translation>
    </message>
    <message>
        <source>Dew point: where %1 hPa would be saturation over water: %2</source>
        <translation>Taupunkt: wo %1&#xa0;hPa Sättigung über Wasser wären: %2</translation>
    </message>
    <message>
        <source>Frost point: where it would be saturation over ice: %1</source>
        <translation>Reifpunkt: wo es Sättigung über Eis wäre: %1</translation>
    </message>
    <message>
        <source>Dry bulb</source>
        <translation>Trocken</translation>
    </message>
    <message>
        <source>Wet bulb</source>
        <translation>Feucht</translation>
    </message>
    <message>
        <source>Saturated at the dry bulb, %1 °C, over water: e&lt;sub&gt;w&lt;/sub&gt; = %2 hPa</source>
        <translation>Gesättigt am trockenen Thermometer, %1&#xa0;°C, über Wasser: e&lt;sub&gt;w&lt;/sub&gt; = %2&#xa0;hPa</translation>
    </message>
    <message>
        <source>Relative humidity = 100 × %1 ÷ (%2 × %3) = &lt;b&gt;%4 %&lt;/b&gt;</source>
        <translation>Relative Feuchte = 100 × %1 ÷ (%2 × %3) = &lt;b&gt;%4 %&lt;/b&gt;</translation>
    </message>
    <message>
        <source>each by itself (one standard uncertainty)</source>
        <translation>jedes für sich (eine Standardunsicherheit)</translation>
    </message>
    <message>
        <source>together, twice the root of the squares: ±</source>
        <translation>zusammen, das Doppelte der Wurzel der Quadrate: ±</translation>
    </message>
    <message>
        <source>dry ↓ depression →</source>
        <translation>trocken ↓ Differenz →</translation>
    </message>
    <message>
        <source>The same from this station&apos;s table</source>
        <translation>Dasselbe aus der Tafel dieser Station</translation>
    </message>
    <message>
        <source>Relative humidity in %, wick as ice, at %1 hPa, degrees in %2.</source>
        <translation>Relative Feuchte in %, Strumpf als Eis, bei %1&#xa0;hPa, Grade in %2.</translation>
    </message>
    <message>
        <source>Relative humidity in %, wick as water, at %1 hPa, degrees in %2.</source>
        <translation>Relative Feuchte in %, Strumpf als Wasser, bei %1&#xa0;hPa, Grade in %2.</translation>
    </message>
    <message>
        <source>The cell is empty: there is no air with this depression.</source>
        <translation>Die Zelle ist leer: es gibt keine Luft mit dieser Differenz.</translation>
    </message>
    <message>
        <source>The reading&apos;s own row and column stand between the printed ones.</source>
        <translation>Zeile und Spalte der Ablesung liegen zwischen den gedruckten.</translation>
    </message>
    <message>
        <source>Both bulbs are needed for the working.</source>
        <translation>Für den Rechengang braucht es beide Thermometer.</translation>
    </message>
    <message>
        <source>How sure</source>
        <translation>Wie sicher</translation>
    </message>
    <message>
        <source>The working</source>
        <translation>Der Rechengang</translation>
    </message>
    <message>
        <source>The working: %1</source>
        <translation>Der Rechengang: %1</translation>
    </message>
</context>
<context>
    <name>YearsText</name>
    <message>
        <source>Relative humidity, %</source>
        <translation>Relative Feuchte, %</translation>
    </message>
    <message>
        <source>Dew point, %1</source>
        <translation>Taupunkt, %1</translation>
    </message>
    <message>
        <source>%1 to %2, other years: %3</source>
        <translation>%1 bis %2, andere Jahre: %3</translation>
    </message>
</context>
<context>
    <name>charts</name>
    <message>
        <source>MMM yyyy</source>
        <extracomment>short month and year, in Qt&apos;s date format, below a chart</extracomment>
        <translation>MMM yyyy</translation>
    </message>
    <message>
        <source>Relative humidity, %</source>
        <translation>Relative Feuchte, %</translation>
    </message>
    <message>
        <source>Dew point, %1</source>
        <translation>Taupunkt, %1</translation>
    </message>
</context>
<context>
    <name>missing</name>
    <message>
        <source>away</source>
        <translation>abwesend</translation>
    </message>
    <message>
        <source>ill</source>
        <translation>krank</translation>
    </message>
    <message>
        <source>wick dry</source>
        <translation>Strumpf trocken</translation>
    </message>
    <message>
        <source>broken</source>
        <translation>zerbrochen</translation>
    </message>
    <message>
        <source>forgotten</source>
        <translation>vergessen</translation>
    </message>
</context>
<context>
    <name>oldpage</name>
    <message>
        <source>Dry</source>
        <translation>Trocken</translation>
    </message>
    <message>
        <source>Dry bulb as read</source>
        <translation>Trocken wie abgelesen</translation>
    </message>
    <message>
        <source>dry bulb</source>
        <translation>trockenes Thermometer</translation>
    </message>
    <message>
        <source>Wet</source>
        <translation>Feucht</translation>
    </message>
    <message>
        <source>Wet bulb as read</source>
        <translation>Feucht wie abgelesen</translation>
    </message>
    <message>
        <source>wet bulb</source>
        <translation>feuchtes Thermometer</translation>
    </message>
    <message>
        <source>Wick</source>
        <translation>Strumpf</translation>
    </message>
    <message>
        <source>Water or ice on the wick</source>
        <translation>Wasser oder Eis am Strumpf</translation>
    </message>
    <message>
        <source>wick</source>
        <translation>Strumpf</translation>
    </message>
    <message>
        <source>Weather</source>
        <translation>Wetter</translation>
    </message>
    <message>
        <source>weather</source>
        <translation>Wetter</translation>
    </message>
    <message>
        <source>Wind</source>
        <translation>Wind</translation>
    </message>
    <message>
        <source>Wind, Beaufort force</source>
        <translation>Wind, Beaufort-Stärke</translation>
    </message>
    <message>
        <source>wind</source>
        <translation>Wind</translation>
    </message>
    <message>
        <source>hPa</source>
        <translation>hPa</translation>
    </message>
    <message>
        <source>Pressure, hPa</source>
        <translation>Luftdruck, hPa</translation>
    </message>
    <message>
        <source>pressure</source>
        <translation>Luftdruck</translation>
    </message>
    <message>
        <source>Max</source>
        <translation>Max</translation>
    </message>
    <message>
        <source>Maximum as read</source>
        <translation>Maximum wie abgelesen</translation>
    </message>
    <message>
        <source>maximum</source>
        <translation>Maximum</translation>
    </message>
    <message>
        <source>Min</source>
        <translation>Min</translation>
    </message>
    <message>
        <source>Minimum as read</source>
        <translation>Minimum wie abgelesen</translation>
    </message>
    <message>
        <source>minimum</source>
        <translation>Minimum</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>note</source>
        <translation>Hinweis</translation>
    </message>
</context>
<context>
    <name>paper</name>
    <message>
        <source>p. %1</source>
        <extracomment>page of a paper register</extracomment>
        <translation>S. %1</translation>
    </message>
</context>
<context>
    <name>print</name>
    <message>
        <source>%1 (%2)</source>
        <extracomment>%1 the station&apos;s name, %2 a mark such as &quot;invented station&quot;</extracomment>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <extracomment>%1 the station, %2 a month and its year</extracomment>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>Relative humidity and dew point at observing hours</source>
        <translation>Relative Feuchte und Taupunkt zu den Terminen</translation>
    </message>
</context>
<context>
    <name>settings</name>
    <message>
        <source>What the window remembers (%1) can&apos;t be read, nor put aside: books are not concerned, but the window begins with its usual settings. Delete the file.</source>
        <translation>Was sich das Fenster merkt (%1), lässt sich weder lesen noch beiseitelegen: die Bücher betrifft das nicht, aber das Fenster beginnt mit den üblichen Einstellungen. Die Datei löschen.</translation>
    </message>
    <message>
        <source>What the window remembers (%1) could not be read and was put aside: books are not concerned. The window begins with its usual settings; open the book again.</source>
        <translation>Was sich das Fenster merkt (%1), ließ sich nicht lesen und wurde beiseitegelegt: die Bücher betrifft das nicht. Das Fenster beginnt mit den üblichen Einstellungen; das Buch noch einmal öffnen.</translation>
    </message>
</context>
<context>
    <name>text</name>
    <message>
        <source>below scale</source>
        <translation>unter der Skala</translation>
    </message>
    <message>
        <source>%1 h</source>
        <extracomment>%1 is an hour of the day, 9 or 9:30; &quot;h&quot; as in a register&apos;s column head</extracomment>
        <translation>%1&#xa0;Uhr</translation>
    </message>
    <message>
        <source>dddd d MMMM yyyy</source>
        <extracomment>day of the week, day, month and year, in Qt&apos;s date format</extracomment>
        <translation>dddd, d. MMMM yyyy</translation>
    </message>
    <message>
        <source>d MMM</source>
        <extracomment>day and short month, in Qt&apos;s date format</extracomment>
        <translation>d. MMM</translation>
    </message>
    <message>
        <source>d MMM yyyy</source>
        <extracomment>day, short month and year, in Qt&apos;s date format</extracomment>
        <translation>d. MMM yyyy</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <extracomment>%1 a date, %2 an hour</extracomment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>MMMM yyyy</source>
        <extracomment>month and year, in Qt&apos;s date format</extracomment>
        <translation>MMMM yyyy</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::AbsenceForm</name>
    <message>
        <source>Absence</source>
        <translation>Abwesenheit</translation>
    </message>
    <message>
        <source>Change an absence</source>
        <translation>Eine Abwesenheit ändern</translation>
    </message>
    <message>
        <source>An absence ahead</source>
        <translation>Eine künftige Abwesenheit</translation>
    </message>
    <message>
        <source>Without a deputy, hours missed on these days have their reason by themselves. A reading made all the same counts as always.</source>
        <translation>Ohne Vertretung haben an diesen Tagen versäumte Termine ihren Grund von selbst. Eine dennoch gemachte Ablesung zählt wie immer.</translation>
    </message>
    <message>
        <source>First day, year-month-day</source>
        <translation>Erster Tag, Jahr-Monat-Tag</translation>
    </message>
    <message>
        <source>Last day</source>
        <translation>Letzter Tag</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Warum</translation>
    </message>
    <message>
        <source>nobody</source>
        <translation>niemand</translation>
    </message>
    <message>
        <source>Who reads meanwhile, initials</source>
        <translation>Wer inzwischen abliest, Kürzel</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>Keep it</source>
        <translation>Behalten</translation>
    </message>
    <message>
        <source>Put the last day on or after the first; it lies before it.</source>
        <translation>Der letzte Tag liegt vor dem ersten: auf ihn oder danach legen.</translation>
    </message>
    <message>
        <source>Choose a reason or write one in your own words.</source>
        <translation>Einen Grund wählen oder mit eigenen Worten schreiben.</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::AbsenceSection</name>
    <message>
        <source>&amp;Absences and deputies</source>
        <translation>&amp;Abwesenheiten und Vertretungen</translation>
    </message>
    <message>
        <source>An absence a&amp;head…</source>
        <translation>Eine künftige Ab&amp;wesenheit…</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>nobody reads</source>
        <translation>niemand liest ab</translation>
    </message>
    <message>
        <source>%1 reads</source>
        <translation>%1 liest ab</translation>
    </message>
    <message>
        <source>No absence is written down. Enter one ahead, with whoever reads meanwhile: then the gap has its reason.</source>
        <translation>Keine Abwesenheit eingetragen. Eine künftige eintragen, mit der Vertretung: dann hat die Lücke ihren Grund.</translation>
    </message>
    <message>
        <source>absence changed: %1</source>
        <translation>Abwesenheit geändert: %1</translation>
    </message>
    <message>
        <source>absence: %1</source>
        <translation>Abwesenheit: %1</translation>
    </message>
    <message>
        <source>Kept. Undo takes it back.</source>
        <translation>Behalten. Rückgängig nimmt es zurück.</translation>
    </message>
    <message>
        <source>absence taken back: %1</source>
        <translation>Abwesenheit zurückgenommen: %1</translation>
    </message>
    <message>
        <source>Taken back. Undo brings it again.</source>
        <translation>Zurückgenommen. Rückgängig bringt es wieder.</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::AnswerPanel</name>
    <message>
        <source>frost point %1 %2</source>
        <translation>Reifpunkt %1&#xa0;%2</translation>
    </message>
    <message>
        <source>vapour pressure %1 hPa</source>
        <translation>Dampfdruck %1&#xa0;hPa</translation>
    </message>
    <message>
        <source>depression %1 %2</source>
        <translation>Differenz %1&#xa0;%2</translation>
    </message>
    <message>
        <source>deficit %1 hPa</source>
        <translation>Defizit %1&#xa0;hPa</translation>
    </message>
    <message>
        <source>%1 g/⁠m³</source>
        <translation>%1&#xa0;g/m³</translation>
    </message>
    <message>
        <source>%1 g/⁠kg</source>
        <translation>%1&#xa0;g/kg</translation>
    </message>
    <message>
        <source>, coefficient %1</source>
        <translation>, Koeffizient %1</translation>
    </message>
    <message>
        <source>pressure %1 hPa as read</source>
        <translation>Luftdruck %1&#xa0;hPa wie abgelesen</translation>
    </message>
    <message>
        <source>pressure %1 hPa, the station&apos;s mean</source>
        <translation>Luftdruck %1&#xa0;hPa, Mittel der Station</translation>
    </message>
    <message>
        <source>pressure %1 hPa worked out from %2 m</source>
        <translation>Luftdruck %1&#xa0;hPa, berechnet aus %2&#xa0;m</translation>
    </message>
    <message>
        <source>Relative humidity</source>
        <translation>Relative Feuchte</translation>
    </message>
    <message>
        <source>Dew point</source>
        <translation>Taupunkt</translation>
    </message>
    <message>
        <source>Show the working</source>
        <translation>Rechengang zeigen</translation>
    </message>
    <message>
        <source>Relative humidity %1 %2</source>
        <translation>Relative Feuchte %1 %2</translation>
    </message>
    <message>
        <source>Dew point %1 %2 %3</source>
        <translation>Taupunkt %1 %2 %3</translation>
    </message>
    <message>
        <source>Relative humidity: none yet</source>
        <translation>Relative Feuchte: noch keine</translation>
    </message>
    <message>
        <source>Dew point: none yet</source>
        <translation>Taupunkt: noch keiner</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::BesideDialog</name>
    <message>
        <source>The clock never showed that time: it was put forward. Look at “%1”.</source>
        <translation>Diese Zeit zeigte die Uhr nie: sie wurde vorgestellt. „%1“ ansehen.</translation>
    </message>
    <message>
        <source>That time is still to come. Look at date and time.</source>
        <translation>Diese Zeit kommt noch. Datum und Zeit ansehen.</translation>
    </message>
    <message>
        <source>%1 is not a relative humidity in per cent.</source>
        <translation>%1 ist keine relative Feuchte in Prozent.</translation>
    </message>
    <message>
        <source>Write what the other instrument showed: its humidity, or both its bulbs.</source>
        <translation>Schreiben, was das andere Gerät zeigte: seine Feuchte oder beide Thermometer.</translation>
    </message>
    <message>
        <source>Write both bulbs of the station&apos;s pair, or neither: then the register&apos;s reading counts.</source>
        <translation>Beide Thermometer des Stationspaars schreiben oder keines: dann zählt die Ablesung im Tagebuch.</translation>
    </message>
    <message>
        <source>Wind is a whole number from 0 to 12, as Beaufort has it.</source>
        <translation>Wind ist eine ganze Zahl von 0 bis 12, nach Beaufort.</translation>
    </message>
    <message>
        <source>reading of another instrument</source>
        <translation>Ablesung eines anderen Geräts</translation>
    </message>
    <message>
        <source>Kept.</source>
        <translation>Behalten.</translation>
    </message>
    <message>
        <source>Kept, but it takes no part yet: %1.</source>
        <translation>Behalten, nimmt aber noch nicht teil: %1.</translation>
    </message>
    <message>
        <source>reading of another instrument taken back</source>
        <translation>Ablesung eines anderen Geräts zurückgenommen</translation>
    </message>
    <message>
        <source>Taken back. Undo brings it again.</source>
        <translation>Zurückgenommen. Rückgängig bringt es wieder.</translation>
    </message>
    <message>
        <source>Readings of the other instrument</source>
        <translation>Ablesungen des anderen Geräts</translation>
    </message>
    <message>
        <source>CSV files (*.csv *.txt);;All files (*)</source>
        <translation>CSV-Dateien (*.csv *.txt);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>%1 can&apos;t be opened. Choose another file.</source>
        <translation>%1 lässt sich nicht öffnen. Eine andere Datei wählen.</translation>
    </message>
    <message>
        <source>One reading of another instrument</source>
        <translation>Eine Ablesung eines anderen Geräts</translation>
    </message>
    <message numerus="yes">
        <source>%n readings of another instrument</source>
        <translation>
            <numerusform>%n Ablesung eines anderen Geräts</numerusform>
            <numerusform>%n Ablesungen eines anderen Geräts</numerusform>
        </translation>
    </message>
    <message>
        <source>One reading came in.</source>
        <translation>Eine Ablesung kam herein.</translation>
    </message>
    <message numerus="yes">
        <source>%n readings came in.</source>
        <translation>
            <numerusform>%n Ablesung kam herein.</numerusform>
            <numerusform>%n Ablesungen kamen herein.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 have no reading of the station within five minutes and were left aside.</source>
        <translation>%1 haben keine Ablesung der Station innerhalb von fünf Minuten und wurden beiseitegelegt.</translation>
    </message>
    <message>
        <source>%1 were there already.</source>
        <translation>%1 waren schon da.</translation>
    </message>
    <message>
        <source>%1 lines could not be read, the first: %2</source>
        <translation>%1 Zeilen ließen sich nicht lesen, die erste: %2</translation>
    </message>
    <message>
        <source>own coefficient out of the comparison with %1</source>
        <translation>eigener Koeffizient aus dem Vergleich mit %1</translation>
    </message>
    <message>
        <source>Kept. Readings are worked out afresh; undo takes it back.</source>
        <translation>Behalten. Die Ablesungen werden neu berechnet; Rückgängig nimmt es zurück.</translation>
    </message>
    <message>
        <source>There is no change of place or exposure yet. Write it down on the Station page, with its date, and join then.</source>
        <translation>Es gibt noch keinen Wechsel von Ort oder Aufstellung. Ihn auf der Seite Station mit Datum eintragen und dann verbinden.</translation>
    </message>
    <message>
        <source>The records are joined already.</source>
        <translation>Die Reihen sind schon verbunden.</translation>
    </message>
    <message>
        <source>joined</source>
        <translation>verbunden</translation>
    </message>
    <message>
        <source>records joined after the overlap with %1</source>
        <translation>Reihen verbunden nach dem Parallellauf mit %1</translation>
    </message>
    <message>
        <source>Joined: charts and averages go on across the change. Undo takes it back.</source>
        <translation>Verbunden: Diagramme und Mittel gehen über den Wechsel hinweg. Rückgängig nimmt es zurück.</translation>
    </message>
    <message>
        <source>Beside another instrument</source>
        <translation>Neben einem anderen Gerät</translation>
    </message>
    <message>
        <source>readings of the other instrument</source>
        <translation>Ablesungen des anderen Geräts</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Wann</translation>
    </message>
    <message>
        <source>Other, RH %</source>
        <translation>Anderes, rF %</translation>
    </message>
    <message>
        <source>Station, RH %</source>
        <translation>Station, rF %</translation>
    </message>
    <message>
        <source>Difference</source>
        <translation>Unterschied</translation>
    </message>
    <message>
        <source>Remark</source>
        <translation>Bemerkung</translation>
    </message>
    <message>
        <source>&amp;Bring in a file…</source>
        <translation>Eine Datei &amp;einlesen…</translation>
    </message>
    <message>
        <source>&amp;Take back</source>
        <translation>&amp;Zurücknehmen</translation>
    </message>
    <message>
        <source>Delete, in the table. Undo brings it again.</source>
        <translation>Entf, in der Tabelle. Rückgängig bringt es wieder.</translation>
    </message>
    <message>
        <source>&amp;Use this coefficient…</source>
        <translation>&amp;Diesen Koeffizienten verwenden…</translation>
    </message>
    <message>
        <source>&amp;Join the records</source>
        <translation>&amp;Reihen verbinden</translation>
    </message>
    <message>
        <source>The record goes on across the change of place or exposure</source>
        <translation>Die Reihe geht über den Wechsel von Ort oder Aufstellung hinweg</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Datum</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Zeit</translation>
    </message>
    <message>
        <source>Other: RH %</source>
        <translation>Anderes: rF %</translation>
    </message>
    <message>
        <source>humidity of the other instrument</source>
        <translation>Feuchte des anderen Geräts</translation>
    </message>
    <message>
        <source>its air temperature</source>
        <translation>seine Lufttemperatur</translation>
    </message>
    <message>
        <source>air temperature of the other instrument</source>
        <translation>Lufttemperatur des anderen Geräts</translation>
    </message>
    <message>
        <source>or its dry bulb</source>
        <translation>oder sein trockenes</translation>
    </message>
    <message>
        <source>dry bulb of the other instrument</source>
        <translation>trockenes Thermometer des anderen Geräts</translation>
    </message>
    <message>
        <source>its wet bulb</source>
        <translation>sein feuchtes</translation>
    </message>
    <message>
        <source>wet bulb of the other instrument</source>
        <translation>feuchtes Thermometer des anderen Geräts</translation>
    </message>
    <message>
        <source>its wick</source>
        <translation>sein Strumpf</translation>
    </message>
    <message>
        <source>Wind, Beaufort</source>
        <translation>Wind, Beaufort</translation>
    </message>
    <message>
        <source>wind</source>
        <translation>Wind</translation>
    </message>
    <message>
        <source>Station: dry</source>
        <translation>Station: trocken</translation>
    </message>
    <message>
        <source>dry bulb of the station</source>
        <translation>trockenes Thermometer der Station</translation>
    </message>
    <message>
        <source>wet</source>
        <translation>feucht</translation>
    </message>
    <message>
        <source>wet bulb of the station</source>
        <translation>feuchtes Thermometer der Station</translation>
    </message>
    <message>
        <source>wick</source>
        <translation>Strumpf</translation>
    </message>
    <message>
        <source>Enter keeps it. Empty: the register&apos;s reading within five minutes.</source>
        <translation>Enter behält es. Leer: die Ablesung im Tagebuch innerhalb von fünf Minuten.</translation>
    </message>
    <message>
        <source>what the readings say</source>
        <translation>was die Ablesungen sagen</translation>
    </message>
    <message>
        <source>other, RH %</source>
        <translation>anderes, rF %</translation>
    </message>
    <message>
        <source>station, RH %</source>
        <translation>Station, rF %</translation>
    </message>
    <message>
        <source>depression, °C</source>
        <translation>Differenz, °C</translation>
    </message>
    <message>
        <source>station − other, RH %</source>
        <translation>Station − anderes, rF %</translation>
    </message>
    <message>
        <source>wind, Beaufort</source>
        <translation>Wind, Beaufort</translation>
    </message>
    <message>
        <source>d MMM yyyy</source>
        <translation>d. MMM yyyy</translation>
    </message>
    <message>
        <source>%1 / %2</source>
        <translation>%1 / %2</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::BesidePlot</name>
    <message>
        <source>%1 against %2</source>
        <translation>%1 gegen %2</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::ChangesPreview</name>
    <message>
        <source>what would change, month by month</source>
        <translation>was sich ändern würde, Monat für Monat</translation>
    </message>
    <message>
        <source>Month</source>
        <translation>Monat</translation>
    </message>
    <message>
        <source>Readings</source>
        <translation>Ablesungen</translation>
    </message>
    <message>
        <source>RH % now</source>
        <translation>rF % jetzt</translation>
    </message>
    <message>
        <source>then</source>
        <translation>dann</translation>
    </message>
    <message>
        <source>Dew point now</source>
        <translation>Taupunkt jetzt</translation>
    </message>
    <message>
        <source>Largest, % RH</source>
        <translation>Größte, % rF</translation>
    </message>
    <message>
        <source>how far the register has been looked through</source>
        <translation>wie weit das Tagebuch durchgesehen ist</translation>
    </message>
    <message>
        <source>Stop looking</source>
        <translation>Anhalten</translation>
    </message>
    <message>
        <source>Stopped before the end; nothing is known of what would change.</source>
        <translation>Vor dem Ende angehalten; es ist nicht bekannt, was sich ändern würde.</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::ChartPanel</name>
    <message>
        <source>Chart of humidity and dew point</source>
        <translation>Diagramm von Feuchte und Taupunkt</translation>
    </message>
    <message>
        <source>How long a time the chart shows</source>
        <translation>Welche Zeitspanne das Diagramm zeigt</translation>
    </message>
    <message>
        <source>two weeks</source>
        <translation>zwei Wochen</translation>
    </message>
    <message>
        <source>a month</source>
        <translation>ein Monat</translation>
    </message>
    <message>
        <source>a season</source>
        <translation>eine Jahreszeit</translation>
    </message>
    <message>
        <source>a year</source>
        <translation>ein Jahr</translation>
    </message>
    <message>
        <source>all</source>
        <translation>alles</translation>
    </message>
    <message>
        <source>as zoomed</source>
        <translation>wie gezoomt</translation>
    </message>
    <message>
        <source>What the chart shows</source>
        <translation>Was das Diagramm zeigt</translation>
    </message>
    <message>
        <source>over time</source>
        <translation>über die Zeit</translation>
    </message>
    <message>
        <source>years over one another</source>
        <translation>Jahre übereinander</translation>
    </message>
    <message>
        <source>vapour and warmth</source>
        <translation>Dampf und Wärme</translation>
    </message>
    <message>
        <source>dry and wet bulb</source>
        <translation>trocken und feucht</translation>
    </message>
    <message>
        <source>At which observing hour</source>
        <translation>Zu welchem Termin</translation>
    </message>
    <message>
        <source>Pict&amp;ure…</source>
        <translation>&amp;Bild…</translation>
    </message>
    <message>
        <source>Save the chart as a picture, PNG or SVG (Ctrl+C copies it)</source>
        <translation>Das Diagramm als Bild speichern, PNG oder SVG (Strg+C kopiert es)</translation>
    </message>
    <message>
        <source>Reading the register beside the window… %1</source>
        <translation>Das Tagebuch wird im Hintergrund gelesen… %1</translation>
    </message>
    <message>
        <source>Reading the register beside the window…</source>
        <translation>Das Tagebuch wird im Hintergrund gelesen…</translation>
    </message>
    <message>
        <source>No readings here yet. They appear as they are written down.</source>
        <translation>Hier noch keine Ablesungen. Sie erscheinen, sobald sie aufgeschrieben sind.</translation>
    </message>
    <message>
        <source>No readings in this span. + and − zoom, Ctrl+← and Ctrl+→ move.</source>
        <translation>In dieser Spanne keine Ablesungen. + und − zoomen, Strg+← und Strg+→ verschieben.</translation>
    </message>
    <message>
        <source>RH %1</source>
        <translation>rF %1</translation>
    </message>
    <message>
        <source>dew point %1</source>
        <translation>Taupunkt %1</translation>
    </message>
    <message>
        <source>dry %1, wet %2</source>
        <translation>trocken %1, feucht %2</translation>
    </message>
    <message>
        <source>doubtful</source>
        <translation>zweifelhaft</translation>
    </message>
    <message>
        <source>erroneous</source>
        <translation>falsch</translation>
    </message>
    <message>
        <source>%1 singled out</source>
        <translation>%1 hervorgehoben</translation>
    </message>
    <message>
        <source>↑ and ↓ single out a year</source>
        <translation>↑ und ↓ heben ein Jahr hervor</translation>
    </message>
    <message>
        <source>← and → walk the readings</source>
        <translation>← und → gehen die Ablesungen entlang</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <extracomment>%1 the first and %2 the last day of a chart</extracomment>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>A picture is PNG or SVG: let the name end in .png or .svg.</source>
        <translation>Ein Bild ist PNG oder SVG: den Namen auf .png oder .svg enden lassen.</translation>
    </message>
    <message>
        <source>The picture could not be drawn; make the window smaller or close other programs, then try again.</source>
        <translation>Das Bild ließ sich nicht zeichnen; das Fenster verkleinern oder andere Programme schließen, dann noch einmal versuchen.</translation>
    </message>
    <message>
        <source>The chart was written to %1.</source>
        <translation>Das Diagramm wurde nach %1 geschrieben.</translation>
    </message>
    <message>
        <source>The chart is on the clipboard as a picture.</source>
        <translation>Das Diagramm ist als Bild in der Zwischenablage.</translation>
    </message>
    <message>
        <source>The chart as a picture</source>
        <translation>Das Diagramm als Bild</translation>
    </message>
    <message>
        <source>PNG at print size (*.png);;SVG (*.svg)</source>
        <translation>PNG in Druckgröße (*.png);;SVG (*.svg)</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::ClassWindow</name>
    <message>
        <source>Class round</source>
        <translation>Klassenrunde</translation>
    </message>
    <message>
        <source>Many pairs of the same air, side by side. Pupils are numbers; nothing of this comes into the station&apos;s register, and it is gone when the window has been started again.</source>
        <translation>Viele Paare derselben Luft nebeneinander. Schüler sind Nummern; nichts davon kommt ins Tagebuch der Station, und mit dem nächsten Start des Fensters ist es fort.</translation>
    </message>
    <message>
        <source>Pairs of the class</source>
        <translation>Paare der Klasse</translation>
    </message>
    <message>
        <source>What the class found</source>
        <translation>Was die Klasse fand</translation>
    </message>
    <message>
        <source>pressure</source>
        <translation>Luftdruck</translation>
    </message>
    <message>
        <source>&amp;Instrument</source>
        <translation>&amp;Gerät</translation>
    </message>
    <message>
        <source>&amp;Scale</source>
        <translation>&amp;Skala</translation>
    </message>
    <message>
        <source>Rea&amp;d to</source>
        <translation>&amp;Abgelesen auf</translation>
    </message>
    <message>
        <source>&amp;Pressure</source>
        <translation>&amp;Luftdruck</translation>
    </message>
    <message>
        <source>&amp;Print…</source>
        <translation>D&amp;rucken…</translation>
    </message>
    <message>
        <source>&amp;Save as PDF…</source>
        <translation>Als PDF &amp;speichern…</translation>
    </message>
    <message>
        <source>&amp;Work sheet</source>
        <translation>Arb&amp;eitsblatt</translation>
    </message>
    <message>
        <source>Sheet with &amp;answers</source>
        <translation>Blatt mit Ant&amp;worten</translation>
    </message>
    <message>
        <source>&amp;Copy as table</source>
        <translation>Als Tabelle &amp;kopieren</translation>
    </message>
    <message>
        <source>Copied.</source>
        <translation>Kopiert.</translation>
    </message>
    <message>
        <source>Start a &amp;new round</source>
        <translation>Eine &amp;neue Runde beginnen</translation>
    </message>
    <message>
        <source>The pressure where the class stands lies between %1 and %2 hPa: read it again.</source>
        <translation>Der Luftdruck am Ort der Klasse liegt zwischen %1 und %2&#xa0;hPa: noch einmal ablesen.</translation>
    </message>
    <message>
        <source>Type the first pair: dry, Enter, wet, Enter.</source>
        <translation>Das erste Paar eintragen: trocken, Enter, feucht, Enter.</translation>
    </message>
    <message>
        <source>Save the sheet</source>
        <translation>Das Blatt speichern</translation>
    </message>
    <message>
        <source>class-answers.pdf</source>
        <translation>klasse-antworten.pdf</translation>
    </message>
    <message>
        <source>class-sheet.pdf</source>
        <translation>klasse-blatt.pdf</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>The sheet could not be painted because of an error in the program: nothing was written. Please report it.</source>
        <translation>Das Blatt ließ sich wegen eines Fehlers im Programm nicht zeichnen: es wurde nichts geschrieben. Bitte melden.</translation>
    </message>
    <message>
        <source>Saved.</source>
        <translation>Gespeichert.</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::CoefficientForm</name>
    <message>
        <source>Exposure and coefficient</source>
        <translation>Aufstellung und Koeffizient</translation>
    </message>
    <message>
        <source>How the pair is exposed from this date on</source>
        <translation>Wie das Paar von diesem Tag an aufgestellt ist</translation>
    </message>
    <message>
        <source>The coefficient decides what humidity a depression means. An own one comes out of a comparison at this station.</source>
        <translation>Der Koeffizient entscheidet, welche Feuchte eine Differenz bedeutet. Ein eigener ergibt sich aus einem Vergleich an dieser Station.</translation>
    </message>
    <message>
        <source>From, year-month-day</source>
        <translation>Ab, Jahr-Monat-Tag</translation>
    </message>
    <message>
        <source>from the beginning</source>
        <translation>von Anfang an</translation>
    </message>
    <message>
        <source>The thermometers are</source>
        <translation>Die Thermometer sind</translation>
    </message>
    <message>
        <source>Own coefficient, water</source>
        <translation>Eigener Koeffizient, Wasser</translation>
    </message>
    <message>
        <source>own coefficient over water</source>
        <translation>eigener Koeffizient über Wasser</translation>
    </message>
    <message>
        <source>× 10⁻⁴ per degree</source>
        <translation>× 10⁻⁴ je Grad</translation>
    </message>
    <message>
        <source>Own coefficient, ice</source>
        <translation>Eigener Koeffizient, Eis</translation>
    </message>
    <message>
        <source>own coefficient over ice</source>
        <translation>eigener Koeffizient über Eis</translation>
    </message>
    <message>
        <source>× 10⁻⁴ per degree; empty: as water</source>
        <translation>× 10⁻⁴ je Grad; leer: wie Wasser</translation>
    </message>
    <message>
        <source>Its uncertainty</source>
        <translation>Seine Unsicherheit</translation>
    </message>
    <message>
        <source>uncertainty of the coefficient</source>
        <translation>Unsicherheit des Koeffizienten</translation>
    </message>
    <message>
        <source>%, standard</source>
        <translation>%, Standard</translation>
    </message>
    <message>
        <source>Mean pressure</source>
        <translation>Mittlerer Luftdruck</translation>
    </message>
    <message>
        <source>mean pressure</source>
        <translation>mittlerer Luftdruck</translation>
    </message>
    <message>
        <source>hPa at the station; empty: from elevation</source>
        <translation>hPa an der Station; leer: aus der Höhe</translation>
    </message>
    <message>
        <source>Write the own coefficient, as in 7.99 for 7.99 × 10⁻⁴, or choose another exposure.</source>
        <translation>Den eigenen Koeffizienten schreiben, etwa 7,99 für 7,99 × 10⁻⁴, oder eine andere Aufstellung wählen.</translation>
    </message>
    <message>
        <source>A coefficient lies between 0 and 50 × 10⁻⁴ per degree; 6 to 12 is usual.</source>
        <translation>Ein Koeffizient liegt zwischen 0 und 50 × 10⁻⁴ je Grad; üblich sind 6 bis 12.</translation>
    </message>
    <message>
        <source>The uncertainty of the coefficient lies between 0 and 100 %.</source>
        <translation>Die Unsicherheit des Koeffizienten liegt zwischen 0 und 100&#xa0;%.</translation>
    </message>
    <message>
        <source>Write the date from which it holds.</source>
        <translation>Das Datum schreiben, von dem an es gilt.</translation>
    </message>
    <message>
        <source>The mean pressure at the station lies between 500 and 1080 hPa.</source>
        <translation>Der mittlere Luftdruck an der Station liegt zwischen 500 und 1080&#xa0;hPa.</translation>
    </message>
    <message>
        <source>Nothing differs yet from what is in force. Change a field, or close this.</source>
        <translation>Noch unterscheidet sich nichts von dem, was gilt. Ein Feld ändern oder dies schließen.</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::CoefficientSection</name>
    <message>
        <source>E&amp;xposure and coefficient</source>
        <translation>A&amp;ufstellung und Koeffizient</translation>
    </message>
    <message>
        <source>From a date on…</source>
        <translation>Von einem Tag an…</translation>
    </message>
    <message>
        <source>mean pressure %1 hPa</source>
        <translation>mittlerer Luftdruck %1&#xa0;hPa</translation>
    </message>
    <message>
        <source>pressure from elevation again</source>
        <translation>Luftdruck wieder aus der Höhe</translation>
    </message>
    <message>
        <source>From %1</source>
        <translation>Von %1 an</translation>
    </message>
    <message>
        <source>From the beginning</source>
        <translation>Von Anfang an</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>How the pair is exposed is not written down.</source>
        <translation>Wie das Paar aufgestellt ist, steht nirgends.</translation>
    </message>
    <message>
        <source>exposure and coefficient</source>
        <translation>Aufstellung und Koeffizient</translation>
    </message>
    <message>
        <source>Kept. Readings are worked out afresh; undo takes it back.</source>
        <translation>Behalten. Die Ablesungen werden neu berechnet; Rückgängig nimmt es zurück.</translation>
    </message>
    <message>
        <source>The beginning can&apos;t be taken back, for the pair must hang somehow. Change it instead.</source>
        <translation>Der Anfang lässt sich nicht zurücknehmen, denn irgendwie muss das Paar hängen. Ihn stattdessen ändern.</translation>
    </message>
    <message>
        <source>exposure and coefficient taken back</source>
        <translation>Aufstellung und Koeffizient zurückgenommen</translation>
    </message>
    <message>
        <source>Taken back. Undo brings it again.</source>
        <translation>Zurückgenommen. Rückgängig bringt es wieder.</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::ColumnsDialog</name>
    <message>
        <source>Columns of the page</source>
        <translation>Spalten der Seite</translation>
    </message>
    <message>
        <source>Put the columns as the page in hand has them. Space switches a column on or off, Ctrl+↑ and Ctrl+↓ move it.</source>
        <translation>Die Spalten so ordnen, wie die vorliegende Seite sie hat. Leertaste schaltet eine Spalte ein oder aus, Strg+↑ und Strg+↓ verschieben sie.</translation>
    </message>
    <message>
        <source>Columns, in the page&apos;s order</source>
        <translation>Spalten in der Reihenfolge der Seite</translation>
    </message>
    <message>
        <source>&amp;Enter stops at this column</source>
        <translation>&amp;Enter hält in dieser Spalte an</translation>
    </message>
    <message>
        <source>Move &amp;up</source>
        <translation>Nach &amp;oben</translation>
    </message>
    <message>
        <source>Move &amp;down</source>
        <translation>Nach &amp;unten</translation>
    </message>
    <message>
        <source>Use these</source>
        <translation>So verwenden</translation>
    </message>
    <message>
        <source>Leave as it was</source>
        <translation>Lassen, wie es war</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::ColumnsView</name>
    <message>
        <source>the first rows of the file</source>
        <translation>die ersten Zeilen der Datei</translation>
    </message>
    <message>
        <source>left aside</source>
        <translation>beiseite</translation>
    </message>
    <message>
        <source>what column %1, “%2”, is</source>
        <translation>was Spalte %1, „%2“, ist</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::CopiesSection</name>
    <message>
        <source>Chan&amp;ge…</source>
        <translation>Ä&amp;ndern…</translation>
    </message>
    <message>
        <source>change where copies go</source>
        <translation>ändern, wohin Kopien gehen</translation>
    </message>
    <message>
        <source>&amp;Keep one every day the book has changed</source>
        <translation>&amp;Jeden Tag eine anlegen, an dem sich das Buch geändert hat</translation>
    </message>
    <message>
        <source>Without, nothing keeps a copy but you, and bringing in a register.</source>
        <translation>Sonst entstehen Kopien nur von Hand und beim Einlesen eines Tagebuchs.</translation>
    </message>
    <message>
        <source>copies of the book</source>
        <translation>Kopien des Buchs</translation>
    </message>
    <message>
        <source>how far it is</source>
        <translation>wie weit es ist</translation>
    </message>
    <message>
        <source>A copy is kept every day the book has changed.</source>
        <translation>Jeden Tag, an dem sich das Buch geändert hat, wird eine Kopie angelegt.</translation>
    </message>
    <message>
        <source>No copy is kept by itself any more: make one now and then.</source>
        <translation>Es wird keine Kopie mehr von selbst angelegt: ab und zu eine machen.</translation>
    </message>
    <message>
        <source>&amp;Make one now</source>
        <translation>Jetzt eine &amp;machen</translation>
    </message>
    <message>
        <source>&amp;Verify it</source>
        <translation>&amp;Prüfen</translation>
    </message>
    <message>
        <source>Reads every page and the whole chain of revisions of the chosen copy.</source>
        <translation>Liest jede Seite und die ganze Kette der Fassungen der gewählten Kopie.</translation>
    </message>
    <message>
        <source>Verif&amp;y all</source>
        <translation>Alle p&amp;rüfen</translation>
    </message>
    <message>
        <source>Rest&amp;ore into a new book…</source>
        <translation>In ein ne&amp;ues Buch wiederherstellen…</translation>
    </message>
    <message>
        <source>A copy to hand o&amp;n…</source>
        <translation>Eine Kopie &amp;zum Weitergeben…</translation>
    </message>
    <message>
        <source>A verified copy for somebody else, set to be read only.</source>
        <translation>Eine bestätigte Kopie für jemand anderen, nur zum Lesen.</translation>
    </message>
    <message>
        <source>Kept and verified: “%1”.</source>
        <translation>Angelegt und bestätigt: „%1“.</translation>
    </message>
    <message>
        <source>One old copy gave way to newer ones.</source>
        <translation>Eine alte Kopie wich neueren.</translation>
    </message>
    <message>
        <source>%1 old copies gave way to newer ones.</source>
        <translation>%1 alte Kopien wichen neueren.</translation>
    </message>
    <message>
        <source>&amp;Copies of the book: fold away</source>
        <translation>&amp;Kopien des Buchs: einklappen</translation>
    </message>
    <message>
        <source>&amp;Copies of the book</source>
        <translation>&amp;Kopien des Buchs</translation>
    </message>
    <message>
        <source>the last one failed</source>
        <translation>die letzte misslang</translation>
    </message>
    <message>
        <source>last %1</source>
        <translation>letzte %1</translation>
    </message>
    <message>
        <source>holds what this book does not</source>
        <translation>enthält, was dieses Buch nicht hat</translation>
    </message>
    <message>
        <source>verified</source>
        <translation>bestätigt</translation>
    </message>
    <message>
        <source>does not verify: %1</source>
        <translation>nicht bestätigt: %1</translation>
    </message>
    <message>
        <source>The sample station keeps no copies: it is gone when the window closes.</source>
        <translation>Von der Beispielstation gibt es keine Kopien: sie ist fort, wenn das Fenster schließt.</translation>
    </message>
    <message>
        <source>Looking for copies…</source>
        <translation>Kopien werden gesucht…</translation>
    </message>
    <message>
        <source>There is no copy yet.</source>
        <translation>Es gibt noch keine Kopie.</translation>
    </message>
    <message>
        <source>Last copy: %1. %2 in all. The newest of each of 7 days, 8 weeks and 24 months stay.</source>
        <translation>Letzte Kopie: %1. Insgesamt %2. Es bleibt jeweils die neueste von 7 Tagen, 8 Wochen und 24 Monaten.</translation>
    </message>
    <message>
        <source>Where: the folder “%1” beside the book</source>
        <translation>Wo: im Ordner „%1“ neben dem Buch</translation>
    </message>
    <message>
        <source>Where: %1</source>
        <translation>Wo: %1</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Anhalten</translation>
    </message>
    <message>
        <source>Verified: %1, every page and the whole chain of revisions.</source>
        <translation>Bestätigt: %1, jede Seite und die ganze Kette der Fassungen.</translation>
    </message>
    <message>
        <source>%1 verified, %2 did not: keep using the others, and make one now.</source>
        <translation>%1 bestätigt, %2 nicht: die anderen weiter verwenden und jetzt eine machen.</translation>
    </message>
    <message>
        <source>Where copies of the book shall lie</source>
        <translation>Wo Kopien des Buchs liegen sollen</translation>
    </message>
    <message>
        <source>From now on copies go there; those made before stay where they are.</source>
        <translation>Von jetzt an kommen Kopien dorthin; die früheren bleiben, wo sie sind.</translation>
    </message>
    <message>
        <source>Where the copy to hand on shall lie</source>
        <translation>Wo die Kopie zum Weitergeben liegen soll</translation>
    </message>
    <message>
        <source>%1 to read.wickbook</source>
        <translation>%1 zum Lesen.wickbook</translation>
    </message>
    <message>
        <source>Wickbook books (*.wickbook)</source>
        <translation>Wickbook-Bücher (*.wickbook)</translation>
    </message>
    <message>
        <source>Making the copy…</source>
        <translation>Die Kopie wird gemacht…</translation>
    </message>
    <message>
        <source>“%1” is written, verified, and set to be read only.</source>
        <translation>„%1“ ist geschrieben, bestätigt und nur zum Lesen.</translation>
    </message>
    <message>
        <source>“%1” is written and verified. The disk it lies on knows no files to be read only.</source>
        <translation>„%1“ ist geschrieben und bestätigt. Der Datenträger kennt keine Dateien nur zum Lesen.</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::CorrectionCurve</name>
    <message>
        <source>the correction over the scale</source>
        <translation>die Korrektion über der Skala</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::CorrectionForm</name>
    <message>
        <source>Correction</source>
        <translation>Korrektion</translation>
    </message>
    <message>
        <source>A thermometer&apos;s correction</source>
        <translation>Die Korrektion eines Thermometers</translation>
    </message>
    <message>
        <source>From a certificate or the ice point: what to add at which reading. Between the points it is taken as a straight line, beyond them as the nearest. It holds until the thermometer&apos;s next one.</source>
        <translation>Aus einem Prüfschein oder vom Eispunkt: was bei welcher Ablesung dazukommt. Zwischen den Punkten gilt eine gerade Linie, darüber hinaus der nächste. Sie gilt bis zur nächsten des Thermometers.</translation>
    </message>
    <message>
        <source>Thermometer</source>
        <translation>Thermometer</translation>
    </message>
    <message>
        <source>From, year-month-day</source>
        <translation>Ab, Jahr-Monat-Tag</translation>
    </message>
    <message>
        <source>empty: from the beginning</source>
        <translation>leer: von Anfang an</translation>
    </message>
    <message>
        <source>At a reading of</source>
        <translation>Bei einer Ablesung von</translation>
    </message>
    <message>
        <source>add</source>
        <translation>dazu</translation>
    </message>
    <message>
        <source>Points</source>
        <translation>Punkte</translation>
    </message>
    <message>
        <source>Drawn</source>
        <translation>Gezeichnet</translation>
    </message>
    <message>
        <source>standard uncertainty</source>
        <translation>Standardunsicherheit</translation>
    </message>
    <message>
        <source>degrees, standard (half of a ± for 95 %)</source>
        <translation>Grad, Standard (die Hälfte eines ± für 95&#xa0;%)</translation>
    </message>
    <message>
        <source>Uncertainty</source>
        <translation>Unsicherheit</translation>
    </message>
    <message>
        <source>Where it comes from</source>
        <translation>Woher sie kommt</translation>
    </message>
    <message>
        <source>certificate and number, ice point, …</source>
        <translation>Prüfschein und Nummer, Eispunkt, …</translation>
    </message>
    <message>
        <source>reading in line %1</source>
        <translation>Ablesung in Zeile %1</translation>
    </message>
    <message>
        <source>correction in line %1</source>
        <translation>Korrektion in Zeile %1</translation>
    </message>
    <message>
        <source>A correction of %1 is that of a broken thermometer. Look at line %2.</source>
        <translation>Eine Korrektion von %1 hat nur ein zerbrochenes Thermometer. Zeile %2 ansehen.</translation>
    </message>
    <message>
        <source>Two points stand at the reading %1. Leave one of them out.</source>
        <translation>Zwei Punkte stehen bei der Ablesung %1. Einen davon weglassen.</translation>
    </message>
    <message>
        <source>Write down the thermometer first, under “Thermometers”.</source>
        <translation>Zuerst unter „Thermometer“ das Thermometer eintragen.</translation>
    </message>
    <message>
        <source>Write at least one point: a reading, and what to add to it.</source>
        <translation>Mindestens einen Punkt schreiben: eine Ablesung und was dazukommt.</translation>
    </message>
    <message>
        <source>An uncertainty is not below zero.</source>
        <translation>Eine Unsicherheit liegt nicht unter null.</translation>
    </message>
    <message>
        <source>Write where the correction comes from: a certificate, an ice point.</source>
        <translation>Schreiben, woher die Korrektion kommt: Prüfschein, Eispunkt.</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::CorrectionSection</name>
    <message>
        <source>&amp;Corrections</source>
        <translation>&amp;Korrektionen</translation>
    </message>
    <message>
        <source>New correction…</source>
        <translation>Neue Korrektion…</translation>
    </message>
    <message>
        <source>from %1</source>
        <translation>von %1 an</translation>
    </message>
    <message>
        <source>from the beginning</source>
        <translation>von Anfang an</translation>
    </message>
    <message>
        <source>%1, %2: %3</source>
        <translation>%1, %2: %3</translation>
    </message>
    <message>
        <source>, uncertainty %1</source>
        <translation>, Unsicherheit %1</translation>
    </message>
    <message>
        <source>No correction is known; readings are used as they are read. A certificate, or the ice point, gives one.</source>
        <translation>Keine Korrektion bekannt; Ablesungen gelten, wie sie abgelesen sind. Ein Prüfschein oder der Eispunkt gibt eine.</translation>
    </message>
    <message>
        <source>correction of %1: %2</source>
        <translation>Korrektion von %1: %2</translation>
    </message>
    <message>
        <source>Kept. What was read stays; what follows from it is worked out afresh. Undo takes it back.</source>
        <translation>Behalten. Was abgelesen wurde, bleibt; was daraus folgt, wird neu berechnet. Rückgängig nimmt es zurück.</translation>
    </message>
    <message>
        <source>correction taken back: %1</source>
        <translation>Korrektion zurückgenommen: %1</translation>
    </message>
    <message>
        <source>Taken back. Undo brings it again.</source>
        <translation>Zurückgenommen. Rückgängig bringt es wieder.</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::DatedSection</name>
    <message>
        <source>Insert, in the list</source>
        <translation>Einfg, in der Liste</translation>
    </message>
    <message>
        <source>Change…</source>
        <translation>Ändern…</translation>
    </message>
    <message>
        <source>Enter, in the list</source>
        <translation>Enter, in der Liste</translation>
    </message>
    <message>
        <source>Take back</source>
        <translation>Zurücknehmen</translation>
    </message>
    <message>
        <source>Delete, in the list. Undo brings it again.</source>
        <translation>Entf, in der Liste. Rückgängig bringt es wieder.</translation>
    </message>
    <message>
        <source>%1: fold away</source>
        <translation>%1: einklappen</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::DiaryForm</name>
    <message>
        <source>Exposure diary</source>
        <translation>Stationschronik</translation>
    </message>
    <message>
        <source>Change an entry of the diary</source>
        <translation>Einen Eintrag der Chronik ändern</translation>
    </message>
    <message>
        <source>What happened</source>
        <translation>Was geschah</translation>
    </message>
    <message>
        <source>Nothing is worked out from it. It is for whoever asks later why the readings changed. A new place is a period: “From a date on the station differs”.</source>
        <translation>Daraus wird nichts berechnet. Es ist für alle, die später fragen, warum sich die Ablesungen änderten. Ein neuer Ort ist ein Abschnitt: „Von einem Tag an ist die Station anders“.</translation>
    </message>
    <message>
        <source>Date, year-month-day</source>
        <translation>Datum, Jahr-Monat-Tag</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Was</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>Keep it</source>
        <translation>Behalten</translation>
    </message>
    <message>
        <source>Write it down once it has happened; this date is still to come.</source>
        <translation>Erst eintragen, wenn es geschehen ist; dieser Tag kommt noch.</translation>
    </message>
    <message>
        <source>Write in the note what it was.</source>
        <translation>In der Notiz schreiben, was es war.</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::DiarySection</name>
    <message>
        <source>&amp;Exposure diary</source>
        <translation>Stations&amp;chronik</translation>
    </message>
    <message>
        <source>&amp;Write down…</source>
        <translation>E&amp;intragen…</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>The diary is empty. Write down when the screen is washed or painted, snow chokes the louvres, or a hedge grows or is cut.</source>
        <translation>Die Chronik ist leer. Eintragen, wenn die Hütte gewaschen oder gestrichen wird, wenn Schnee die Jalousien füllt oder eine Hecke wächst oder geschnitten wird.</translation>
    </message>
    <message>
        <source>diary changed: %1, %2</source>
        <translation>Chronik geändert: %1, %2</translation>
    </message>
    <message>
        <source>diary: %1, %2</source>
        <translation>Chronik: %1, %2</translation>
    </message>
    <message>
        <source>Kept. Undo takes it back.</source>
        <translation>Behalten. Rückgängig nimmt es zurück.</translation>
    </message>
    <message>
        <source>taken back from the diary: %1, %2</source>
        <translation>aus der Chronik zurückgenommen: %1, %2</translation>
    </message>
    <message>
        <source>Taken back. Undo brings it again.</source>
        <translation>Zurückgenommen. Rückgängig bringt es wieder.</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::EndPanel</name>
    <message>
        <source>Queries of this page</source>
        <translation>Rückfragen dieser Seite</translation>
    </message>
    <message>
        <source>The page&apos;s end: no queries</source>
        <translation>Ende der Seite: keine Rückfragen</translation>
    </message>
    <message>
        <source>The page&apos;s end: one query</source>
        <translation>Ende der Seite: eine Rückfrage</translation>
    </message>
    <message numerus="yes">
        <source>The page&apos;s end: %n queries</source>
        <translation>
            <numerusform>Ende der Seite: %n Rückfrage</numerusform>
            <numerusform>Ende der Seite: %n Rückfragen</numerusform>
        </translation>
    </message>
    <message>
        <source>Esc goes back to the page.</source>
        <translation>Esc geht zurück zur Seite.</translation>
    </message>
    <message>
        <source>What does the paper say?</source>
        <translation>Was sagt das Papier?</translation>
    </message>
    <message>
        <source>the paper says so: a slip of these keys</source>
        <translation>so steht es auf dem Papier: ein Versehen an den Tasten</translation>
    </message>
    <message>
        <source>the paper says what was typed: a slip at the time, corrected now</source>
        <translation>auf dem Papier steht das Getippte: ein Versehen damals, jetzt berichtigt</translation>
    </message>
    <message>
        <source>neither: back to the note</source>
        <translation>keines von beiden: zurück zur Bemerkung</translation>
    </message>
    <message>
        <source>1 to %1 answer. </source>
        <translation>1 bis %1 antworten. </translation>
    </message>
    <message>
        <source>S sound, D doubtful, E erroneous. Enter goes to the line, Esc back to the page.</source>
        <translation>S in Ordnung, D zweifelhaft, E falsch. Enter geht zur Zeile, Esc zurück zur Seite.</translation>
    </message>
    <message>
        <source>Enter goes to the line, Esc back to the page.</source>
        <translation>Enter geht zur Zeile, Esc zurück zur Seite.</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::EntryForm</name>
    <message>
        <source>Whirl by whirl</source>
        <translation>Durchgang für Durchgang</translation>
    </message>
    <message>
        <source>Repeats</source>
        <translation>Durchgänge</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>Is the wick wet or frozen? W for water, I for ice.</source>
        <translation>Ist der Strumpf nass oder gefroren? W für Wasser, I für Eis.</translation>
    </message>
    <message>
        <source>As read off the scale. &lt; stands for a column that has gone into the bulb.</source>
        <translation>Wie an der Skala abgelesen. &lt; steht für einen Faden, der in die Kugel gesunken ist.</translation>
    </message>
    <message>
        <source>dry bulb</source>
        <translation>trockenes Thermometer</translation>
    </message>
    <message>
        <source>wet bulb</source>
        <translation>feuchtes Thermometer</translation>
    </message>
    <message>
        <source>Dry bulb</source>
        <translation>Trocken</translation>
    </message>
    <message>
        <source>Wet bulb</source>
        <translation>Feucht</translation>
    </message>
    <message>
        <source>The beat  B</source>
        <translation>Der Takt  B</translation>
    </message>
    <message>
        <source>wick</source>
        <translation>Strumpf</translation>
    </message>
    <message>
        <source>water</source>
        <translation>Wasser</translation>
    </message>
    <message>
        <source>ice</source>
        <translation>Eis</translation>
    </message>
    <message>
        <source>wick care</source>
        <translation>Strumpfpflege</translation>
    </message>
    <message>
        <source>wetted</source>
        <translation>benetzt</translation>
    </message>
    <message>
        <source>new</source>
        <translation>neu</translation>
    </message>
    <message>
        <source>Wick</source>
        <translation>Strumpf</translation>
    </message>
    <message>
        <source>Wick care</source>
        <translation>Strumpfpflege</translation>
    </message>
    <message>
        <source>How to tell  ?</source>
        <translation>Woran erkennen  ?</translation>
    </message>
    <message>
        <source>pressure</source>
        <translation>Luftdruck</translation>
    </message>
    <message>
        <source>wind, Beaufort force</source>
        <translation>Wind, Beaufort-Stärke</translation>
    </message>
    <message>
        <source>observer, initials</source>
        <translation>Beobachter, Kürzel</translation>
    </message>
    <message>
        <source>maximum</source>
        <translation>Maximum</translation>
    </message>
    <message>
        <source>minimum</source>
        <translation>Minimum</translation>
    </message>
    <message>
        <source>note</source>
        <translation>Hinweis</translation>
    </message>
    <message>
        <source>Weather</source>
        <translation>Wetter</translation>
    </message>
    <message>
        <source>Wind</source>
        <translation>Wind</translation>
    </message>
    <message>
        <source>Observer</source>
        <translation>Beobachter</translation>
    </message>
    <message>
        <source>Pressure, hPa</source>
        <translation>Luftdruck, hPa</translation>
    </message>
    <message>
        <source>Maximum</source>
        <translation>Maximum</translation>
    </message>
    <message>
        <source>Minimum</source>
        <translation>Minimum</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::EntryPanel</name>
    <message>
        <source>&amp;Dry bulb</source>
        <translation>Tro&amp;cken</translation>
    </message>
    <message>
        <source>&amp;Wet bulb</source>
        <translation>&amp;Feucht</translation>
    </message>
    <message>
        <source>Wick</source>
        <translation>Strumpf</translation>
    </message>
    <message>
        <source>not given</source>
        <translation>nicht angegeben</translation>
    </message>
    <message>
        <source>Wic&amp;k</source>
        <translation>Strum&amp;pf</translation>
    </message>
    <message>
        <source>&amp;Pressure, hPa</source>
        <translation>&amp;Luftdruck, hPa</translation>
    </message>
    <message>
        <source>from elevation</source>
        <translation>aus der Höhe</translation>
    </message>
    <message>
        <source>Weat&amp;her</source>
        <translation>&amp;Wetter</translation>
    </message>
    <message>
        <source>fog, rime</source>
        <translation>Nebel, Raueis</translation>
    </message>
    <message>
        <source>W&amp;ind force</source>
        <translation>W&amp;indstärke</translation>
    </message>
    <message>
        <source>&amp;Note</source>
        <translation>&amp;Notiz</translation>
    </message>
    <message>
        <source>&amp;Observer</source>
        <translation>Be&amp;obachter</translation>
    </message>
    <message>
        <source>es&amp;timated, not read</source>
        <translation>&amp;geschätzt, nicht abgelesen</translation>
    </message>
    <message>
        <source>An estimate is marked, and stays out of means and extremes.</source>
        <translation>Eine Schätzung wird gekennzeichnet und bleibt aus Mitteln und Extremen heraus.</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Warum</translation>
    </message>
    <message>
        <source>Wh&amp;y?</source>
        <translation>Wa&amp;rum?</translation>
    </message>
    <message>
        <source>Write down</source>
        <translation>Eintragen</translation>
    </message>
    <message>
        <source>Leave as it is</source>
        <translation>Lassen, wie es ist</translation>
    </message>
    <message>
        <source>not needed for a first entry</source>
        <translation>beim ersten Eintrag nicht nötig</translation>
    </message>
    <message>
        <source>found in the pocket-book</source>
        <translation>im Taschenbuch gefunden</translation>
    </message>
    <message>
        <source>misread, read again on paper …</source>
        <translation>verlesen, auf dem Papier noch einmal gelesen …</translation>
    </message>
    <message>
        <source>pressure</source>
        <translation>Luftdruck</translation>
    </message>
    <message>
        <source>“%1” is not a weather word. Write one of: %2.</source>
        <translation>„%1“ ist kein Wetterwort. Eines davon schreiben: %2.</translation>
    </message>
    <message>
        <source>Write the wind as a Beaufort force from 0 to 12; “%1” is none.</source>
        <translation>Den Wind als Beaufort-Stärke von 0 bis 12 schreiben; „%1“ ist keine.</translation>
    </message>
    <message>
        <source>dry bulb</source>
        <translation>trockenes Thermometer</translation>
    </message>
    <message>
        <source>wet bulb</source>
        <translation>feuchtes Thermometer</translation>
    </message>
    <message>
        <source>Write at least one of the two readings. An hour without any is given a reason with M.</source>
        <translation>Mindestens eine der beiden Ablesungen schreiben. Ein Termin ohne jede bekommt mit M einen Grund.</translation>
    </message>
    <message>
        <source>Say why: what stood here first is kept, and so is the reason.</source>
        <translation>Sagen, warum: was hier zuerst stand, bleibt erhalten, der Grund auch.</translation>
    </message>
    <message>
        <source>Say why, and from what it is estimated: the reason is kept.</source>
        <translation>Sagen, warum und woraus geschätzt: der Grund bleibt erhalten.</translation>
    </message>
    <message>
        <source>RH %1, dew point %2 %3</source>
        <translation>rF %1, Taupunkt %2&#xa0;%3</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::FactForm</name>
    <message>
        <source>Keep it</source>
        <translation>Behalten</translation>
    </message>
    <message>
        <source>See what changes</source>
        <translation>Ansehen, was sich ändert</translation>
    </message>
    <message>
        <source>Looking…</source>
        <translation>Wird durchgesehen…</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::FindBar</name>
    <message>
        <source>Find in the whole register</source>
        <translation>Im ganzen Tagebuch suchen</translation>
    </message>
    <message>
        <source>a word, a number, a date</source>
        <translation>ein Wort, eine Zahl, ein Datum</translation>
    </message>
    <message>
        <source>Find in the whole re&amp;gister</source>
        <translation>Im &amp;ganzen Tagebuch suchen</translation>
    </message>
    <message>
        <source>Before</source>
        <translation>Davor</translation>
    </message>
    <message>
        <source>Find the one before (Shift+F3)</source>
        <translation>Das vorige suchen (Umschalt+F3)</translation>
    </message>
    <message>
        <source>Next</source>
        <translation>Weiter</translation>
    </message>
    <message>
        <source>Find the next one (F3)</source>
        <translation>Das nächste suchen (F3)</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Anhalten</translation>
    </message>
    <message>
        <source>Stop looking (Esc)</source>
        <translation>Suche anhalten (Esc)</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>Close the search (Esc)</source>
        <translation>Die Suche schließen (Esc)</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::FirstStartPage</name>
    <message>
        <source>A register for a dry and a wet bulb</source>
        <translation>Ein Tagebuch für trockenes und feuchtes Thermometer</translation>
    </message>
    <message>
        <source>Write down what the two thermometers say; relative humidity and dew point are worked out, with how sure they are.</source>
        <translation>Aufschreiben, was die beiden Thermometer zeigen; relative Feuchte und Taupunkt werden berechnet, mit ihrer Unsicherheit.</translation>
    </message>
    <message>
        <source>Save &amp;what can be read…</source>
        <translation>Retten, was &amp;lesbar ist…</translation>
    </message>
    <message>
        <source>&amp;Start a station</source>
        <translation>&amp;Eine Station beginnen</translation>
    </message>
    <message>
        <source>A new book: name, place, observing hours, thermometers. One page.</source>
        <translation>Ein neues Buch: Name, Ort, Termine, Thermometer. Eine Seite.</translation>
    </message>
    <message>
        <source>&amp;Open a book</source>
        <translation>Ein Buch ö&amp;ffnen</translation>
    </message>
    <message>
        <source>A register kept with this program before.</source>
        <translation>Ein Tagebuch, das mit diesem Programm geführt wurde.</translation>
    </message>
    <message>
        <source>&amp;Look around in the sample station</source>
        <translation>Die &amp;Beispielstation ansehen</translation>
    </message>
    <message>
        <source>A copy of an invented station with two years of readings. Nothing there can be spoilt.</source>
        <translation>Eine Kopie einer erfundenen Station mit zwei Jahren Ablesungen. Dort lässt sich nichts verderben.</translation>
    </message>
    <message>
        <source>Opened before</source>
        <translation>Früher geöffnet</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::FittingForm</name>
    <message>
        <source>The pair in use</source>
        <translation>Das benutzte Paar</translation>
    </message>
    <message>
        <source>Which thermometers hang from this date on</source>
        <translation>Welche Thermometer von diesem Tag an hängen</translation>
    </message>
    <message>
        <source>Write down every exchange, also when the two swap their places.</source>
        <translation>Jeden Austausch eintragen, auch wenn die beiden die Plätze tauschen.</translation>
    </message>
    <message>
        <source>From, year-month-day</source>
        <translation>Ab, Jahr-Monat-Tag</translation>
    </message>
    <message>
        <source>from the beginning</source>
        <translation>von Anfang an</translation>
    </message>
    <message>
        <source>Dry bulb</source>
        <translation>Trocken</translation>
    </message>
    <message>
        <source>Wet bulb</source>
        <translation>Feucht</translation>
    </message>
    <message>
        <source>Write the date from which they hang there.</source>
        <translation>Das Datum schreiben, von dem an sie dort hängen.</translation>
    </message>
    <message>
        <source>Write down the thermometers first, under “Thermometers”.</source>
        <translation>Zuerst unter „Thermometer“ die Thermometer eintragen.</translation>
    </message>
    <message>
        <source>One thermometer can&apos;t be both bulbs. Choose another for one of them.</source>
        <translation>Ein Thermometer kann nicht beides sein. Für eines ein anderes wählen.</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::FittingSection</name>
    <message>
        <source>The pair &amp;in use</source>
        <translation>&amp;Das benutzte Paar</translation>
    </message>
    <message>
        <source>From a date on…</source>
        <translation>Von einem Tag an…</translation>
    </message>
    <message>
        <source>From %1</source>
        <translation>Von %1 an</translation>
    </message>
    <message>
        <source>From the beginning</source>
        <translation>Von Anfang an</translation>
    </message>
    <message>
        <source>%1: dry %2, wet %3</source>
        <translation>%1: trocken %2, feucht %3</translation>
    </message>
    <message>
        <source>It is not written down which thermometer hangs where.</source>
        <translation>Es steht nirgends, welches Thermometer wo hängt.</translation>
    </message>
    <message>
        <source>pair in use: dry %1, wet %2</source>
        <translation>benutztes Paar: trocken %1, feucht %2</translation>
    </message>
    <message>
        <source>Kept. Readings are worked out afresh; undo takes it back.</source>
        <translation>Behalten. Die Ablesungen werden neu berechnet; Rückgängig nimmt es zurück.</translation>
    </message>
    <message>
        <source>pair in use taken back</source>
        <translation>benutztes Paar zurückgenommen</translation>
    </message>
    <message>
        <source>This pair, as if it had never hung there</source>
        <translation>Dieses Paar, als hätte es nie dort gehangen</translation>
    </message>
    <message>
        <source>Taken back. Undo brings it again.</source>
        <translation>Zurückgenommen. Rückgängig bringt es wieder.</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::FortnightChart</name>
    <message>
        <source>Relative humidity of the last two weeks</source>
        <translation>Relative Feuchte der letzten zwei Wochen</translation>
    </message>
    <message>
        <source>readings shown: %1</source>
        <translation>gezeigte Ablesungen: %1</translation>
    </message>
    <message>
        <source>Nothing written down in these two weeks yet.</source>
        <translation>In diesen zwei Wochen wurde noch nichts aufgeschrieben.</translation>
    </message>
    <message>
        <source>% RH, hollow: doubtful</source>
        <translation>% rF, hohl: zweifelhaft</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::HelpReader</name>
    <message>
        <source>Help page</source>
        <translation>Hilfeseite</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::HelpWindow</name>
    <message>
        <source>Help</source>
        <translation>Hilfe</translation>
    </message>
    <message>
        <source>Look for a word</source>
        <translation>Nach einem Wort suchen</translation>
    </message>
    <message>
        <source>Contents</source>
        <translation>Inhalt</translation>
    </message>
    <message>
        <source>&amp;Back</source>
        <translation>&amp;Zurück</translation>
    </message>
    <message>
        <source>&amp;Close</source>
        <translation>&amp;Schließen</translation>
    </message>
    <message>
        <source>No page has these words. Try fewer or shorter ones.</source>
        <translation>Keine Seite hat diese Wörter. Weniger oder kürzere versuchen.</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::HistoryPanel</name>
    <message>
        <source>Every revision of this line</source>
        <translation>Jede Fassung dieser Zeile</translation>
    </message>
    <message>
        <source>written again as it was</source>
        <translation>wieder geschrieben, wie es war</translation>
    </message>
    <message>
        <source>why: %1</source>
        <translation>warum: %1</translation>
    </message>
    <message>
        <source>Choose a line to see what it has been through.</source>
        <translation>Eine Zeile wählen, um zu sehen, was mit ihr geschah.</translation>
    </message>
    <message>
        <source>This hour is still to come.</source>
        <translation>Dieser Termin kommt noch.</translation>
    </message>
    <message>
        <source>Nothing was written down for this hour. Enter writes down a forgotten reading, M says why there is none.</source>
        <translation>Zu diesem Termin wurde nichts aufgeschrieben. Enter trägt eine vergessene Ablesung ein, M sagt, warum es keine gibt.</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::HourChooser</name>
    <message>
        <source>frost is likely: wet the wick now and touch it with ice; hang the frame out in the shade, look at the columns</source>
        <translation>Frost ist wahrscheinlich: den Strumpf jetzt benetzen und mit Eis berühren; das Gerät draußen in den Schatten hängen, die Fäden ansehen</translation>
    </message>
    <message>
        <source>hang the frame out in the shade, look at the wick and the columns</source>
        <translation>das Gerät draußen in den Schatten hängen, Strumpf und Fäden ansehen</translation>
    </message>
    <message>
        <source>frost is likely: take the reservoir away and brush a little ice-cold water on the wick now; look at the columns</source>
        <translation>Frost ist wahrscheinlich: das Gefäß wegnehmen und jetzt ein wenig eiskaltes Wasser auf den Strumpf pinseln; die Fäden ansehen</translation>
    </message>
    <message>
        <source>frost is likely: wet the wick now; look at the wick and the columns</source>
        <translation>Frost ist wahrscheinlich: den Strumpf jetzt benetzen; Strumpf und Fäden ansehen</translation>
    </message>
    <message>
        <source>look at the wick and the columns</source>
        <translation>Strumpf und Fäden ansehen</translation>
    </message>
    <message>
        <source>now %1</source>
        <translation>jetzt %1</translation>
    </message>
    <message>
        <source>the wick is %1 days old</source>
        <translation>der Strumpf ist %1 Tage alt</translation>
    </message>
    <message>
        <source>whirl until the wet bulb falls no further, read the wet bulb first</source>
        <translation>schleudern, bis das feuchte nicht weiter fällt; das feuchte zuerst ablesen</translation>
    </message>
    <message>
        <source>read the dry bulb first, tenths before whole degrees</source>
        <translation>zuerst das trockene ablesen, Zehntel vor ganzen Graden</translation>
    </message>
    <message>
        <source>the hour before</source>
        <translation>der Termin davor</translation>
    </message>
    <message>
        <source>the hour after</source>
        <translation>der Termin danach</translation>
    </message>
    <message>
        <source>date</source>
        <translation>Datum</translation>
    </message>
    <message>
        <source>observing hour</source>
        <translation>Termin</translation>
    </message>
    <message>
        <source>read at, by the clock</source>
        <translation>abgelesen um, nach der Uhr</translation>
    </message>
    <message>
        <source>Left empty: now, or for an older reading the hour itself.</source>
        <translation>Leer: jetzt, oder bei einer älteren Ablesung der Termin selbst.</translation>
    </message>
    <message>
        <source>which of the two</source>
        <translation>welches von beiden</translation>
    </message>
    <message>
        <source>the first time</source>
        <translation>das erste Mal</translation>
    </message>
    <message>
        <source>the second time</source>
        <translation>das zweite Mal</translation>
    </message>
    <message>
        <source>read at</source>
        <translation>abgelesen um</translation>
    </message>
    <message>
        <source>an extra reading</source>
        <translation>eine zusätzliche Ablesung</translation>
    </message>
    <message>
        <source>There is no such date. Write it as day, month and year.</source>
        <translation>Dieses Datum gibt es nicht. Tag, Monat und Jahr schreiben.</translation>
    </message>
    <message>
        <source>Choose a date</source>
        <translation>Ein Datum wählen</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::IceCorrectionsForm</name>
    <message>
        <source>Ice points</source>
        <translation>Eispunkte</translation>
    </message>
    <message>
        <source>Take the ice points over as corrections</source>
        <translation>Die Eispunkte als Korrektionen übernehmen</translation>
    </message>
    <message>
        <source>They hold from the day of the check on. A correction known before is moved as a whole, so that the ice point reads right.</source>
        <translation>Sie gelten vom Tag der Prüfung an. Eine schon bekannte Korrektion wird als Ganzes verschoben, sodass der Eispunkt stimmt.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::IndexTabs</name>
    <message>
        <source>Pages</source>
        <translation>Seiten</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::InstrumentsPage</name>
    <message>
        <source>none written down within a year. Note it with a reading, or under “Wick and water”.</source>
        <translation>innerhalb eines Jahres keiner eingetragen. Mit einer Ablesung vermerken oder unter „Strumpf und Wasser“.</translation>
    </message>
    <message>
        <source>today</source>
        <translation>heute</translation>
    </message>
    <message>
        <source>yesterday</source>
        <translation>gestern</translation>
    </message>
    <message numerus="yes">
        <source>%n days ago</source>
        <translation>
            <numerusform>vor %n Tag</numerusform>
            <numerusform>vor %n Tagen</numerusform>
        </translation>
    </message>
    <message>
        <source>Look whether it is yellow, frayed or beading.</source>
        <translation>Nachsehen, ob er gelb ist, ausfranst oder das Wasser abperlen lässt.</translation>
    </message>
    <message>
        <source>Instruments</source>
        <translation>Geräte</translation>
    </message>
    <message>
        <source>the instruments</source>
        <translation>die Geräte</translation>
    </message>
    <message>
        <source>Dry bulb now</source>
        <translation>Trocken zurzeit</translation>
    </message>
    <message>
        <source>Wet bulb now</source>
        <translation>Feucht zurzeit</translation>
    </message>
    <message>
        <source>Thermometer</source>
        <translation>Thermometer</translation>
    </message>
    <message>
        <source>not written down; readings are used as they are read</source>
        <translation>nicht eingetragen; Ablesungen gelten, wie sie abgelesen sind</translation>
    </message>
    <message>
        <source>Correction</source>
        <translation>Korrektion</translation>
    </message>
    <message>
        <source>none known; readings are used as they are read</source>
        <translation>keine bekannt; Ablesungen gelten, wie sie abgelesen sind</translation>
    </message>
    <message>
        <source>, coefficient %1 × 10⁻⁴ per degree ± %2 %, ice %3</source>
        <translation>, Koeffizient %1 × 10⁻⁴ je Grad ± %2&#xa0;%, Eis %3</translation>
    </message>
    <message>
        <source>Exposure</source>
        <translation>Aufstellung</translation>
    </message>
    <message>
        <source>Pressure</source>
        <translation>Luftdruck</translation>
    </message>
    <message>
        <source>as read; else the station&apos;s mean, %1 hPa</source>
        <translation>wie abgelesen; sonst das Stationsmittel, %1&#xa0;hPa</translation>
    </message>
    <message>
        <source>as read; else from the elevation</source>
        <translation>wie abgelesen; sonst aus der Höhe</translation>
    </message>
    <message>
        <source>Last new wick</source>
        <translation>Letzter neuer Strumpf</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::LetterChoice</name>
    <message>
        <source>%1: %2, key %3</source>
        <translation>%1: %2, Taste %3</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::LimitForm</name>
    <message>
        <source>A limit of the checks</source>
        <translation>Ein Grenzwert der Prüfungen</translation>
    </message>
    <message>
        <source>Built in: %1 (%2). A station may have %3.</source>
        <translation>Eingebaut: %1 (%2). Eine Station darf %3 haben.</translation>
    </message>
    <message>
        <source>for all readings</source>
        <translation>für alle Ablesungen</translation>
    </message>
    <message>
        <source>from the beginning</source>
        <translation>von Anfang an</translation>
    </message>
    <message>
        <source>From, year-month-day, or empty</source>
        <translation>Ab, Jahr-Monat-Tag, oder leer</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Warum</translation>
    </message>
    <message>
        <source>Each reading is judged by the limits that hold for its own date.</source>
        <translation>Jede Ablesung wird nach den Grenzwerten beurteilt, die für ihren eigenen Tag gelten.</translation>
    </message>
    <message>
        <source>readings judged</source>
        <translation>beurteilte Ablesungen</translation>
    </message>
    <message>
        <source>S&amp;top counting</source>
        <translation>Nicht weiter&amp;zählen</translation>
    </message>
    <message>
        <source>Write the limit.</source>
        <translation>Den Grenzwert schreiben.</translation>
    </message>
    <message>
        <source>See what changes</source>
        <translation>Ansehen, was sich ändert</translation>
    </message>
    <message>
        <source>Judging the whole register once as it is and once as it would be.</source>
        <translation>Das ganze Tagebuch wird einmal beurteilt, wie es ist, und einmal, wie es wäre.</translation>
    </message>
    <message>
        <source>Keep it</source>
        <translation>Behalten</translation>
    </message>
    <message>
        <source>Not counted to the end. It can be kept all the same.</source>
        <translation>Nicht zu Ende gezählt. Es lässt sich trotzdem behalten.</translation>
    </message>
    <message>
        <source>The limit is so already.</source>
        <translation>So ist der Grenzwert schon.</translation>
    </message>
    <message>
        <source>Write why: the reason is kept with the limit.</source>
        <translation>Schreiben, warum: der Grund bleibt beim Grenzwert erhalten.</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::LimitsModel</name>
    <message>
        <source>the beginning</source>
        <translation>der Anfang</translation>
    </message>
    <message>
        <source>fixed</source>
        <translation>fest</translation>
    </message>
    <message>
        <source>as built in</source>
        <translation>wie eingebaut</translation>
    </message>
    <message>
        <source>Source of the built-in value: %1</source>
        <translation>Quelle des eingebauten Werts: %1</translation>
    </message>
    <message>
        <source>Rule and limit</source>
        <translation>Regel und Grenzwert</translation>
    </message>
    <message>
        <source>Built in</source>
        <translation>Eingebaut</translation>
    </message>
    <message>
        <source>At this station</source>
        <translation>An dieser Station</translation>
    </message>
    <message>
        <source>From</source>
        <translation>Ab</translation>
    </message>
    <message>
        <source>Why (who)</source>
        <translation>Warum (wer)</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::LimitsSection</name>
    <message>
        <source>limits of the checks</source>
        <translation>Grenzwerte der Prüfungen</translation>
    </message>
    <message>
        <source>&amp;Change this limit…</source>
        <translation>Diesen Grenzwert än&amp;dern…</translation>
    </message>
    <message>
        <source>Back to the &amp;built-in value…</source>
        <translation>Zurück zum eingebauten &amp;Wert…</translation>
    </message>
    <message>
        <source>history of this limit</source>
        <translation>Geschichte dieses Grenzwerts</translation>
    </message>
    <message>
        <source>&amp;Limits of the checks: fold away</source>
        <translation>&amp;Grenzwerte der Prüfungen: einklappen</translation>
    </message>
    <message>
        <source>&amp;Limits of the checks</source>
        <translation>&amp;Grenzwerte der Prüfungen</translation>
    </message>
    <message>
        <source>1 of this station&apos;s own</source>
        <translation>1 eigener dieser Station</translation>
    </message>
    <message numerus="yes">
        <source>%n of this station&apos;s own</source>
        <translation>
            <numerusform>%n eigener dieser Station</numerusform>
            <numerusform>%n eigene dieser Station</numerusform>
        </translation>
    </message>
    <message>
        <source>taken back</source>
        <translation>zurückgenommen</translation>
    </message>
    <message>
        <source>as built in</source>
        <translation>wie eingebaut</translation>
    </message>
    <message>
        <source>from %1 on</source>
        <translation>von %1 an</translation>
    </message>
    <message>
        <source>from the beginning</source>
        <translation>von Anfang an</translation>
    </message>
    <message>
        <source>limit back to built in: %1</source>
        <translation>Grenzwert zurück zum eingebauten: %1</translation>
    </message>
    <message>
        <source>limit changed: %1</source>
        <translation>Grenzwert geändert: %1</translation>
    </message>
    <message>
        <source>Kept. The readings are judged afresh; undo takes it back.</source>
        <translation>Behalten. Die Ablesungen werden neu beurteilt; Rückgängig nimmt es zurück.</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::LinesModel</name>
    <message>
        <source>for comparison</source>
        <translation>zum Vergleich</translation>
    </message>
    <message>
        <source>changed</source>
        <translation>gewechselt</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Datum</translation>
    </message>
    <message>
        <source>Hour</source>
        <translation>Termin</translation>
    </message>
    <message>
        <source>Dry</source>
        <translation>Trocken</translation>
    </message>
    <message>
        <source>Wet</source>
        <translation>Feucht</translation>
    </message>
    <message>
        <source>RH</source>
        <translation>rF</translation>
    </message>
    <message>
        <source>Weather</source>
        <translation>Wetter</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>Mark</source>
        <translation>Zeichen</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::LogDialog</name>
    <message>
        <source>Log</source>
        <translation>Protokoll</translation>
    </message>
    <message>
        <source>Starts and troubles, for somebody who helps you. There are no readings, names or folders in it; read it before you send it.</source>
        <translation>Starts und Störungen, für jemanden, der hilft. Es enthält keine Ablesungen, Namen oder Ordner; vor dem Senden lesen.</translation>
    </message>
    <message>
        <source>Nothing is written down yet.</source>
        <translation>Noch ist nichts aufgeschrieben.</translation>
    </message>
    <message>
        <source>&amp;Copy</source>
        <translation>&amp;Kopieren</translation>
    </message>
    <message>
        <source>&amp;Save as a file…</source>
        <translation>Als Datei &amp;speichern…</translation>
    </message>
    <message>
        <source>C&amp;lose</source>
        <translation>&amp;Schließen</translation>
    </message>
    <message>
        <source>The log is on the clipboard.</source>
        <translation>Das Protokoll ist in der Zwischenablage.</translation>
    </message>
    <message>
        <source>Save the log</source>
        <translation>Das Protokoll speichern</translation>
    </message>
    <message>
        <source>Text (*.txt)</source>
        <translation>Text (*.txt)</translation>
    </message>
    <message>
        <source>The log was saved as %1.</source>
        <translation>Das Protokoll wurde als %1 gespeichert.</translation>
    </message>
    <message>
        <source>The log could not be saved (%1): choose another folder.</source>
        <translation>Das Protokoll ließ sich nicht speichern (%1): einen anderen Ordner wählen.</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::MainWindow</name>
    <message>
        <source>Make a cop&amp;y now</source>
        <translation>Jetzt eine &amp;Kopie machen</translation>
    </message>
    <message>
        <source>Res&amp;tore from a copy…</source>
        <translation>Aus einer Kopie &amp;wiederherstellen…</translation>
    </message>
    <message>
        <source>&amp;Book</source>
        <translation>&amp;Buch</translation>
    </message>
    <message>
        <source>&amp;New station…</source>
        <translation>&amp;Neue Station…</translation>
    </message>
    <message>
        <source>&amp;Open a book…</source>
        <translation>Ein Buch ö&amp;ffnen…</translation>
    </message>
    <message>
        <source>&amp;Recent</source>
        <translation>&amp;Zuletzt geöffnet</translation>
    </message>
    <message>
        <source>&amp;Sample station</source>
        <translation>Bei&amp;spielstation</translation>
    </message>
    <message>
        <source>&amp;Bring in a register…</source>
        <translation>Ein Tagebuch &amp;einlesen…</translation>
    </message>
    <message>
        <source>Save what can be read of a &amp;damaged book…</source>
        <translation>Retten, was an einem beschädigten Buch &amp;lesbar ist…</translation>
    </message>
    <message>
        <source>On &amp;paper</source>
        <translation>Auf &amp;Papier</translation>
    </message>
    <message>
        <source>Class &amp;round…</source>
        <translation>Klassen&amp;runde…</translation>
    </message>
    <message>
        <source>&amp;Close the book</source>
        <translation>Das Buch s&amp;chließen</translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation>&amp;Beenden</translation>
    </message>
    <message>
        <source>&amp;Edit</source>
        <translation>B&amp;earbeiten</translation>
    </message>
    <message>
        <source>&amp;Undo</source>
        <translation>&amp;Rückgängig</translation>
    </message>
    <message>
        <source>&amp;Redo</source>
        <translation>&amp;Wiederholen</translation>
    </message>
    <message>
        <source>&amp;Register</source>
        <translation>&amp;Tagebuch</translation>
    </message>
    <message>
        <source>&amp;Page</source>
        <translation>&amp;Seite</translation>
    </message>
    <message>
        <source>&amp;Look through the whole register…</source>
        <translation>Das ganze Tagebuch &amp;durchsehen…</translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation>&amp;Hilfe</translation>
    </message>
    <message>
        <source>&amp;Help on this page</source>
        <translation>&amp;Hilfe zu dieser Seite</translation>
    </message>
    <message>
        <source>&amp;About Wickbook</source>
        <translation>Ü&amp;ber Wickbook</translation>
    </message>
    <message>
        <source>&amp;Humidity table…</source>
        <translation>&amp;Feuchtetafel…</translation>
    </message>
    <message>
        <source>&amp;Month form…</source>
        <translation>&amp;Monatsformular…</translation>
    </message>
    <message>
        <source>&amp;Deputy&apos;s card…</source>
        <translation>&amp;Vertretungskarte…</translation>
    </message>
    <message>
        <source>&amp;Year book…</source>
        <translation>&amp;Jahrbuch…</translation>
    </message>
    <message>
        <source>From an &amp;old page…</source>
        <translation>Von einer &amp;alten Seite…</translation>
    </message>
    <message>
        <source>no books opened yet</source>
        <translation>noch keine Bücher geöffnet</translation>
    </message>
    <message>
        <source>About Wickbook</source>
        <translation>Über Wickbook</translation>
    </message>
    <message>
        <source>Wickbook %1

A register for a station with a dry and a wet bulb.
Free software under the GNU General Public License, version 3 or later.</source>
        <translation>Wickbook %1

Ein Tagebuch für eine Station mit trockenem und feuchtem Thermometer.
Freie Software unter der GNU General Public License, Version 3 oder später.</translation>
    </message>
    <message>
        <source>Save &amp;what can be read…</source>
        <translation>Retten, was &amp;lesbar ist…</translation>
    </message>
    <message>
        <source>Open the book first that the register is to be brought into.</source>
        <translation>Zuerst das Buch öffnen, in das das Tagebuch eingelesen werden soll.</translation>
    </message>
    <message>
        <source>Wickbook</source>
        <translation>Wickbook</translation>
    </message>
    <message>
        <source>Help  F1</source>
        <translation>Hilfe  F1</translation>
    </message>
    <message>
        <source>&amp;Undo: %1</source>
        <translation>&amp;Rückgängig: %1</translation>
    </message>
    <message>
        <source>&amp;Redo: %1</source>
        <translation>&amp;Wiederholen: %1</translation>
    </message>
    <message>
        <source>The sample station needs a little room for temporary files, and there is none: %1.</source>
        <translation>Die Beispielstation braucht ein wenig Platz für temporäre Dateien, und es ist keiner da: %1.</translation>
    </message>
    <message>
        <source>invented</source>
        <translation>erfunden</translation>
    </message>
    <message>
        <source>read only</source>
        <translation>nur lesbar</translation>
    </message>
    <message>
        <source>&amp;First steps</source>
        <translation>&amp;Erste Schritte</translation>
    </message>
    <message>
        <source>All &amp;keys</source>
        <translation>Alle &amp;Tasten</translation>
    </message>
    <message>
        <source>&amp;Cautions</source>
        <translation>&amp;Vorsicht</translation>
    </message>
    <message>
        <source>&amp;Log…</source>
        <translation>&amp;Protokoll…</translation>
    </message>
    <message>
        <source>&amp;Settings…</source>
        <translation>&amp;Einstellungen…</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::MarginStrip</name>
    <message>
        <source>kept</source>
        <translation>vorhanden</translation>
    </message>
    <message>
        <source>doubtful</source>
        <translation>zweifelhaft</translation>
    </message>
    <message>
        <source>erroneous</source>
        <translation>falsch</translation>
    </message>
    <message>
        <source>missing, with its reason</source>
        <translation>fehlend, mit Grund</translation>
    </message>
    <message>
        <source>not written down</source>
        <translation>nicht aufgeschrieben</translation>
    </message>
    <message>
        <source>due now</source>
        <translation>jetzt fällig</translation>
    </message>
    <message>
        <source>still to come</source>
        <translation>kommt noch</translation>
    </message>
    <message>
        <source>The last eight weeks</source>
        <translation>Die letzten acht Wochen</translation>
    </message>
    <message>
        <source>%1, %2: %3</source>
        <translation>%1, %2: %3</translation>
    </message>
    <message>
        <source>missing: %1</source>
        <translation>fehlend: %1</translation>
    </message>
    <message>
        <source>This station has no observing hours.</source>
        <translation>Diese Station hat keine Termine.</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::MarginalNote</name>
    <message>
        <source>Likely causes</source>
        <translation>Wahrscheinliche Ursachen</translation>
    </message>
    <message>
        <source>Enter</source>
        <translation>Enter</translation>
    </message>
    <message>
        <source>%1, then the humidity is %2</source>
        <translation>%1, dann ist die Feuchte %2</translation>
    </message>
    <message>
        <source>RH %1</source>
        <translation>rF %1</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::MissingPanel</name>
    <message>
        <source>Why nothing was read</source>
        <translation>Warum nichts abgelesen wurde</translation>
    </message>
    <message>
        <source>Why was &amp;nothing read? Choose with ↓ or write your own words.</source>
        <translation>Warum wurde &amp;nichts abgelesen? Mit ↓ wählen oder eigene Worte schreiben.</translation>
    </message>
    <message>
        <source>Write down</source>
        <translation>Eintragen</translation>
    </message>
    <message>
        <source>Leave as it is</source>
        <translation>Lassen, wie es ist</translation>
    </message>
    <message>
        <source>for &amp;all %1 hours in a row, in this month</source>
        <translation>für &amp;alle %1 Termine hintereinander, in diesem Monat</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::MonthPage</name>
    <message>
        <source>Open the &amp;folder</source>
        <translation>Den &amp;Ordner öffnen</translation>
    </message>
    <message>
        <source>Open the folder of the monthly return</source>
        <translation>Den Ordner der Monatsmeldung öffnen</translation>
    </message>
    <message>
        <source>The month before (Alt+←)</source>
        <translation>Der Monat davor (Alt+←)</translation>
    </message>
    <message>
        <source>The month after (Alt+→)</source>
        <translation>Der Monat danach (Alt+→)</translation>
    </message>
    <message>
        <source>Paper of the monthly return</source>
        <translation>Papier der Monatsmeldung</translation>
    </message>
    <message>
        <source>A4</source>
        <translation>A4</translation>
    </message>
    <message>
        <source>Letter</source>
        <translation>Letter</translation>
    </message>
    <message>
        <source>&amp;Sign off…</source>
        <translation>Ab&amp;zeichnen…</translation>
    </message>
    <message>
        <source>Say that the month has been looked at and stands as it is</source>
        <translation>Sagen, dass der Monat durchgesehen ist und so gilt</translation>
    </message>
    <message>
        <source>Monthly re&amp;turn…</source>
        <translation>&amp;Monatsmeldung…</translation>
    </message>
    <message>
        <source>Write the month&apos;s report, charts, tables and paragraph into a folder</source>
        <translation>Bericht, Diagramme, Tabellen und Absatz des Monats in einen Ordner schreiben</translation>
    </message>
    <message>
        <source>Pr&amp;int…</source>
        <translation>D&amp;rucken…</translation>
    </message>
    <message>
        <source>Look at the month&apos;s pages as they will be printed</source>
        <translation>Die Seiten des Monats ansehen, wie sie gedruckt werden</translation>
    </message>
    <message>
        <source>All readings as CS&amp;V…</source>
        <translation>Alle Ablesungen als CS&amp;V…</translation>
    </message>
    <message>
        <source>Write every observation of the book into one CSV file</source>
        <translation>Jede Beobachtung des Buchs in eine CSV-Datei schreiben</translation>
    </message>
    <message>
        <source>The month&apos;s numbers, at observing hours</source>
        <translation>Die Zahlen des Monats, zu den Terminen</translation>
    </message>
    <message>
        <source>Nothing has been written down in %1.</source>
        <translation>Im %1 wurde nichts aufgeschrieben.</translation>
    </message>
    <message>
        <source>Take &amp;signing back</source>
        <translation>Abzeichnung &amp;zurücknehmen</translation>
    </message>
    <message>
        <source>Take the month&apos;s signing back</source>
        <translation>Die Abzeichnung des Monats zurücknehmen</translation>
    </message>
    <message>
        <source>%1 signed off</source>
        <translation>%1 abgezeichnet</translation>
    </message>
    <message>
        <source>%1 is signed off (Ctrl+Z undoes it).</source>
        <translation>%1 ist abgezeichnet (Strg+Z nimmt es zurück).</translation>
    </message>
    <message>
        <source>signing of %1 taken back</source>
        <translation>Abzeichnung von %1 zurückgenommen</translation>
    </message>
    <message>
        <source>%1 is no longer signed off (Ctrl+Z undoes it).</source>
        <translation>%1 ist nicht mehr abgezeichnet (Strg+Z nimmt es zurück).</translation>
    </message>
    <message>
        <source>%1 is not over: sign it off once its last hour has passed.</source>
        <translation>%1 ist nicht vorbei: nach dem letzten Termin abzeichnen.</translation>
    </message>
    <message>
        <source>%1 of %2 readings at observing hours count; missing %3, set aside %4.</source>
        <translation>%1 von %2 Ablesungen zu den Terminen zählen; fehlend %3, beiseite %4.</translation>
    </message>
    <message>
        <source>One hour is still to come.</source>
        <translation>Ein Termin kommt noch.</translation>
    </message>
    <message numerus="yes">
        <source>%n hours are still to come.</source>
        <translation>
            <numerusform>%n Termin kommt noch.</numerusform>
            <numerusform>%n Termine kommen noch.</numerusform>
        </translation>
    </message>
    <message>
        <source>The month could not be read, so nothing was written. Turn to another month and back, then try again.</source>
        <translation>Der Monat ließ sich nicht lesen, daher wurde nichts geschrieben. Zu einem anderen Monat und zurück blättern, dann noch einmal versuchen.</translation>
    </message>
    <message numerus="yes">
        <source>%n files were written into %1.</source>
        <translation>
            <numerusform>%n Datei wurde nach %1 geschrieben.</numerusform>
            <numerusform>%n Dateien wurden nach %1 geschrieben.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 observations were written to %2.</source>
        <translation>%1 Beobachtungen wurden nach %2 geschrieben.</translation>
    </message>
    <message>
        <source>Folder for the monthly return</source>
        <translation>Ordner für die Monatsmeldung</translation>
    </message>
    <message>
        <source>All readings as CSV</source>
        <translation>Alle Ablesungen als CSV</translation>
    </message>
    <message>
        <source>CSV files (*.csv)</source>
        <translation>CSV-Dateien (*.csv)</translation>
    </message>
    <message>
        <source>The month&apos;s numbers are on the clipboard as a table.</source>
        <translation>Die Zahlen des Monats sind als Tabelle in der Zwischenablage.</translation>
    </message>
    <message>
        <source>Writing all readings…</source>
        <translation>Alle Ablesungen werden geschrieben…</translation>
    </message>
    <message>
        <source>&amp;Cancel</source>
        <translation>&amp;Abbrechen</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::MoveDialog</name>
    <message>
        <source>that month has no such day</source>
        <translation>dieser Monat hat keinen solchen Tag</translation>
    </message>
    <message>
        <source>on %1 no reading was due at that hour</source>
        <translation>am %1 war zu diesem Termin keine Ablesung fällig</translation>
    </message>
    <message>
        <source>%1 has a reading at that hour already</source>
        <translation>%1 hat zu diesem Termin schon eine Ablesung</translation>
    </message>
    <message>
        <source>%1 is still to come</source>
        <translation>%1 kommt noch</translation>
    </message>
    <message>
        <source>one line to %1</source>
        <translation>eine Zeile auf %1</translation>
    </message>
    <message numerus="yes">
        <source>%n lines to %1 … %2</source>
        <translation>
            <numerusform>%n Zeile auf %1 … %2</numerusform>
            <numerusform>%n Zeilen auf %1 … %2</numerusform>
        </translation>
    </message>
    <message>
        <source>These belong to another month</source>
        <translation>Diese gehören in einen anderen Monat</translation>
    </message>
    <message>
        <source>These belong elsewhere</source>
        <translation>Diese gehören anderswohin</translation>
    </message>
    <message>
        <source>Lines that stay where they are</source>
        <translation>Zeilen, die bleiben, wo sie sind</translation>
    </message>
    <message>
        <source>Mo&amp;ve them</source>
        <translation>&amp;Verlegen</translation>
    </message>
    <message>
        <source>Leave them here</source>
        <translation>Hier lassen</translation>
    </message>
    <message>
        <source>&amp;Which lines</source>
        <translation>&amp;Welche Zeilen</translation>
    </message>
    <message>
        <source>Which lines</source>
        <translation>Welche Zeilen</translation>
    </message>
    <message>
        <source>the same days of another month</source>
        <translation>dieselben Tage eines anderen Monats</translation>
    </message>
    <message>
        <source>another date</source>
        <translation>ein anderes Datum</translation>
    </message>
    <message>
        <source>another hour</source>
        <translation>ein anderer Termin</translation>
    </message>
    <message>
        <source>Where &amp;to</source>
        <translation>W&amp;ohin</translation>
    </message>
    <message>
        <source>Where to</source>
        <translation>Wohin</translation>
    </message>
    <message>
        <source>The &amp;month they belong to (↑ ↓ change it)</source>
        <translation>Der &amp;Monat, in den sie gehören (↑ ↓ ändern ihn)</translation>
    </message>
    <message>
        <source>The month they belong to</source>
        <translation>Der Monat, in den sie gehören</translation>
    </message>
    <message>
        <source>The &amp;date of the first line (↑ ↓ change it)</source>
        <translation>Das &amp;Datum der ersten Zeile (↑ ↓ ändern es)</translation>
    </message>
    <message>
        <source>The date of the first line; the others keep their distance</source>
        <translation>Das Datum der ersten Zeile; die anderen behalten ihren Abstand</translation>
    </message>
    <message>
        <source>the hour each line has</source>
        <translation>der Termin, den jede Zeile hat</translation>
    </message>
    <message>
        <source>&amp;Hour</source>
        <translation>&amp;Termin</translation>
    </message>
    <message>
        <source>Hour</source>
        <translation>Termin</translation>
    </message>
    <message>
        <source>written in the wrong place</source>
        <translation>an der falschen Stelle geschrieben</translation>
    </message>
    <message>
        <source>Wh&amp;y?</source>
        <translation>Wa&amp;rum?</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Warum</translation>
    </message>
    <message>
        <source>There are no such lines on this page. Choose others.</source>
        <translation>Solche Zeilen gibt es auf dieser Seite nicht. Andere wählen.</translation>
    </message>
    <message>
        <source>They are in this month already. Choose the month they belong to.</source>
        <translation>Sie sind schon in diesem Monat. Den Monat wählen, in den sie gehören.</translation>
    </message>
    <message>
        <source>They stand there already. Choose another date or hour.</source>
        <translation>Sie stehen schon dort. Ein anderes Datum oder einen anderen Termin wählen.</translation>
    </message>
    <message>
        <source>No line can go to %1.</source>
        <translation>Keine Zeile lässt sich auf %1 verlegen.</translation>
    </message>
    <message>
        <source>No line can go there.</source>
        <translation>Keine Zeile lässt sich dorthin verlegen.</translation>
    </message>
    <message>
        <source>One line goes to the same day and hour of %1.</source>
        <translation>Eine Zeile kommt auf denselben Tag und Termin im %1.</translation>
    </message>
    <message numerus="yes">
        <source>%n lines go to the same days and hours of %1.</source>
        <translation>
            <numerusform>%n Zeile kommt auf denselben Tag und Termin im %1.</numerusform>
            <numerusform>%n Zeilen kommen auf dieselben Tage und Termine im %1.</numerusform>
        </translation>
    </message>
    <message>
        <source>What would go: %1.</source>
        <extracomment>%1 &quot;14 lines to 1 Apr 2025, 9 h … 7 Apr 2025, 21 h&quot;</extracomment>
        <translation>Zu verlegen: %1.</translation>
    </message>
    <message>
        <source>One stays here:</source>
        <translation>Eine bleibt hier:</translation>
    </message>
    <message numerus="yes">
        <source>%n stay here:</source>
        <translation>
            <numerusform>%n bleibt hier:</numerusform>
            <numerusform>%n bleiben hier:</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 (%2 / %3) stays: %4</source>
        <translation>%1 (%2 / %3) bleibt: %4</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::NotesPanel</name>
    <message>
        <source>read right: keep it as read</source>
        <translation>richtig abgelesen: behalten</translation>
    </message>
    <message>
        <source>What does the paper say?</source>
        <translation>Was sagt das Papier?</translation>
    </message>
    <message>
        <source>the paper says so: it was a slip of the keys</source>
        <translation>so steht es auf dem Papier: es war ein Versehen an den Tasten</translation>
    </message>
    <message>
        <source>the paper says what was typed: it was a slip at the thermometer</source>
        <translation>auf dem Papier steht das Getippte: es war ein Versehen am Thermometer</translation>
    </message>
    <message>
        <source>neither: back to the notes</source>
        <translation>keines von beiden: zurück zu den Bemerkungen</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::ObservePage</name>
    <message>
        <source>Dry bulb</source>
        <translation>Trocken</translation>
    </message>
    <message>
        <source>Wet bulb</source>
        <translation>Feucht</translation>
    </message>
    <message>
        <source>&amp;Save  ⏎</source>
        <translation>&amp;Speichern  ⏎</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Rückgängig</translation>
    </message>
    <message>
        <source>Open it in the register</source>
        <translation>Im Tagebuch öffnen</translation>
    </message>
    <message>
        <source>Last two weeks</source>
        <translation>Die letzten zwei Wochen</translation>
    </message>
    <message>
        <source>Taken back. Ctrl+Shift+Z keeps it again.</source>
        <translation>Zurückgenommen. Strg+Umschalt+Z behält es wieder.</translation>
    </message>
    <message>
        <source>Your unfinished entry is here again.</source>
        <translation>Der unfertige Eintrag ist wieder da.</translation>
    </message>
    <message>
        <source>as read</source>
        <translation>wie abgelesen</translation>
    </message>
    <message>
        <source>from %1 m</source>
        <translation>aus %1&#xa0;m</translation>
    </message>
    <message>
        <source>Below the scale there is no number to work with; it is kept as below scale.</source>
        <translation>Unter der Skala gibt es keine Zahl zum Rechnen; es bleibt als „unter der Skala“ erhalten.</translation>
    </message>
    <message>
        <source>Saved %1: %2 / %3%4.</source>
        <translation>Gespeichert %1: %2 / %3%4.</translation>
    </message>
    <message>
        <source>Type the dry bulb and the wet bulb first.</source>
        <translation>Zuerst das trockene und das feuchte Thermometer eintragen.</translation>
    </message>
    <message>
        <source>%1 is off the thermometer&apos;s scale, which runs from %2 to %3 %4. Read it again.</source>
        <translation>%1 liegt außerhalb der Skala des Thermometers, die von %2 bis %3&#xa0;%4 geht. Noch einmal ablesen.</translation>
    </message>
    <message>
        <source>Say first whether the wick is wet or frozen: W for water, I for ice.</source>
        <translation>Zuerst sagen, ob der Strumpf nass oder gefroren ist: W für Wasser, I für Eis.</translation>
    </message>
    <message>
        <source>The dry bulb is empty. Enter again keeps the wet bulb alone, as incomplete.</source>
        <translation>Das trockene Thermometer ist leer. Noch einmal Enter behält das feuchte allein, als unvollständig.</translation>
    </message>
    <message>
        <source>The wet bulb is empty. Enter again keeps the dry bulb alone, as incomplete.</source>
        <translation>Das feuchte Thermometer ist leer. Noch einmal Enter behält das trockene allein, als unvollständig.</translation>
    </message>
    <message>
        <source>Enter again keeps what stands in the two bulbs.</source>
        <translation>Noch einmal Enter behält, was bei beiden Thermometern steht.</translation>
    </message>
    <message>
        <source>The margin has a note on this reading. Enter keeps it as read, Esc goes back to the field.</source>
        <translation>In der Randleiste steht eine Bemerkung zu dieser Ablesung. Enter behält sie wie abgelesen, Esc geht zurück zum Feld.</translation>
    </message>
    <message>
        <source>Ctrl+Z takes it back.</source>
        <translation>Strg+Z nimmt es zurück.</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>extra reading</source>
        <translation>zusätzliche Ablesung</translation>
    </message>
    <message>
        <source>typed first: %1 / %2</source>
        <translation>zuerst getippt: %1 / %2</translation>
    </message>
    <message>
        <source>This hour is written down already: %1 / %2. Changes are made in the register.</source>
        <translation>Dieser Termin steht schon da: %1 / %2. Geändert wird im Tagebuch.</translation>
    </message>
    <message>
        <source>The entry is still here; press Enter to try again.</source>
        <translation>Der Eintrag ist noch hier; Enter versucht es wieder.</translation>
    </message>
    <message>
        <source>&amp;Try again  ⏎</source>
        <translation>&amp;Noch einmal versuchen  ⏎</translation>
    </message>
    <message>
        <source>Touch the wick with something cold and clean: ice is hard and dull, water gives and shines. A wick can stay liquid below zero and freeze with the air above it. With water the humidity would be %1, with ice %2.</source>
        <translation>Den Strumpf mit etwas Kaltem und Sauberem berühren: Eis ist hart und matt, Wasser gibt nach und glänzt. Ein Strumpf kann unter null flüssig bleiben und bei Luft über null gefrieren. Mit Wasser wäre die Feuchte %1, mit Eis %2.</translation>
    </message>
    <message>
        <source>Taken: %1. What was typed first is kept with it.</source>
        <translation>Übernommen: %1. Was zuerst getippt wurde, bleibt dabei erhalten.</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::ObserversSection</name>
    <message>
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>Counting: %1 %</source>
        <translation>Wird gezählt: %1&#xa0;%</translation>
    </message>
    <message>
        <source>Counting …</source>
        <translation>Wird gezählt …</translation>
    </message>
    <message>
        <source>who has read, and how</source>
        <translation>wer abgelesen hat und wie</translation>
    </message>
    <message>
        <source>By</source>
        <translation>Von</translation>
    </message>
    <message>
        <source>First</source>
        <translation>Erste</translation>
    </message>
    <message>
        <source>Last</source>
        <translation>Letzte</translation>
    </message>
    <message>
        <source>Readings</source>
        <translation>Ablesungen</translation>
    </message>
    <message>
        <source>As deputy</source>
        <translation>Als Vertretung</translation>
    </message>
    <message>
        <source>Doubtful</source>
        <translation>Zweifelhaft</translation>
    </message>
    <message>
        <source>Erroneous</source>
        <translation>Falsch</translation>
    </message>
    <message>
        <source>Estimated</source>
        <translation>Geschätzt</translation>
    </message>
    <message>
        <source>Minutes off</source>
        <translation>Minuten daneben</translation>
    </message>
    <message>
        <source>0 or 5, dry</source>
        <translation>0 oder 5, trocken</translation>
    </message>
    <message>
        <source>0 or 5, wet</source>
        <translation>0 oder 5, feucht</translation>
    </message>
    <message>
        <source>Favours</source>
        <translation>Bevorzugt</translation>
    </message>
    <message>
        <source>Minutes off the hour, early and late alike. A fifth of the last digits is 0 or 5 where no digit is favoured. What changes with the initials may be the hand, not the air.</source>
        <translation>Minuten neben dem Termin, früh und spät zusammen. Ein Fünftel der letzten Ziffern ist 0 oder 5, wo keine bevorzugt wird. Was sich mit dem Kürzel ändert, kann die Hand sein, nicht die Luft.</translation>
    </message>
    <message>
        <source>Who ha&amp;s read: fold away</source>
        <translation>Wer abge&amp;lesen hat: einklappen</translation>
    </message>
    <message>
        <source>Who ha&amp;s read, and how</source>
        <translation>Wer abge&amp;lesen hat und wie</translation>
    </message>
    <message>
        <source>%1 (%2, %3)</source>
        <extracomment>which last digit, of which bulb, and its share</extracomment>
        <translation>%1 (%2, %3)</translation>
    </message>
    <message>
        <source>dry</source>
        <translation>trocken</translation>
    </message>
    <message>
        <source>wet</source>
        <translation>feucht</translation>
    </message>
    <message>
        <source>not written down</source>
        <translation>nicht aufgeschrieben</translation>
    </message>
    <message>
        <source>%1 (%2 late)</source>
        <translation>%1 (%2 spät)</translation>
    </message>
    <message>
        <source>%1 (%2 early)</source>
        <translation>%1 (%2 früh)</translation>
    </message>
    <message>
        <source>1 reading</source>
        <translation>1 Ablesung</translation>
    </message>
    <message numerus="yes">
        <source>%n readings</source>
        <translation>
            <numerusform>%n Ablesung</numerusform>
            <numerusform>%n Ablesungen</numerusform>
        </translation>
    </message>
    <message>
        <source>named</source>
        <translation>genannt</translation>
    </message>
    <message>
        <source>no initials</source>
        <translation>kein Kürzel</translation>
    </message>
    <message>
        <source>Nobody has read yet.</source>
        <translation>Noch hat niemand abgelesen.</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::OldPage</name>
    <message>
        <source>Some lines of this page are not in the book yet. Store them first, or empty them.</source>
        <translation>Einige Zeilen dieser Seite sind noch nicht im Buch. Sie zuerst speichern oder leeren.</translation>
    </message>
    <message>
        <source>From an old page</source>
        <translation>Von einer alten Seite</translation>
    </message>
    <message>
        <source>This station&apos;s record begins on %1, so no reading was due in %2. To type this page off, let the station&apos;s first period begin earlier (Station page), or turn to the month it belongs to.</source>
        <translation>Die Reihe dieser Station beginnt am %1, im %2 war also keine Ablesung fällig. Um diese Seite abzutippen, den ersten Abschnitt der Station früher beginnen lassen (Seite Station) oder zum richtigen Monat blättern.</translation>
    </message>
    <message>
        <source>&amp;Turn to %1</source>
        <translation>&amp;Zum %1 blättern</translation>
    </message>
    <message>
        <source>This station has no observing hours in %1, so the page has no lines. Give it its hours on the Station page, then come back.</source>
        <translation>Diese Station hat im %1 keine Termine, daher hat die Seite keine Zeilen. Ihr auf der Seite Station Termine geben und wiederkommen.</translation>
    </message>
    <message>
        <source>This month has no line for “%1”. Write the day as a number.</source>
        <translation>Dieser Monat hat keine Zeile für „%1“. Den Tag als Zahl schreiben.</translation>
    </message>
    <message>
        <source>%1: first %2, the second time %3. Ctrl+E settles which the paper says.</source>
        <translation>%1: zuerst %2, beim zweiten Mal %3. Strg+E klärt, was das Papier sagt.</translation>
    </message>
    <message>
        <source>Alt+%1: %2 (%3).</source>
        <translation>Alt+%1: %2 (%3).</translation>
    </message>
    <message>
        <source>This hour is still to come.</source>
        <translation>Dieser Termin kommt noch.</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>nichts</translation>
    </message>
    <message>
        <source>%1: %2 or %3</source>
        <translation>%1: %2 oder %3</translation>
    </message>
    <message>
        <source>The two passes differ. What does the paper say?</source>
        <translation>Die beiden Durchgänge unterscheiden sich. Was sagt das Papier?</translation>
    </message>
    <message>
        <source>%1, as in the book</source>
        <translation>%1, wie im Buch</translation>
    </message>
    <message>
        <source>%1, as typed the second time</source>
        <translation>%1, wie beim zweiten Mal getippt</translation>
    </message>
    <message>
        <source>“%1” is not in the book</source>
        <translation>„%1“ ist nicht im Buch</translation>
    </message>
    <message>
        <source>%1 of %2 lines are in the book.</source>
        <translation>%1 von %2 Zeilen sind im Buch.</translation>
    </message>
    <message>
        <source>One line is empty: m and a letter says why.</source>
        <translation>Eine Zeile ist leer: m und ein Buchstabe sagen, warum.</translation>
    </message>
    <message numerus="yes">
        <source>%n lines are empty: m and a letter says why.</source>
        <translation>
            <numerusform>%n Zeile ist leer: m und ein Buchstabe sagen, warum.</numerusform>
            <numerusform>%n Zeilen sind leer: m und ein Buchstabe sagen, warum.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n are read back.</source>
        <translation>
            <numerusform>%n ist gegengelesen.</numerusform>
            <numerusform>%n sind gegengelesen.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n could not be stored yet.</source>
        <translation>
            <numerusform>%n ließ sich noch nicht speichern.</numerusform>
            <numerusform>%n ließen sich noch nicht speichern.</numerusform>
        </translation>
    </message>
    <message>
        <source>The checks have nothing to say to this line.</source>
        <translation>Die Prüfungen haben zu dieser Zeile nichts zu sagen.</translation>
    </message>
    <message>
        <source>This cause says what happened, not what was read. Look at the paper: Enter goes to the line.</source>
        <translation>Diese Ursache sagt, was geschah, nicht, was abgelesen wurde. Das Papier ansehen: Enter geht zur Zeile.</translation>
    </message>
    <message>
        <source>typed again from the page: %1</source>
        <translation>noch einmal von der Seite getippt: %1</translation>
    </message>
    <message>
        <source>Taken for %1: %2. What stood there first is kept; Ctrl+Z takes it back.</source>
        <translation>Als %1 genommen: %2. Was zuerst stand, bleibt erhalten; Strg+Z nimmt es zurück.</translation>
    </message>
    <message>
        <source>typed twice, and the paper looked at again: %1 was %2</source>
        <translation>zweimal getippt und das Papier noch einmal angesehen: %1 war %2</translation>
    </message>
    <message>
        <source>judged %1</source>
        <translation>als %1 beurteilt</translation>
    </message>
    <message>
        <source>%1 is judged %2 (Ctrl+Z undoes it).</source>
        <translation>%1 ist als %2 beurteilt (Strg+Z nimmt es zurück).</translation>
    </message>
    <message>
        <source>Some lines are not in the book yet. Store them first.</source>
        <translation>Einige Zeilen sind noch nicht im Buch. Sie zuerst speichern.</translation>
    </message>
    <message>
        <source>Leave the second &amp;pass</source>
        <translation>Den zweiten &amp;Durchgang verlassen</translation>
    </message>
    <message>
        <source>Type it &amp;again</source>
        <translation>No&amp;ch einmal tippen</translation>
    </message>
    <message>
        <source>Second pass: type the page again. What you typed first is hidden; lines that come out alike are marked as read back.</source>
        <translation>Zweiter Durchgang: die Seite noch einmal tippen. Das zuerst Getippte ist verdeckt; gleiche Zeilen werden als gegengelesen vermerkt.</translation>
    </message>
    <message>
        <source>the lines typed just now (%1)</source>
        <translation>die eben getippten Zeilen (%1)</translation>
    </message>
    <message>
        <source>the lines marked on the page (%1)</source>
        <translation>die auf der Seite markierten Zeilen (%1)</translation>
    </message>
    <message>
        <source>every line of the month (%1)</source>
        <translation>jede Zeile des Monats (%1)</translation>
    </message>
    <message>
        <source>move: %1</source>
        <translation>verlegen: %1</translation>
    </message>
    <message>
        <source>Nothing was moved. %1</source>
        <translation>Nichts wurde verlegt. %1</translation>
    </message>
    <message>
        <source>One line now stands in %1. Ctrl+Z takes it back.</source>
        <translation>Eine Zeile steht jetzt im %1. Strg+Z nimmt es zurück.</translation>
    </message>
    <message numerus="yes">
        <source>%n lines now stand in %1. Ctrl+Z takes them back.</source>
        <translation>
            <numerusform>%n Zeile steht jetzt im %1. Strg+Z nimmt es zurück.</numerusform>
            <numerusform>%n Zeilen stehen jetzt im %1. Strg+Z nimmt es zurück.</numerusform>
        </translation>
    </message>
    <message>
        <source>&amp;Try again</source>
        <translation>Noch einmal &amp;versuchen</translation>
    </message>
    <message>
        <source>Month before</source>
        <translation>Monat davor</translation>
    </message>
    <message>
        <source>Month before (Ctrl+Page up)</source>
        <translation>Monat davor (Strg+Bild auf)</translation>
    </message>
    <message>
        <source>Month after</source>
        <translation>Monat danach</translation>
    </message>
    <message>
        <source>Month after (Ctrl+Page down)</source>
        <translation>Monat danach (Strg+Bild ab)</translation>
    </message>
    <message>
        <source>Month of the page</source>
        <translation>Monat der Seite</translation>
    </message>
    <message>
        <source>Paper &amp;book</source>
        <translation>Papier&amp;buch</translation>
    </message>
    <message>
        <source>Paper book the page is in</source>
        <translation>Buch auf Papier, in dem die Seite ist</translation>
    </message>
    <message>
        <source>Pa&amp;ge</source>
        <translation>Se&amp;ite</translation>
    </message>
    <message>
        <source>Page of the paper book</source>
        <translation>Seite im Buch auf Papier</translation>
    </message>
    <message>
        <source>Read b&amp;y</source>
        <translation>Gelesen v&amp;on</translation>
    </message>
    <message>
        <source>Initials of who read, as the page has them</source>
        <translation>Kürzel dessen, der abgelesen hat, wie auf der Seite</translation>
    </message>
    <message>
        <source>Go to &amp;day</source>
        <translation>Z&amp;um Tag</translation>
    </message>
    <message>
        <source>Go to the day</source>
        <translation>Zum Tag gehen</translation>
    </message>
    <message>
        <source>Ctrl+G, the day, Enter</source>
        <translation>Strg+G, der Tag, Enter</translation>
    </message>
    <message>
        <source>&amp;Without the point: 234 is %1, 6 is %2, −6 is −%2</source>
        <extracomment>%1 is 23.4, %2 is 0.6, with the locale&apos;s mark</extracomment>
        <translation>&amp;Ohne Komma: 234 ist %1, 6 ist %2, −6 ist −%2</translation>
    </message>
    <message>
        <source>For the thermometers only; a point or comma that is typed always counts</source>
        <translation>Nur für die Thermometer; ein getippter Punkt oder ein Komma gilt immer</translation>
    </message>
    <message>
        <source>Where Enter goes</source>
        <translation>Wohin Enter geht</translation>
    </message>
    <message>
        <source>Enter goes along the line</source>
        <translation>Enter: die Zeile entlang</translation>
    </message>
    <message>
        <source>Enter goes down the column</source>
        <translation>Enter: die Spalte hinab</translation>
    </message>
    <message>
        <source>How the page has its hours</source>
        <translation>Wie die Seite ihre Termine hat</translation>
    </message>
    <message>
        <source>hours under each other</source>
        <translation>Termine untereinander</translation>
    </message>
    <message>
        <source>hours side by side</source>
        <translation>Termine nebeneinander</translation>
    </message>
    <message>
        <source>&amp;Notes at the page&apos;s end</source>
        <translation>&amp;Rückfragen am Ende</translation>
    </message>
    <message>
        <source>&amp;Columns…</source>
        <translation>Spa&amp;lten…</translation>
    </message>
    <message>
        <source>Why lines of this page change that were in the book</source>
        <translation>Warum sich Zeilen dieser Seite ändern, die schon im Buch waren</translation>
    </message>
    <message>
        <source>Why it chan&amp;ges</source>
        <translation>&amp;Warum es sich ändert</translation>
    </message>
    <message>
        <source>Keep the change</source>
        <translation>Die Änderung behalten</translation>
    </message>
    <message>
        <source>Leave the book as it is</source>
        <translation>Das Buch lassen, wie es ist</translation>
    </message>
    <message>
        <source>m and a letter: missing (%1). &quot; repeats what stands above. w or i after the wet bulb: water or ice.</source>
        <translation>m und ein Buchstabe: fehlend (%1). &quot; wiederholt, was darüber steht. w oder i nach dem feuchten: Wasser oder Eis.</translation>
    </message>
    <message>
        <source>Page&apos;s &amp;end</source>
        <translation>E&amp;nde der Seite</translation>
    </message>
    <message>
        <source>Ctrl+E</source>
        <translation>Strg+E</translation>
    </message>
    <message>
        <source>Type the page a second time without seeing the first: what is alike is marked as read back, what is not is shown</source>
        <translation>Die Seite ein zweites Mal tippen, ohne das erste zu sehen: was gleich ist, gilt als gegengelesen, was nicht, wird gezeigt</translation>
    </message>
    <message>
        <source>Another &amp;month…</source>
        <translation>Ein anderer &amp;Monat…</translation>
    </message>
    <message>
        <source>These lines belong to another month</source>
        <translation>Diese Zeilen gehören in einen anderen Monat</translation>
    </message>
    <message>
        <source>Back to Observe</source>
        <translation>Zurück zu Beobachten</translation>
    </message>
    <message>
        <source>Open the &amp;Station page</source>
        <translation>Die Seite Station ö&amp;ffnen</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>typed from the page</source>
        <translation>von der Seite getippt</translation>
    </message>
    <message>
        <source>%1 is not in the book yet. %2 What you typed is still on the page.</source>
        <translation>%1 ist noch nicht im Buch. %2 Das Getippte steht noch auf der Seite.</translation>
    </message>
    <message>
        <source>typed again from the page</source>
        <translation>noch einmal von der Seite getippt</translation>
    </message>
    <message>
        <source>%1 was in the book already. Say why it changes, once for this page: Enter keeps the change, Esc leaves the book as it is.</source>
        <translation>%1 war schon im Buch. Einmal für diese Seite sagen, warum es sich ändert: Enter behält die Änderung, Esc lässt das Buch, wie es ist.</translation>
    </message>
    <message>
        <source>Write a reason: what stood there first is kept, and so is why it changed.</source>
        <translation>Einen Grund schreiben: was zuerst stand, bleibt erhalten und auch, warum es sich änderte.</translation>
    </message>
    <message>
        <source>read back against the page: typed twice alike</source>
        <translation>gegen die Seite gelesen: zweimal gleich getippt</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::PageModel</name>
    <message>
        <source>nothing written yet</source>
        <translation>noch nichts geschrieben</translation>
    </message>
    <message>
        <source>goes into the book when the line is left</source>
        <translation>kommt ins Buch, wenn die Zeile verlassen wird</translation>
    </message>
    <message>
        <source>not in the book</source>
        <translation>nicht im Buch</translation>
    </message>
    <message>
        <source>in the book</source>
        <translation>im Buch</translation>
    </message>
    <message>
        <source>in the book, read back</source>
        <translation>im Buch, gegengelesen</translation>
    </message>
    <message>
        <source>in the book, doubtful</source>
        <translation>im Buch, zweifelhaft</translation>
    </message>
    <message>
        <source>in the book, can hardly be right</source>
        <translation>im Buch, kann kaum stimmen</translation>
    </message>
    <message>
        <source>missing, with a reason</source>
        <translation>fehlend, mit einem Grund</translation>
    </message>
    <message>
        <source>typed otherwise the second time</source>
        <translation>beim zweiten Mal anders getippt</translation>
    </message>
    <message>
        <source>empty</source>
        <translation>leer</translation>
    </message>
    <message>
        <source>No reading was due at this hour on this day.</source>
        <translation>Zu diesem Termin war an diesem Tag keine Ablesung fällig.</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Datum</translation>
    </message>
    <message>
        <source>Hour</source>
        <translation>Termin</translation>
    </message>
    <message>
        <source>Observing hour</source>
        <translation>Beobachtungstermin</translation>
    </message>
    <message>
        <source>RH %</source>
        <translation>rF %</translation>
    </message>
    <message>
        <source>Relative humidity, %</source>
        <translation>Relative Feuchte, %</translation>
    </message>
    <message>
        <source>Dew p.</source>
        <translation>Taup.</translation>
    </message>
    <message>
        <source>Dew point, %1</source>
        <translation>Taupunkt, %1</translation>
    </message>
    <message>
        <source>How the line stands</source>
        <translation>Wie die Zeile steht</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::PageSet</name>
    <message>
        <source>Observe</source>
        <translation>Beobachten</translation>
    </message>
    <message>
        <source>Register</source>
        <translation>Tagebuch</translation>
    </message>
    <message>
        <source>Month</source>
        <translation>Monat</translation>
    </message>
    <message>
        <source>Instruments</source>
        <translation>Geräte</translation>
    </message>
    <message>
        <source>Station</source>
        <translation>Station</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::PageView</name>
    <message>
        <source>The page&apos;s lines</source>
        <translation>Die Zeilen der Seite</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::PairCheckForm</name>
    <message>
        <source>Pair check</source>
        <translation>Paarprüfung</translation>
    </message>
    <message>
        <source>Both bulbs without wick in one stirred bath</source>
        <translation>Beide ohne Strumpf in einem gerührten Bad</translation>
    </message>
    <message>
        <source>Ice point: slush of crushed ice of distilled water, well packed, bulbs deep in it, read when they stand still. Then water of about 20 °C, stirred all the while. Let glass warm and cool slowly; broken glass and mercury go by your local rules. A field may stay empty.</source>
        <translation>Eispunkt: Brei aus zerstoßenem Eis von destilliertem Wasser, gut gepackt, die Kugeln tief darin, abgelesen, wenn sie stillstehen. Dann Wasser von etwa 20&#xa0;°C, ständig gerührt. Glas langsam erwärmen und abkühlen lassen; für zerbrochenes Glas und Quecksilber gelten die örtlichen Vorschriften. Ein Feld darf leer bleiben.</translation>
    </message>
    <message>
        <source>Date, year-month-day</source>
        <translation>Datum, Jahr-Monat-Tag</translation>
    </message>
    <message>
        <source>Dry bulb&apos;s thermometer</source>
        <translation>Trockenes Thermometer</translation>
    </message>
    <message>
        <source>Wet bulb&apos;s thermometer</source>
        <translation>Feuchtes Thermometer</translation>
    </message>
    <message>
        <source>Dry, at the ice point</source>
        <translation>Trocken, am Eispunkt</translation>
    </message>
    <message>
        <source>Wet, at the ice point</source>
        <translation>Feucht, am Eispunkt</translation>
    </message>
    <message>
        <source>Dry, in the bath</source>
        <translation>Trocken, im Bad</translation>
    </message>
    <message>
        <source>Wet, in the bath</source>
        <translation>Feucht, im Bad</translation>
    </message>
    <message>
        <source>dry bulb at the ice point</source>
        <translation>trocken am Eispunkt</translation>
    </message>
    <message>
        <source>wet bulb at the ice point</source>
        <translation>feucht am Eispunkt</translation>
    </message>
    <message>
        <source>dry bulb in the bath</source>
        <translation>trocken im Bad</translation>
    </message>
    <message>
        <source>wet bulb in the bath</source>
        <translation>feucht im Bad</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>Write it down once it has happened; this date is still to come.</source>
        <translation>Erst eintragen, wenn es geschehen ist; dieser Tag kommt noch.</translation>
    </message>
    <message>
        <source>Write down the thermometers first, under “Thermometers”.</source>
        <translation>Zuerst unter „Thermometer“ die Thermometer eintragen.</translation>
    </message>
    <message>
        <source>One thermometer can&apos;t be both bulbs. Choose another for one of them.</source>
        <translation>Ein Thermometer kann nicht beides sein. Für eines ein anderes wählen.</translation>
    </message>
    <message>
        <source>Write what at least one of them showed at the ice point, or both in the bath.</source>
        <translation>Schreiben, was wenigstens eines am Eispunkt zeigte oder beide im Bad.</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::PairCheckSection</name>
    <message>
        <source>Both bulbs in one b&amp;ath</source>
        <translation>Beide in einem B&amp;ad</translation>
    </message>
    <message>
        <source>New pair check…</source>
        <translation>Neue Paarprüfung…</translation>
    </message>
    <message>
        <source>Take the ice points over…</source>
        <translation>Die Eispunkte übernehmen…</translation>
    </message>
    <message>
        <source>its thermometers are not written down any more</source>
        <translation>ihre Thermometer sind nicht mehr eingetragen</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Once a year, and after every knock: both without wick in one stirred bath.</source>
        <translation>Einmal im Jahr und nach jedem Stoß: beide ohne Strumpf in ein gerührtes Bad.</translation>
    </message>
    <message>
        <source>pair check</source>
        <translation>Paarprüfung</translation>
    </message>
    <message>
        <source>Written down. It changes no reading until its ice points are taken over.</source>
        <translation>Eingetragen. Es ändert keine Ablesung, bis die Eispunkte übernommen sind.</translation>
    </message>
    <message>
        <source>pair check taken back</source>
        <translation>Paarprüfung zurückgenommen</translation>
    </message>
    <message>
        <source>Taken back. Undo brings it again.</source>
        <translation>Zurückgenommen. Rückgängig bringt es wieder.</translation>
    </message>
    <message>
        <source>ice point of %1</source>
        <translation>Eispunkt vom %1</translation>
    </message>
    <message>
        <source>This check has no ice point, and a difference alone does not say which thermometer errs.</source>
        <translation>Diese Prüfung hat keinen Eispunkt, und ein Unterschied allein sagt nicht, welches Thermometer falsch geht.</translation>
    </message>
    <message>
        <source>corrections from the ice points</source>
        <translation>Korrektionen von den Eispunkten</translation>
    </message>
    <message>
        <source>Kept. What was read stays; what follows from it is worked out afresh. Undo takes it back.</source>
        <translation>Behalten. Was abgelesen wurde, bleibt; was daraus folgt, wird neu berechnet. Rückgängig nimmt es zurück.</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::PairsModel</name>
    <message>
        <source>The wick is water or ice: type w or i.</source>
        <translation>Am Strumpf ist Wasser oder Eis: w oder i tippen.</translation>
    </message>
    <message>
        <source>%1 is not a number: write it as 16.4.</source>
        <translation>%1 ist keine Zahl: als 16,4 schreiben.</translation>
    </message>
    <message>
        <source>At or below zero: type w for water or i for ice.</source>
        <translation>Bei null oder darunter: w für Wasser oder i für Eis tippen.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>empty</source>
        <translation>leer</translation>
    </message>
    <message>
        <source>Number</source>
        <translation>Nummer</translation>
    </message>
    <message>
        <source>Dry %1</source>
        <translation>Trocken %1</translation>
    </message>
    <message>
        <source>Wet %1</source>
        <translation>Feucht %1</translation>
    </message>
    <message>
        <source>Wick</source>
        <translation>Strumpf</translation>
    </message>
    <message>
        <source>Dry less wet</source>
        <translation>Trocken minus feucht</translation>
    </message>
    <message>
        <source>Humidity</source>
        <translation>Feuchte</translation>
    </message>
    <message>
        <source>Dew point</source>
        <translation>Taupunkt</translation>
    </message>
    <message>
        <source>What to look at</source>
        <translation>Was anzusehen ist</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::PaperDialog</name>
    <message>
        <source>Where these lines stand on paper</source>
        <translation>Wo diese Zeilen auf Papier stehen</translation>
    </message>
    <message>
        <source>&amp;Which lines</source>
        <translation>&amp;Welche Zeilen</translation>
    </message>
    <message>
        <source>Pocket-book 3</source>
        <translation>Taschenbuch 3</translation>
    </message>
    <message>
        <source>&amp;Book</source>
        <translation>&amp;Buch</translation>
    </message>
    <message>
        <source>&amp;Page</source>
        <translation>&amp;Seite</translation>
    </message>
    <message>
        <source>&amp;Keep</source>
        <translation>&amp;Behalten</translation>
    </message>
    <message>
        <source>Leave it as it is</source>
        <translation>Lassen, wie es ist</translation>
    </message>
    <message>
        <source>They stand so already.</source>
        <translation>Sie stehen schon so.</translation>
    </message>
    <message>
        <source>One line will have no place on paper any more.</source>
        <translation>Eine Zeile hat dann keinen Platz mehr auf Papier.</translation>
    </message>
    <message numerus="yes">
        <source>%n lines will have no place on paper any more.</source>
        <translation>
            <numerusform>%n Zeile hat dann keinen Platz mehr auf Papier.</numerusform>
            <numerusform>%n Zeilen haben dann keinen Platz mehr auf Papier.</numerusform>
        </translation>
    </message>
    <message>
        <source>One line will stand on: %1.</source>
        <translation>Eine Zeile steht dann auf: %1.</translation>
    </message>
    <message numerus="yes">
        <source>%n lines will stand on: %1.</source>
        <translation>
            <numerusform>%n Zeile steht dann auf: %1.</numerusform>
            <numerusform>%n Zeilen stehen dann auf: %1.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>wickbook::ui::PeriodForm</name>
    <message>
        <source>From a date on</source>
        <translation>Von einem Tag an</translation>
    </message>
    <message>
        <source>from the beginning</source>
        <translation>von Anfang an</translation>
    </message>
    <message>
        <source>See what changes</source>
        <translation>Ansehen, was sich ändert</translation>
    </message>
    <message>
        <source>Keep it</source>
        <translation>Behalten</translation>
    </message>
    <message>
        <source>From this date on the station differs</source>
        <translation>Von diesem Tag an ist die Station anders</translation>
    </message>
    <message>
        <source>Change what is different; leave the rest as it stands.</source>
        <translation>Ändern, was anders ist; das Übrige lassen, wie es steht.</translation>
    </message>
    <message>
        <source>From, year-month-day</source>
        <translation>Ab, Jahr-Monat-Tag</translation>
    </message>
    <message>
        <source>Observing hours</source>
        <translation>Beobachtungstermine</translation>
    </message>
    <message>
        <source>They follow</source>
        <translation>Sie folgen</translation>
    </message>
    <message>
        <source>Time zone</source>
        <translation>Zeitzone</translation>
    </message>
    <message>
        <source>The thermometers are</source>
        <translation>Die Thermometer sind</translation>
    </message>
    <message>
        <source>latitude</source>
        <translation>Breite</translation>
    </message>
    <message>
        <source>° north</source>
        <translation>° Nord</translation>
    </message>
    <message>
        <source>longitude</source>
        <translation>Länge</translation>
    </message>
    <message>
        <source>° east</source>
        <translation>° Ost</translation>
    </message>
    <message>
        <source>elevation</source>
        <translation>Höhe</translation>
    </message>
    <message>
        <source>m</source>
        <translation>m</translation>
    </message>
    <message>
        <source>Latitude</source>
        <translation>Breite</translation>
    </message>
    <message>
        <source>Longitude</source>
        <translation>Länge</translation>
    </message>
    <message>
        <source>Elevation</source>
        <translation>Höhe</translation>
    </message>
    <message>
        <source>Surroundings</source>
        <translation>Umgebung</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Warum</translation>
    </message>
    <message>
        <source>There is no time zone of that name. Choose one from the list.</source>
        <translation>Eine Zeitzone dieses Namens gibt es nicht. Eine aus der Liste wählen.</translation>
    </message>
    <message>
        <source>Write the %1.</source>
        <translation>%1 schreiben.</translation>
    </message>
    <message>
        <source>Nothing differs yet from what is in force. Change a field, or close this.</source>
        <translation>Noch unterscheidet sich nichts von dem, was gilt. Ein Feld ändern oder dies schließen.</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::PeriodSection</name>
    <message>
        <source>S</source>
        <translation>S</translation>
    </message>
    <message>
        <source>N</source>
        <translation>N</translation>
    </message>
    <message>
        <source>W</source>
        <translation>W</translation>
    </message>
    <message>
        <source>E</source>
        <translation>O</translation>
    </message>
    <message>
        <source>What di&amp;ffers from when</source>
        <translation>Was &amp;von wann an anders ist</translation>
    </message>
    <message>
        <source>From a date on…</source>
        <translation>Von einem Tag an…</translation>
    </message>
    <message>
        <source>From the beginning</source>
        <translation>Von Anfang an</translation>
    </message>
    <message>
        <source>From %1</source>
        <translation>Von %1 an</translation>
    </message>
    <message>
        <source>elevation %1 m</source>
        <translation>Höhe %1&#xa0;m</translation>
    </message>
    <message>
        <source>no observing hours</source>
        <translation>keine Beobachtungstermine</translation>
    </message>
    <message>
        <source>hours follow %1</source>
        <translation>Termine folgen: %1</translation>
    </message>
    <message>
        <source>own coefficient %1 × 10⁻⁴ per degree</source>
        <translation>eigener Koeffizient %1 × 10⁻⁴ je Grad</translation>
    </message>
    <message>
        <source>mean pressure %1 hPa</source>
        <translation>mittlerer Luftdruck %1&#xa0;hPa</translation>
    </message>
    <message>
        <source>no mean pressure</source>
        <translation>kein mittlerer Luftdruck</translation>
    </message>
    <message>
        <source>joined to the record before</source>
        <translation>mit der Reihe davor verbunden</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Nothing is known of the station yet.</source>
        <translation>Von der Station ist noch nichts bekannt.</translation>
    </message>
    <message>
        <source>Of %1 readings %2 would have another humidity or dew point.</source>
        <translation>Von %1 Ablesungen hätten %2 eine andere Feuchte oder einen anderen Taupunkt.</translation>
    </message>
    <message>
        <source>By the new hours %1 would lie elsewhere; they stay under the hour they were written at.</source>
        <translation>Nach den neuen Terminen lägen %1 anderswo; sie bleiben unter dem Termin, zu dem sie geschrieben wurden.</translation>
    </message>
    <message>
        <source>What was read stays as it is.</source>
        <translation>Was abgelesen wurde, bleibt, wie es ist.</translation>
    </message>
    <message>
        <source>period changed: %1</source>
        <translation>Abschnitt geändert: %1</translation>
    </message>
    <message>
        <source>the station differs: %1</source>
        <translation>die Station ist anders: %1</translation>
    </message>
    <message>
        <source>Kept. Readings are worked out afresh; undo takes it back.</source>
        <translation>Behalten. Die Ablesungen werden neu berechnet; Rückgängig nimmt es zurück.</translation>
    </message>
    <message>
        <source>The beginning can&apos;t be taken back, for a station must stand somewhere. Change it instead.</source>
        <translation>Der Anfang lässt sich nicht zurücknehmen, denn irgendwo muss eine Station stehen. Ihn stattdessen ändern.</translation>
    </message>
    <message>
        <source>Take back</source>
        <translation>Zurücknehmen</translation>
    </message>
    <message>
        <source>&amp;Take it back</source>
        <translation>&amp;Zurücknehmen</translation>
    </message>
    <message>
        <source>period taken back: %1</source>
        <translation>Abschnitt zurückgenommen: %1</translation>
    </message>
    <message>
        <source>Taken back. Undo brings it again.</source>
        <translation>Zurückgenommen. Rückgängig bringt es wieder.</translation>
    </message>
    <message>
        <source>Working out what would change…</source>
        <translation>Was sich ändern würde, wird ausgerechnet…</translation>
    </message>
    <message>
        <source>&amp;Cancel</source>
        <translation>&amp;Abbrechen</translation>
    </message>
    <message>
        <source>Stopped before the end; nothing is known of what would change.</source>
        <translation>Vor dem Ende angehalten; es ist nicht bekannt, was sich ändern würde.</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::PreferencesDialog</name>
    <message>
        <source>Settings</source>
        <translation>Einstellungen</translation>
    </message>
    <message>
        <source>as the system</source>
        <translation>wie das System</translation>
    </message>
    <message>
        <source>&amp;Language</source>
        <translation>&amp;Sprache</translation>
    </message>
    <message>
        <source>as the desktop</source>
        <translation>wie der Desktop</translation>
    </message>
    <message>
        <source>light</source>
        <translation>hell</translation>
    </message>
    <message>
        <source>dark</source>
        <translation>dunkel</translation>
    </message>
    <message>
        <source>Light or &amp;dark</source>
        <translation>&amp;Hell oder dunkel</translation>
    </message>
    <message>
        <source>%1 %</source>
        <extracomment>size of letters, per cent of the desktop&apos;s own</extracomment>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>&amp;Size of letters</source>
        <translation>Schrift&amp;größe</translation>
    </message>
    <message>
        <source>What a reading depends on (thermometers, hours, limits, copies) belongs to the station: it is kept in its book and changed on the pages Instruments and Station.</source>
        <translation>Wovon eine Ablesung abhängt (Thermometer, Termine, Grenzwerte, Kopien), gehört zur Station: es steht in ihrem Buch und wird auf den Seiten Geräte und Station geändert.</translation>
    </message>
    <message>
        <source>&amp;Use</source>
        <translation>&amp;Verwenden</translation>
    </message>
    <message>
        <source>&amp;Cancel</source>
        <translation>A&amp;bbrechen</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::QueriesModel</name>
    <message>
        <source>When</source>
        <translation>Wann</translation>
    </message>
    <message>
        <source>Dry / wet as read</source>
        <translation>Trocken / feucht wie abgelesen</translation>
    </message>
    <message>
        <source>RH</source>
        <translation>rF</translation>
    </message>
    <message>
        <source>Query</source>
        <translation>Rückfrage</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::QueriesPanel</name>
    <message>
        <source>Queries to settle</source>
        <translation>Offene Rückfragen</translation>
    </message>
    <message>
        <source>S sound, D doubtful, E erroneous, Enter opens the line</source>
        <translation>S in Ordnung, D zweifelhaft, E falsch, Enter öffnet die Zeile</translation>
    </message>
    <message>
        <source>No queries to settle</source>
        <translation>Keine offenen Rückfragen</translation>
    </message>
    <message>
        <source>One query to settle</source>
        <translation>Eine offene Rückfrage</translation>
    </message>
    <message numerus="yes">
        <source>%n queries to settle</source>
        <translation>
            <numerusform>%n offene Rückfrage</numerusform>
            <numerusform>%n offene Rückfragen</numerusform>
        </translation>
    </message>
    <message>
        <source>judged %1</source>
        <translation>als %1 beurteilt</translation>
    </message>
    <message>
        <source>judged %1: %2</source>
        <translation>als %1 beurteilt: %2</translation>
    </message>
    <message>
        <source>%1 is judged %2 (Ctrl+Z undoes it).</source>
        <translation>%1 ist als %2 beurteilt (Strg+Z nimmt es zurück).</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::QueryMark</name>
    <message>
        <source>cross: cannot be right</source>
        <translation>Kreuz: kann nicht stimmen</translation>
    </message>
    <message>
        <source>circle: doubtful</source>
        <translation>Kreis: zweifelhaft</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::ReadingChoices</name>
    <message>
        <source>The file begins with</source>
        <translation>Die Datei beginnt mit</translation>
    </message>
    <message>
        <source>a line of names</source>
        <translation>einer Zeile mit Namen</translation>
    </message>
    <message>
        <source>a reading</source>
        <translation>einer Ablesung</translation>
    </message>
    <message>
        <source>Between the cells stands a</source>
        <translation>Zwischen den Zellen steht</translation>
    </message>
    <message>
        <source>mark as found</source>
        <translation>Zeichen wie gefunden</translation>
    </message>
    <message>
        <source>The bulbs were read in</source>
        <translation>Die Thermometer sind abgelesen in</translation>
    </message>
    <message>
        <source>the unit in the names, or the station&apos;s</source>
        <translation>der Einheit in den Namen oder der der Station</translation>
    </message>
    <message>
        <source>°C</source>
        <translation>°C</translation>
    </message>
    <message>
        <source>°F</source>
        <translation>°F</translation>
    </message>
    <message>
        <source>Decimal mark</source>
        <translation>Dezimalzeichen</translation>
    </message>
    <message>
        <source>comma or point</source>
        <translation>Komma oder Punkt</translation>
    </message>
    <message>
        <source>point</source>
        <translation>Punkt</translation>
    </message>
    <message>
        <source>comma</source>
        <translation>Komma</translation>
    </message>
    <message>
        <source>Dates like 3/4/2025 are</source>
        <translation>Datumsangaben wie 3/4/2025 sind</translation>
    </message>
    <message>
        <source>as the other dates show</source>
        <translation>wie die anderen zeigen</translation>
    </message>
    <message>
        <source>day, then month</source>
        <translation>Tag, dann Monat</translation>
    </message>
    <message>
        <source>month, then day</source>
        <translation>Monat, dann Tag</translation>
    </message>
    <message>
        <source>Times without an offset are by</source>
        <translation>Zeiten ohne UTC-Abstand gehen nach</translation>
    </message>
    <message>
        <source>the station&apos;s clock (%1)</source>
        <translation>der Uhr der Station (%1)</translation>
    </message>
    <message>
        <source>Times the clock showed twice are</source>
        <translation>Zeiten, die die Uhr zweimal zeigte, sind</translation>
    </message>
    <message>
        <source>left out</source>
        <translation>weggelassen</translation>
    </message>
    <message>
        <source>the earlier</source>
        <translation>die frühere</translation>
    </message>
    <message>
        <source>the later</source>
        <translation>die spätere</translation>
    </message>
    <message>
        <source>%1, as found</source>
        <translation>%1, wie gefunden</translation>
    </message>
    <message>
        <source>There is no time zone of that name. Choose one from the list.</source>
        <translation>Eine Zeitzone dieses Namens gibt es nicht. Eine aus der Liste wählen.</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::RegisterModel</name>
    <message>
        <source>kept</source>
        <translation>vorhanden</translation>
    </message>
    <message>
        <source>doubtful</source>
        <translation>zweifelhaft</translation>
    </message>
    <message>
        <source>erroneous</source>
        <translation>falsch</translation>
    </message>
    <message>
        <source>incomplete</source>
        <translation>unvollständig</translation>
    </message>
    <message>
        <source>estimated, not read</source>
        <translation>geschätzt, nicht abgelesen</translation>
    </message>
    <message>
        <source>missing, with a reason</source>
        <translation>fehlend, mit einem Grund</translation>
    </message>
    <message>
        <source>not written down</source>
        <translation>nicht aufgeschrieben</translation>
    </message>
    <message>
        <source>to come</source>
        <translation>kommt</translation>
    </message>
    <message>
        <source>read back</source>
        <translation>gegengelesen</translation>
    </message>
    <message>
        <source>%1, extra</source>
        <translation>%1, zusätzlich</translation>
    </message>
    <message>
        <source>%1 (absence)</source>
        <translation>%1 (Abwesenheit)</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Datum</translation>
    </message>
    <message>
        <source>Hour</source>
        <translation>Termin</translation>
    </message>
    <message>
        <source>Observing hour</source>
        <translation>Beobachtungstermin</translation>
    </message>
    <message>
        <source>Dry</source>
        <translation>Trocken</translation>
    </message>
    <message>
        <source>Dry bulb as read, %1</source>
        <translation>Trocken wie abgelesen, %1</translation>
    </message>
    <message>
        <source>Wet</source>
        <translation>Feucht</translation>
    </message>
    <message>
        <source>Wet bulb as read, %1</source>
        <translation>Feucht wie abgelesen, %1</translation>
    </message>
    <message>
        <source>Depr.</source>
        <translation>Diff.</translation>
    </message>
    <message>
        <source>Wet-bulb depression, %1</source>
        <translation>Psychrometrische Differenz, %1</translation>
    </message>
    <message>
        <source>Wick</source>
        <translation>Strumpf</translation>
    </message>
    <message>
        <source>Water or ice on the wick</source>
        <translation>Wasser oder Eis am Strumpf</translation>
    </message>
    <message>
        <source>RH %</source>
        <translation>rF %</translation>
    </message>
    <message>
        <source>Relative humidity, %</source>
        <translation>Relative Feuchte, %</translation>
    </message>
    <message>
        <source>±</source>
        <translation>±</translation>
    </message>
    <message>
        <source>Relative humidity is good to, %</source>
        <translation>Relative Feuchte ist genau auf, %</translation>
    </message>
    <message>
        <source>Dew p.</source>
        <translation>Taup.</translation>
    </message>
    <message>
        <source>Dew point, %1</source>
        <translation>Taupunkt, %1</translation>
    </message>
    <message>
        <source>Weather</source>
        <translation>Wetter</translation>
    </message>
    <message>
        <source>Wind</source>
        <translation>Wind</translation>
    </message>
    <message>
        <source>Wind, Beaufort force</source>
        <translation>Wind, Beaufort-Stärke</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>By</source>
        <translation>Von</translation>
    </message>
    <message>
        <source>Observer&apos;s initials</source>
        <translation>Kürzel des Beobachters</translation>
    </message>
    <message>
        <source>Origin</source>
        <translation>Herkunft</translation>
    </message>
    <message>
        <source>How the value came about</source>
        <translation>Wie der Wert zustande kam</translation>
    </message>
    <message>
        <source>Judged</source>
        <translation>Beurteilt</translation>
    </message>
    <message>
        <source>What was judged of it</source>
        <translation>Wie er beurteilt wurde</translation>
    </message>
    <message>
        <source>How the line stands</source>
        <translation>Wie die Zeile steht</translation>
    </message>
    <message>
        <source>Read back against the paper</source>
        <translation>Gegen das Papier gelesen</translation>
    </message>
    <message>
        <source>Paper</source>
        <translation>Papier</translation>
    </message>
    <message>
        <source>Book and page of the paper register</source>
        <translation>Buch und Seite des Tagebuchs auf Papier</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::RegisterPage</name>
    <message>
        <source>Nothing was changed.</source>
        <translation>Nichts wurde geändert.</translation>
    </message>
    <message>
        <source>This hour is still to come.</source>
        <translation>Dieser Termin kommt noch.</translation>
    </message>
    <message>
        <source>revised %1</source>
        <translation>%1 berichtigt</translation>
    </message>
    <message>
        <source>wrote down %1</source>
        <translation>%1 eingetragen</translation>
    </message>
    <message>
        <source>There is a reading at this hour: a reason is for hours without one.</source>
        <translation>Zu diesem Termin gibt es eine Ablesung: ein Grund ist für Termine ohne.</translation>
    </message>
    <message>
        <source>Choose a reason or write one in your own words.</source>
        <translation>Einen Grund wählen oder mit eigenen Worten schreiben.</translation>
    </message>
    <message>
        <source>%1 is missing: %2</source>
        <translation>%1 fehlt: %2</translation>
    </message>
    <message>
        <source>reason changed</source>
        <translation>Grund geändert</translation>
    </message>
    <message>
        <source>%1 to %2 are missing: %3</source>
        <translation>%1 bis %2 fehlen: %3</translation>
    </message>
    <message>
        <source>Ordered by: %1. O again turns it round.</source>
        <translation>Geordnet nach: %1. O noch einmal kehrt es um.</translation>
    </message>
    <message>
        <source>Ordered by: %1, the other way round. O again: as on the page.</source>
        <translation>Geordnet nach: %1, umgekehrt. O noch einmal: wie auf der Seite.</translation>
    </message>
    <message>
        <source>In the order of the page.</source>
        <translation>In der Reihenfolge der Seite.</translation>
    </message>
    <message>
        <source>One line is on the clipboard as a table.</source>
        <translation>Eine Zeile ist als Tabelle in der Zwischenablage.</translation>
    </message>
    <message numerus="yes">
        <source>%n lines are on the clipboard as a table.</source>
        <translation>
            <numerusform>%n Zeile ist als Tabelle in der Zwischenablage.</numerusform>
            <numerusform>%n Zeilen sind als Tabelle in der Zwischenablage.</numerusform>
        </translation>
    </message>
    <message>
        <source>Stopped.</source>
        <translation>Angehalten.</translation>
    </message>
    <message>
        <source>Looking: %1 %</source>
        <translation>Wird durchgesehen: %1&#xa0;%</translation>
    </message>
    <message>
        <source>No line of the register holds “%1”.</source>
        <translation>Keine Zeile des Tagebuchs enthält „%1“.</translation>
    </message>
    <message>
        <source>This is the only one.</source>
        <translation>Das ist die einzige.</translation>
    </message>
    <message>
        <source>Found, round the end of the register.</source>
        <translation>Gefunden, über das Ende des Tagebuchs hinweg.</translation>
    </message>
    <message>
        <source>Found.</source>
        <translation>Gefunden.</translation>
    </message>
    <message>
        <source>The month before (Page Up)</source>
        <translation>Der Monat davor (Bild auf)</translation>
    </message>
    <message>
        <source>The month after (Page Down)</source>
        <translation>Der Monat danach (Bild ab)</translation>
    </message>
    <message>
        <source>go to 2025-03 …</source>
        <translation>zu 2025-03 …</translation>
    </message>
    <message>
        <source>Go to a month or a date</source>
        <translation>Zu einem Monat oder Datum gehen</translation>
    </message>
    <message>
        <source>find in this month</source>
        <translation>im Monat suchen</translation>
    </message>
    <message>
        <source>Find in this month</source>
        <translation>In diesem Monat suchen</translation>
    </message>
    <message>
        <source>only &amp;queries</source>
        <translation>nur &amp;Rückfragen</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Rückgängig</translation>
    </message>
    <message>
        <source>Undo (Ctrl+Z)</source>
        <translation>Rückgängig (Strg+Z)</translation>
    </message>
    <message>
        <source>Redo</source>
        <translation>Wiederholen</translation>
    </message>
    <message>
        <source>Copy</source>
        <translation>Kopieren</translation>
    </message>
    <message>
        <source>Copy the lines shown as a table (Ctrl+C)</source>
        <translation>Die gezeigten Zeilen als Tabelle kopieren (Strg+C)</translation>
    </message>
    <message>
        <source>&amp;Lines</source>
        <translation>Zei&amp;len</translation>
    </message>
    <message>
        <source>What can be done with the lines that are marked</source>
        <translation>Was sich mit den markierten Zeilen tun lässt</translation>
    </message>
    <message>
        <source>&amp;Revise…</source>
        <translation>&amp;Berichtigen…</translation>
    </message>
    <message>
        <source>Enter</source>
        <translation>Enter</translation>
    </message>
    <message>
        <source>Why it is &amp;missing…</source>
        <translation>&amp;Warum es fehlt…</translation>
    </message>
    <message>
        <source>With&amp;draw</source>
        <translation>&amp;Zurückziehen</translation>
    </message>
    <message>
        <source>Delete</source>
        <translation>Entf</translation>
    </message>
    <message>
        <source>Read &amp;back against the paper</source>
        <translation>&amp;Gegen das Papier gelesen</translation>
    </message>
    <message>
        <source>Space</source>
        <translation>Leertaste</translation>
    </message>
    <message>
        <source>&amp;Not read back after all</source>
        <translation>&amp;Doch nicht gegengelesen</translation>
    </message>
    <message>
        <source>Shift+Space</source>
        <translation>Umschalt+Leertaste</translation>
    </message>
    <message>
        <source>Book and &amp;page on paper…</source>
        <translation>Buch und Seite auf &amp;Papier…</translation>
    </message>
    <message>
        <source>Mo&amp;ve elsewhere…</source>
        <translation>&amp;Verlegen…</translation>
    </message>
    <message>
        <source>Judge &amp;sound</source>
        <translation>&amp;In Ordnung</translation>
    </message>
    <message>
        <source>Judge d&amp;oubtful</source>
        <translation>Zweifel&amp;haft</translation>
    </message>
    <message>
        <source>Judge &amp;erroneous</source>
        <translation>&amp;Falsch</translation>
    </message>
    <message>
        <source>Order by this &amp;column</source>
        <translation>Nach dieser &amp;Spalte ordnen</translation>
    </message>
    <message>
        <source>&amp;Find in the whole register…</source>
        <translation>I&amp;m ganzen Tagebuch suchen…</translation>
    </message>
    <message>
        <source>Ctrl+Shift+F</source>
        <translation>Strg+Umschalt+F</translation>
    </message>
    <message numerus="yes">
        <source>%n lines</source>
        <translation>
            <numerusform>%n Zeile</numerusform>
            <numerusform>%n Zeilen</numerusform>
        </translation>
    </message>
    <message>
        <source>There is no reading here to judge. Go to an hour that has one.</source>
        <translation>Hier ist keine Ablesung zu beurteilen. Zu einem Termin mit einer gehen.</translation>
    </message>
    <message>
        <source>judged %1: %2</source>
        <translation>als %1 beurteilt: %2</translation>
    </message>
    <message>
        <source>judged %1</source>
        <translation>als %1 beurteilt</translation>
    </message>
    <message>
        <source>withdrew %1 (Ctrl+Z brings it back)</source>
        <translation>%1 zurückgezogen (Strg+Z bringt es zurück)</translation>
    </message>
    <message>
        <source>withdrew %1 (Ctrl+Z brings them back)</source>
        <translation>%1 zurückgezogen (Strg+Z bringt sie zurück)</translation>
    </message>
    <message>
        <source>withdrawn</source>
        <translation>zurückgezogen</translation>
    </message>
    <message>
        <source>Nothing is written down for that hour: there is nothing to read back.</source>
        <translation>Zu diesem Termin ist nichts aufgeschrieben: es gibt nichts gegenzulesen.</translation>
    </message>
    <message>
        <source>read back: %1</source>
        <translation>gegengelesen: %1</translation>
    </message>
    <message>
        <source>not read back: %1</source>
        <translation>nicht gegengelesen: %1</translation>
    </message>
    <message>
        <source>read back against the paper</source>
        <translation>gegen das Papier gelesen</translation>
    </message>
    <message>
        <source>not taken for read back any more</source>
        <translation>gilt nicht mehr als gegengelesen</translation>
    </message>
    <message>
        <source>read back already: %1</source>
        <translation>schon gegengelesen: %1</translation>
    </message>
    <message>
        <source>That was the last line of the month. Page Down turns the page.</source>
        <translation>Das war die letzte Zeile des Monats. Bild ab blättert um.</translation>
    </message>
    <message>
        <source>Nothing has been written down in this month that could stand on paper.</source>
        <translation>In diesem Monat wurde nichts aufgeschrieben, was auf Papier stehen könnte.</translation>
    </message>
    <message>
        <source>this line: %1</source>
        <translation>diese Zeile: %1</translation>
    </message>
    <message>
        <source>the lines marked on the page (%1)</source>
        <translation>die auf der Seite markierten Zeilen (%1)</translation>
    </message>
    <message>
        <source>the lines without a page (%1)</source>
        <translation>die Zeilen ohne Seite (%1)</translation>
    </message>
    <message>
        <source>every line of the month (%1)</source>
        <translation>jede Zeile des Monats (%1)</translation>
    </message>
    <message>
        <source>on paper: %1, %2</source>
        <translation>auf Papier: %1, %2</translation>
    </message>
    <message>
        <source>no place on paper any more: %1</source>
        <translation>kein Platz mehr auf Papier: %1</translation>
    </message>
    <message>
        <source>named its page on paper</source>
        <translation>die Seite auf Papier genannt</translation>
    </message>
    <message>
        <source>took its page on paper away</source>
        <translation>die Seite auf Papier entfernt</translation>
    </message>
    <message>
        <source>Nothing has been written down in this month that could be moved.</source>
        <translation>In diesem Monat wurde nichts aufgeschrieben, was sich verlegen ließe.</translation>
    </message>
    <message>
        <source>moved %1</source>
        <translation>%1 verlegt</translation>
    </message>
    <message>
        <source>%1. Ctrl+Z takes it back.</source>
        <translation>%1. Strg+Z nimmt es zurück.</translation>
    </message>
    <message>
        <source>Enter revise · Space read back, P its page · S sound, D doubtful, E erroneous · M why missing · V move · Delete withdraw · Shift+↓ marks several · F3 find · O order · Page Up, Page Down turn the month</source>
        <translation>Enter berichtigen · Leertaste gegengelesen, P die Seite · S in Ordnung, D zweifelhaft, E falsch · M warum fehlend · V verlegen · Entf zurückziehen · Umschalt+↓ markiert mehrere · F3 suchen · O ordnen · Bild auf, Bild ab blättern</translation>
    </message>
    <message>
        <source>Write a month as 2025-03 or a date as 2025-03-14.</source>
        <translation>Einen Monat als 2025-03 oder ein Datum als 2025-03-14 schreiben.</translation>
    </message>
    <message>
        <source>No hours were promised in this month, and nothing was read.</source>
        <translation>In diesem Monat waren keine Termine zugesagt, und nichts wurde abgelesen.</translation>
    </message>
    <message>
        <source>Nothing has been written down in %1. Enter writes down a forgotten reading.</source>
        <translation>Im %1 wurde nichts aufgeschrieben. Enter trägt eine vergessene Ablesung ein.</translation>
    </message>
    <message>
        <source>Undone: %1</source>
        <translation>Zurückgenommen: %1</translation>
    </message>
    <message>
        <source>%1 of %2 hours count</source>
        <translation>%1 von %2 Terminen zählen</translation>
    </message>
    <message>
        <source>%1 missing</source>
        <translation>%1 fehlend</translation>
    </message>
    <message>
        <source>%1 set aside</source>
        <translation>%1 beiseite</translation>
    </message>
    <message>
        <source>%1 to be judged</source>
        <translation>%1 zu beurteilen</translation>
    </message>
    <message>
        <source>%1 of %2 read back</source>
        <translation>%1 von %2 gegengelesen</translation>
    </message>
    <message numerus="yes">
        <source>%n lines marked</source>
        <translation>
            <numerusform>%n Zeile markiert</numerusform>
            <numerusform>%n Zeilen markiert</numerusform>
        </translation>
    </message>
    <message>
        <source>one line shown</source>
        <translation>eine Zeile gezeigt</translation>
    </message>
    <message numerus="yes">
        <source>%n lines shown</source>
        <translation>
            <numerusform>%n Zeile gezeigt</numerusform>
            <numerusform>%n Zeilen gezeigt</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>wickbook::ui::RegisterView</name>
    <message>
        <source>The month&apos;s lines</source>
        <translation>Die Zeilen des Monats</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::RepeatsPanel</name>
    <message>
        <source>Wet bulb first</source>
        <translation>Feucht zuerst</translation>
    </message>
    <message>
        <source>Dry bulb</source>
        <translation>Trocken</translation>
    </message>
    <message>
        <source>whirl %1, wet bulb</source>
        <translation>Durchgang %1, feucht</translation>
    </message>
    <message>
        <source>whirl %1, dry bulb</source>
        <translation>Durchgang %1, trocken</translation>
    </message>
    <message>
        <source>Whirl %1 is the reading, and its dry bulb is missing.</source>
        <translation>Durchgang %1 ist die Ablesung, und sein trockenes Thermometer fehlt.</translation>
    </message>
    <message>
        <source>The wet bulb rises: the wick is drying. Stop, wet it and whirl again.</source>
        <translation>Das feuchte Thermometer steigt: der Strumpf trocknet aus. Anhalten, benetzen und wieder schleudern.</translation>
    </message>
    <message>
        <source>The wet bulb has not settled yet: whirl again.</source>
        <translation>Das feuchte Thermometer ist noch nicht eingespielt: wieder schleudern.</translation>
    </message>
    <message>
        <source>settled</source>
        <translation>eingespielt</translation>
    </message>
    <message>
        <source>lowest</source>
        <translation>niedrigste</translation>
    </message>
    <message>
        <source>A row for each whirl, until two wet bulbs agree within %1 %2.</source>
        <translation>Eine Zeile je Durchgang, bis zwei feuchte auf %1&#xa0;%2 übereinstimmen.</translation>
    </message>
    <message>
        <source>Settled: whirl %1 is the reading.</source>
        <translation>Eingespielt: Durchgang %1 ist die Ablesung.</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::RestoreDialog</name>
    <message>
        <source>Stop</source>
        <translation>Anhalten</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>Say where the copies are: a folder of them, or one file.</source>
        <translation>Sagen, wo die Kopien sind: ein Ordner davon oder eine Datei.</translation>
    </message>
    <message>
        <source>Copies in “%1”</source>
        <translation>Kopien in „%1“</translation>
    </message>
    <message>
        <source>Looking for copies…</source>
        <translation>Kopien werden gesucht…</translation>
    </message>
    <message>
        <source>There are no copies in this folder: choose another folder, or one file.</source>
        <translation>In diesem Ordner sind keine Kopien: einen anderen Ordner wählen oder eine Datei.</translation>
    </message>
    <message>
        <source>The copy is verified first; a new book is made of it, and nothing else is written.</source>
        <translation>Die Kopie wird zuerst geprüft; ein neues Buch wird daraus, und sonst wird nichts geschrieben.</translation>
    </message>
    <message>
        <source>One file</source>
        <translation>Eine Datei</translation>
    </message>
    <message>
        <source>%1 restored from %2</source>
        <translation>%1 wiederhergestellt vom %2</translation>
    </message>
    <message>
        <source>Verifying the copy…</source>
        <translation>Die Kopie wird geprüft…</translation>
    </message>
    <message>
        <source>Stopped.</source>
        <translation>Angehalten.</translation>
    </message>
    <message>
        <source>Restoring…</source>
        <translation>Wird wiederhergestellt…</translation>
    </message>
    <message>
        <source>Stopped. Nothing was written.</source>
        <translation>Angehalten. Nichts wurde geschrieben.</translation>
    </message>
    <message>
        <source>Where the copies are</source>
        <translation>Wo die Kopien sind</translation>
    </message>
    <message>
        <source>The copy to restore from</source>
        <translation>Die Kopie, aus der wiederhergestellt wird</translation>
    </message>
    <message>
        <source>Wickbook books (*.wickbook);;All files (*)</source>
        <translation>Wickbook-Bücher (*.wickbook);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Where the new book shall lie</source>
        <translation>Wo das neue Buch liegen soll</translation>
    </message>
    <message>
        <source>Restore from a copy</source>
        <translation>Aus einer Kopie wiederherstellen</translation>
    </message>
    <message>
        <source>&amp;New book</source>
        <translation>&amp;Neues Buch</translation>
    </message>
    <message>
        <source>file of the new book</source>
        <translation>Datei des neuen Buchs</translation>
    </message>
    <message>
        <source>C&amp;hoose…</source>
        <translation>&amp;Wählen…</translation>
    </message>
    <message>
        <source>choose the file of the new book</source>
        <translation>die Datei des neuen Buchs wählen</translation>
    </message>
    <message>
        <source>what differs</source>
        <translation>was sich unterscheidet</translation>
    </message>
    <message>
        <source>Another &amp;folder…</source>
        <translation>Ein anderer &amp;Ordner…</translation>
    </message>
    <message>
        <source>Another f&amp;ile…</source>
        <translation>Eine andere &amp;Datei…</translation>
    </message>
    <message>
        <source>copies to restore from</source>
        <translation>Kopien, aus denen wiederhergestellt werden kann</translation>
    </message>
    <message>
        <source>how far it is</source>
        <translation>wie weit es ist</translation>
    </message>
    <message>
        <source>&amp;Verify the copy</source>
        <translation>Die Kopie &amp;prüfen</translation>
    </message>
    <message>
        <source>&amp;Restore</source>
        <translation>Wieder&amp;herstellen</translation>
    </message>
    <message>
        <source>&amp;Open the restored book</source>
        <translation>Das wiederhergestellte Buch ö&amp;ffnen</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::ReviewWindow</name>
    <message>
        <source>Look through the register – Wickbook</source>
        <translation>Das Tagebuch durchsehen – Wickbook</translation>
    </message>
    <message>
        <source>Look through the register</source>
        <translation>Das Tagebuch durchsehen</translation>
    </message>
    <message>
        <source>The register has changed since it was looked through.</source>
        <translation>Das Tagebuch hat sich geändert, seit es durchgesehen wurde.</translation>
    </message>
    <message>
        <source>Look again  F5</source>
        <translation>Wieder durchsehen  F5</translation>
    </message>
    <message>
        <source>Look through the register again</source>
        <translation>Das Tagebuch wieder durchsehen</translation>
    </message>
    <message>
        <source>How far the register has been looked through</source>
        <translation>Wie weit das Tagebuch durchgesehen ist</translation>
    </message>
    <message>
        <source>Cancel  Esc</source>
        <translation>Abbrechen  Esc</translation>
    </message>
    <message>
        <source>Stop looking through the register</source>
        <translation>Das Durchsehen des Tagebuchs anhalten</translation>
    </message>
    <message>
        <source>The other window can be used meanwhile.</source>
        <translation>Das andere Fenster lässt sich inzwischen benutzen.</translation>
    </message>
    <message>
        <source>Groups of questions, worst first</source>
        <translation>Gruppen von Fragen, die schlimmsten zuerst</translation>
    </message>
    <message>
        <source>In the list the keys are for the whole group, in the table for the readings chosen: S sound, D doubtful, E erroneous · W why · 1 to 3 take a likely cause · Enter opens in the register · N next, P previous group · Ctrl+Z takes back</source>
        <translation>In der Liste gelten die Tasten für die ganze Gruppe, in der Tabelle für die gewählten Ablesungen: S in Ordnung, D zweifelhaft, E falsch · W warum · 1 bis 3 nehmen eine wahrscheinliche Ursache · Enter öffnet im Tagebuch · N nächste, P vorige Gruppe · Strg+Z nimmt zurück</translation>
    </message>
    <message>
        <source>Stopped. Nothing was changed, and nothing is kept of it.</source>
        <translation>Angehalten. Nichts wurde geändert, und nichts davon wird behalten.</translation>
    </message>
    <message>
        <source>Every reading is judged among its neighbours; what is marked and not yet judged is asked about here.</source>
        <translation>Jede Ablesung wird mit ihren Nachbarn beurteilt; nach allem, was angemerkt und noch nicht beurteilt ist, wird hier gefragt.</translation>
    </message>
    <message>
        <source>reading %1 of %2</source>
        <translation>Ablesung %1 von %2</translation>
    </message>
    <message>
        <source>Opening the book</source>
        <translation>Das Buch wird geöffnet</translation>
    </message>
    <message>
        <source>Reading the book: %1</source>
        <translation>Das Buch wird gelesen: %1</translation>
    </message>
    <message>
        <source>Learning what this station usually reads</source>
        <translation>Es wird gelernt, was diese Station gewöhnlich abliest</translation>
    </message>
    <message>
        <source>Judging: %1</source>
        <translation>Es wird beurteilt: %1</translation>
    </message>
    <message>
        <source>%1 looked at</source>
        <translation>%1 angesehen</translation>
    </message>
    <message>
        <source>%1 to ask about, in %2 groups, worst first; %3.</source>
        <translation>%1 zu klären, in %2 Gruppen, die schlimmsten zuerst; %3.</translation>
    </message>
    <message>
        <source>Nothing to ask: no reading is marked that has not been judged; %1.</source>
        <translation>Nichts zu klären: keine angemerkte Ablesung ist unbeurteilt; %1.</translation>
    </message>
    <message>
        <source>Choose a reading that is asked about first, or go to the list for the whole group.</source>
        <translation>Zuerst eine Ablesung wählen, nach der gefragt wird, oder für die ganze Gruppe in die Liste gehen.</translation>
    </message>
    <message>
        <source>judged %1</source>
        <translation>als %1 beurteilt</translation>
    </message>
    <message>
        <source>%1: %2, %3</source>
        <translation>%1: %2, %3</translation>
    </message>
    <message>
        <source>%1 %2. Ctrl+Z takes it back.</source>
        <translation>%1 %2. Strg+Z nimmt es zurück.</translation>
    </message>
    <message>
        <source>What should have stood there is not known. Judge the reading doubtful or erroneous instead.</source>
        <translation>Was dort stehen sollte, ist nicht bekannt. Die Ablesung stattdessen als zweifelhaft oder falsch beurteilen.</translation>
    </message>
    <message>
        <source>slip of the keys: %1</source>
        <translation>Versehen an den Tasten: %1</translation>
    </message>
    <message>
        <source>slip at the thermometer: %1</source>
        <translation>Versehen am Thermometer: %1</translation>
    </message>
    <message>
        <source>corrected %1, %2</source>
        <translation>%1 berichtigt, %2</translation>
    </message>
    <message>
        <source>%1: %2. What was read first is kept. Ctrl+Z takes it back.</source>
        <translation>%1: %2. Was zuerst abgelesen wurde, bleibt erhalten. Strg+Z nimmt es zurück.</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::RunPanel</name>
    <message>
        <source>Readings of this group, with their neighbours</source>
        <translation>Ablesungen dieser Gruppe mit ihren Nachbarn</translation>
    </message>
    <message>
        <source>What the checks say</source>
        <translation>Was die Prüfungen sagen</translation>
    </message>
    <message>
        <source>&amp;Why</source>
        <translation>&amp;Warum</translation>
    </message>
    <message>
        <source>Why, kept with each judgement</source>
        <translation>Warum, bleibt bei jedem Urteil erhalten</translation>
    </message>
    <message>
        <source>kept with each judgement, for example: fog every morning that week</source>
        <translation>bleibt bei jedem Urteil erhalten, zum Beispiel: in dieser Woche jeden Morgen Nebel</translation>
    </message>
    <message>
        <source>Sound  S</source>
        <translation>In Ordnung  S</translation>
    </message>
    <message>
        <source>Doubtful  D</source>
        <translation>Zweifelhaft  D</translation>
    </message>
    <message>
        <source>Erroneous  E</source>
        <translation>Falsch  E</translation>
    </message>
    <message>
        <source>Judge %1</source>
        <translation>Als %1 beurteilen</translation>
    </message>
    <message>
        <source>No reading is chosen.</source>
        <translation>Keine Ablesung ist gewählt.</translation>
    </message>
    <message numerus="yes">
        <source>Judge the %n chosen:</source>
        <translation>
            <numerusform>Die gewählte beurteilen:</numerusform>
            <numerusform>Die %n gewählten beurteilen:</numerusform>
        </translation>
    </message>
    <message>
        <source>Judge this reading:</source>
        <translation>Diese Ablesung beurteilen:</translation>
    </message>
    <message numerus="yes">
        <source>Judge all %n:</source>
        <translation>
            <numerusform>Die eine beurteilen:</numerusform>
            <numerusform>Alle %n beurteilen:</numerusform>
        </translation>
    </message>
    <message>
        <source>What does the paper say?</source>
        <translation>Was sagt das Papier?</translation>
    </message>
    <message>
        <source>the paper says so: it was a slip of the keys</source>
        <translation>so steht es auf dem Papier: es war ein Versehen an den Tasten</translation>
    </message>
    <message>
        <source>the paper says what stands here: it was a slip at the thermometer</source>
        <translation>auf dem Papier steht, was hier steht: es war ein Versehen am Thermometer</translation>
    </message>
    <message>
        <source>neither: back to the notes</source>
        <translation>keines von beiden: zurück zu den Bemerkungen</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::RunsModel</name>
    <message>
        <source>a slip: %1</source>
        <translation>ein Versehen: %1</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::SaltCheckForm</name>
    <message>
        <source>%1, %2 %</source>
        <translation>%1, %2&#xa0;%</translation>
    </message>
    <message>
        <source>Salt check</source>
        <translation>Salzprüfung</translation>
    </message>
    <message>
        <source>A sensor over saturated salt solutions</source>
        <translation>Ein Fühler über gesättigten Salzlösungen</translation>
    </message>
    <message>
        <source>It checks an electronic sensor, not a psychrometer. Wet slurry of the salt in a closed jar, near 25 °C, several hours until it stands still. Lithium chloride is poisonous: gloves, no kitchen vessels, local rules for disposal. A field may stay empty.</source>
        <translation>Das prüft einen elektronischen Fühler, kein Psychrometer. Nasser Brei des Salzes in einem geschlossenen Glas, bei etwa 25&#xa0;°C, mehrere Stunden, bis die Anzeige stillsteht. Lithiumchlorid ist giftig: Handschuhe, keine Küchengefäße, örtliche Vorschriften für die Entsorgung. Ein Feld darf leer bleiben.</translation>
    </message>
    <message>
        <source>Date, year-month-day</source>
        <translation>Datum, Jahr-Monat-Tag</translation>
    </message>
    <message>
        <source>Sensor</source>
        <translation>Fühler</translation>
    </message>
    <message>
        <source>temperature of the solutions</source>
        <translation>Temperatur der Lösungen</translation>
    </message>
    <message>
        <source>°C</source>
        <translation>°C</translation>
    </message>
    <message>
        <source>Temperature</source>
        <translation>Temperatur</translation>
    </message>
    <message>
        <source>reading over %1</source>
        <translation>Ablesung über %1</translation>
    </message>
    <message>
        <source>% read</source>
        <translation>% abgelesen</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>Write it down once it has happened; this date is still to come.</source>
        <translation>Erst eintragen, wenn es geschehen ist; dieser Tag kommt noch.</translation>
    </message>
    <message>
        <source>%1 is not a relative humidity. Look at the %2.</source>
        <translation>%1 ist keine relative Feuchte. Ansehen: %2.</translation>
    </message>
    <message>
        <source>Write what the sensor showed over at least one solution.</source>
        <translation>Schreiben, was der Fühler über wenigstens einer Lösung zeigte.</translation>
    </message>
    <message>
        <source>Write which sensor it was.</source>
        <translation>Schreiben, welcher Fühler es war.</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::SaltCheckSection</name>
    <message>
        <source>A sensor over &amp;salts</source>
        <translation>Ein &amp;Fühler über Salzen</translation>
    </message>
    <message>
        <source>New salt check…</source>
        <translation>Neue Salzprüfung…</translation>
    </message>
    <message>
        <source>%1, %2: %3</source>
        <translation>%1, %2: %3</translation>
    </message>
    <message>
        <source>For an electronic sensor that the station is compared with; a psychrometer is not checked so.</source>
        <translation>Für einen elektronischen Fühler, mit dem die Station verglichen wird; ein Psychrometer prüft man so nicht.</translation>
    </message>
    <message>
        <source>salt check</source>
        <translation>Salzprüfung</translation>
    </message>
    <message>
        <source>Written down. Undo takes it back.</source>
        <translation>Eingetragen. Rückgängig nimmt es zurück.</translation>
    </message>
    <message>
        <source>salt check taken back</source>
        <translation>Salzprüfung zurückgenommen</translation>
    </message>
    <message>
        <source>Taken back. Undo brings it again.</source>
        <translation>Zurückgenommen. Rückgängig bringt es wieder.</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::SalvageDialog</name>
    <message>
        <source>Save what can be read</source>
        <translation>Retten, was lesbar ist</translation>
    </message>
    <message>
        <source>Save what can be read of %1</source>
        <translation>Retten, was an %1 lesbar ist</translation>
    </message>
    <message>
        <source>Every revision that can still be read goes into a new book, and what can&apos;t is counted. The damaged book stays as it is: keep it. Where there is a copy that verifies, restore that one first.</source>
        <translation>Jede noch lesbare Fassung kommt in ein neues Buch, und was nicht lesbar ist, wird gezählt. Das beschädigte Buch bleibt, wie es ist; es ist aufzuheben. Wo es eine bestätigte Kopie gibt, zuerst diese wiederherstellen.</translation>
    </message>
    <message>
        <source>what came back and what is lost</source>
        <translation>was zurückkam und was verloren ist</translation>
    </message>
    <message>
        <source>how far it is</source>
        <translation>wie weit es ist</translation>
    </message>
    <message>
        <source>&amp;Name the new book…</source>
        <translation>Das neue Buch &amp;benennen…</translation>
    </message>
    <message>
        <source>&amp;Stop</source>
        <translation>&amp;Anhalten</translation>
    </message>
    <message>
        <source>&amp;Open the new book</source>
        <translation>Das neue Buch ö&amp;ffnen</translation>
    </message>
    <message>
        <source>&amp;Close</source>
        <translation>&amp;Schließen</translation>
    </message>
    <message>
        <source>%1 salvaged</source>
        <translation>%1 gerettet</translation>
    </message>
    <message>
        <source>Reading %1 page by page.</source>
        <translation>%1 wird Seite für Seite gelesen.</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::SheetDialog</name>
    <message>
        <source>A4</source>
        <translation>A4</translation>
    </message>
    <message>
        <source>Letter</source>
        <translation>Letter</translation>
    </message>
    <message>
        <source>Pa&amp;per</source>
        <translation>Pa&amp;pier</translation>
    </message>
    <message>
        <source>&amp;Look at the pages…</source>
        <translation>Die Seiten &amp;ansehen…</translation>
    </message>
    <message>
        <source>P&amp;rint…</source>
        <translation>D&amp;rucken…</translation>
    </message>
    <message>
        <source>&amp;Save as PDF…</source>
        <translation>Als PDF &amp;speichern…</translation>
    </message>
    <message>
        <source>&amp;Close</source>
        <translation>&amp;Schließen</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::SideBySideForm</name>
    <message>
        <source>Beside another instrument</source>
        <translation>Neben einem anderen Gerät</translation>
    </message>
    <message>
        <source>Another instrument beside the station&apos;s</source>
        <translation>Ein anderes Gerät neben dem der Station</translation>
    </message>
    <message>
        <source>Same place, same air, read within five minutes of the station&apos;s pair. A reference tells how far the station lies off and gives its own coefficient; a new instrument or site goes beside the old for a year before it takes over.</source>
        <translation>Derselbe Ort, dieselbe Luft, höchstens fünf Minuten vor oder nach dem Paar der Station abgelesen. Eine Referenz sagt, wie weit die Station daneben liegt, und gibt ihren eigenen Koeffizienten; ein neues Gerät oder ein neuer Ort steht ein Jahr neben dem alten, bevor es übernimmt.</translation>
    </message>
    <message>
        <source>What it is</source>
        <translation>Was es ist</translation>
    </message>
    <message>
        <source>It is</source>
        <translation>Es ist</translation>
    </message>
    <message>
        <source>First day, year-month-day</source>
        <translation>Erster Tag, Jahr-Monat-Tag</translation>
    </message>
    <message>
        <source>Last day</source>
        <translation>Letzter Tag</translation>
    </message>
    <message>
        <source>as announced; may stay empty</source>
        <translation>wie angekündigt; darf leer bleiben</translation>
    </message>
    <message>
        <source>uncertainty of the reference</source>
        <translation>Unsicherheit der Referenz</translation>
    </message>
    <message>
        <source>% RH, standard; of a reference</source>
        <translation>% rF, Standard; einer Referenz</translation>
    </message>
    <message>
        <source>Its uncertainty</source>
        <translation>Seine Unsicherheit</translation>
    </message>
    <message>
        <source>no psychrometer, or as the station&apos;s</source>
        <translation>kein Psychrometer, oder wie die Station</translation>
    </message>
    <message>
        <source>A psychrometer, exposed as</source>
        <translation>Ein Psychrometer, aufgestellt</translation>
    </message>
    <message>
        <source>What was decided</source>
        <translation>Was entschieden wurde</translation>
    </message>
    <message>
        <source>at the end: joined, broken, coefficient taken over from …</source>
        <translation>am Ende: verbunden, getrennt, Koeffizient übernommen ab …</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>Write what the other instrument is.</source>
        <translation>Schreiben, was das andere Gerät ist.</translation>
    </message>
    <message>
        <source>The last day lies before the first.</source>
        <translation>Der letzte Tag liegt vor dem ersten.</translation>
    </message>
    <message>
        <source>The uncertainty of a reference lies between 0 and 20 % RH.</source>
        <translation>Die Unsicherheit einer Referenz liegt zwischen 0 und 20&#xa0;% rF.</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::SideBySideSection</name>
    <message>
        <source>Beside a&amp;nother instrument</source>
        <translation>&amp;Neben einem anderen Gerät</translation>
    </message>
    <message>
        <source>Announce one…</source>
        <translation>Eines ankündigen…</translation>
    </message>
    <message>
        <source>Readings and what they say…</source>
        <translation>Ablesungen und was sie sagen…</translation>
    </message>
    <message>
        <source>%1, %2: from %3</source>
        <translation>%1, %2: ab %3</translation>
    </message>
    <message>
        <source> to %1</source>
        <translation> bis %1</translation>
    </message>
    <message>
        <source>A reference tells how far the station lies off and gives its own coefficient; what shall follow the station&apos;s instrument stands beside it first.</source>
        <translation>Eine Referenz sagt, wie weit die Station daneben liegt, und gibt ihren eigenen Koeffizienten; was das Gerät der Station ablösen soll, steht zuerst daneben.</translation>
    </message>
    <message>
        <source>beside another instrument: %1</source>
        <translation>neben einem anderen Gerät: %1</translation>
    </message>
    <message>
        <source>Written down. Its readings come in under “Readings and what they say”.</source>
        <translation>Eingetragen. Seine Ablesungen kommen unter „Ablesungen und was sie sagen“ herein.</translation>
    </message>
    <message>
        <source>comparison taken back</source>
        <translation>Vergleich zurückgenommen</translation>
    </message>
    <message>
        <source>Taken back with its readings. Undo brings them again.</source>
        <translation>Mit seinen Ablesungen zurückgenommen. Rückgängig bringt sie wieder.</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::SignForm</name>
    <message>
        <source>%1 of %2 readings at observing hours count. The numbers and the readings are kept as they are now. A change stays possible afterwards; the month and its report then say so.</source>
        <translation>%1 von %2 Ablesungen zu den Terminen zählen. Zahlen und Ablesungen werden festgehalten, wie sie jetzt sind. Eine Änderung bleibt auch danach möglich; Monat und Bericht sagen es dann.</translation>
    </message>
    <message>
        <source>Queries still open: %1; their readings stay set aside. Better settle them first.</source>
        <translation>Noch offene Rückfragen: %1; ihre Ablesungen bleiben beiseite. Besser erst klären.</translation>
    </message>
    <message>
        <source>Sign off</source>
        <translation>Abzeichnen</translation>
    </message>
    <message>
        <source>Sign off %1</source>
        <translation>%1 abzeichnen</translation>
    </message>
    <message>
        <source>&amp;Initials or name</source>
        <translation>&amp;Kürzel oder Name</translation>
    </message>
    <message>
        <source>&amp;Note</source>
        <translation>&amp;Notiz</translation>
    </message>
    <message>
        <source>Write who signs the month off.</source>
        <translation>Schreiben, wer den Monat abzeichnet.</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::StationForm</name>
    <message>
        <source>The hours follow standard time all the year, and so the sun; while summer time is in force the clock is ahead of them.</source>
        <translation>Die Termine folgen das ganze Jahr der Normalzeit und damit der Sonne; solange Sommerzeit gilt, geht die Uhr ihnen voraus.</translation>
    </message>
    <message>
        <source>The hours go with the clock on the wall; when it changes in spring and autumn they move against the sun, which changes a humidity record.</source>
        <translation>Die Termine gehen mit der Uhr an der Wand; wenn sie im Frühjahr und Herbst umgestellt wird, verschieben sie sich gegen die Sonne, und das ändert eine Feuchtereihe.</translation>
    </message>
    <message>
        <source>The hours are those of UTC, the same moment everywhere.</source>
        <translation>Die Termine sind die der UTC, überall derselbe Augenblick.</translation>
    </message>
    <message>
        <source>Tomorrow the clock skips %1, so nothing is expected then.</source>
        <translation>Morgen überspringt die Uhr %1, daher wird dann nichts erwartet.</translation>
    </message>
    <message>
        <source>Tomorrow %1 is read when the clock shows %2.</source>
        <translation>Morgen wird %1 abgelesen, wenn die Uhr %2 zeigt.</translation>
    </message>
    <message>
        <source>Start a station</source>
        <translation>Eine Station beginnen</translation>
    </message>
    <message>
        <source>One page; everything on it can be changed later.</source>
        <translation>Eine Seite; alles darauf lässt sich später ändern.</translation>
    </message>
    <message>
        <source>&amp;Start the book</source>
        <translation>Das Buch &amp;beginnen</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>Latitude runs from −90 to 90.</source>
        <translation>Die Breite geht von −90 bis 90.</translation>
    </message>
    <message>
        <source>Longitude runs from −180 to 180.</source>
        <translation>Die Länge geht von −180 bis 180.</translation>
    </message>
    <message>
        <source>The elevation must lie between −500 and 9000 m; write it in metres.</source>
        <translation>Die Höhe muss zwischen −500 und 9000&#xa0;m liegen; in Metern schreiben.</translation>
    </message>
    <message>
        <source>There is no time zone of that name. Choose one from the list.</source>
        <translation>Eine Zeitzone dieses Namens gibt es nicht. Eine aus der Liste wählen.</translation>
    </message>
    <message>
        <source>name of the station</source>
        <translation>Name der Station</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>latitude</source>
        <translation>Breite</translation>
    </message>
    <message>
        <source>° north</source>
        <translation>° Nord</translation>
    </message>
    <message>
        <source>longitude</source>
        <translation>Länge</translation>
    </message>
    <message>
        <source>° east</source>
        <translation>° Ost</translation>
    </message>
    <message>
        <source>Degrees and decimals, south with a minus sign.</source>
        <translation>Grad mit Dezimalen, Süd mit Minuszeichen.</translation>
    </message>
    <message>
        <source>Degrees and decimals, west with a minus sign.</source>
        <translation>Grad mit Dezimalen, West mit Minuszeichen.</translation>
    </message>
    <message>
        <source>Place, south and west with −</source>
        <translation>Ort, Süd und West mit −</translation>
    </message>
    <message>
        <source>elevation</source>
        <translation>Höhe</translation>
    </message>
    <message>
        <source>m</source>
        <translation>m</translation>
    </message>
    <message>
        <source>Elevation above the sea</source>
        <translation>Höhe über dem Meer</translation>
    </message>
    <message>
        <source>observing hours</source>
        <translation>Termine</translation>
    </message>
    <message>
        <source>Observing hours</source>
        <translation>Beobachtungstermine</translation>
    </message>
    <message>
        <source>what the hours follow</source>
        <translation>wonach sich die Termine richten</translation>
    </message>
    <message>
        <source>They follow</source>
        <translation>Sie folgen</translation>
    </message>
    <message>
        <source>time zone</source>
        <translation>Zeitzone</translation>
    </message>
    <message>
        <source>Time zone</source>
        <translation>Zeitzone</translation>
    </message>
    <message>
        <source>how the thermometers are exposed</source>
        <translation>wie die Thermometer aufgestellt sind</translation>
    </message>
    <message>
        <source>The thermometers are</source>
        <translation>Die Thermometer sind</translation>
    </message>
    <message>
        <source>scale of the thermometers</source>
        <translation>Skala der Thermometer</translation>
    </message>
    <message>
        <source>finest step that is read</source>
        <translation>feinster abgelesener Schritt</translation>
    </message>
    <message>
        <source>tenths</source>
        <translation>Zehntel</translation>
    </message>
    <message>
        <source>fifths</source>
        <translation>Fünftel</translation>
    </message>
    <message>
        <source>halves</source>
        <translation>Halbe</translation>
    </message>
    <message>
        <source>whole degrees</source>
        <translation>ganze Grad</translation>
    </message>
    <message>
        <source>read to</source>
        <translation>abgelesen auf</translation>
    </message>
    <message>
        <source>Scale</source>
        <translation>Skala</translation>
    </message>
    <message>
        <source>lowest mark</source>
        <translation>tiefster Strich</translation>
    </message>
    <message>
        <source>highest mark</source>
        <translation>höchster Strich</translation>
    </message>
    <message>
        <source>to</source>
        <translation>bis</translation>
    </message>
    <message>
        <source>Marks run from</source>
        <translation>Die Striche gehen von</translation>
    </message>
    <message>
        <source>Give the station a name, so that its book can be told from others.</source>
        <translation>Der Station einen Namen geben, damit ihr Buch von anderen zu unterscheiden ist.</translation>
    </message>
    <message>
        <source>Write the %1: the checks and the pressure need it.</source>
        <translation>%1 schreiben: die Prüfungen und der Luftdruck brauchen diese Angabe.</translation>
    </message>
    <message>
        <source>There is no such place: latitude runs from −90 to 90, longitude from −180 to 180.</source>
        <translation>Einen solchen Ort gibt es nicht: die Breite geht von −90 bis 90, die Länge von −180 bis 180.</translation>
    </message>
    <message>
        <source>The lowest mark of the scale must lie below the highest.</source>
        <translation>Der tiefste Strich der Skala muss unter dem höchsten liegen.</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::StationPage</name>
    <message>
        <source>From a date on the station &amp;differs…</source>
        <translation>Von einem Tag an ist die Station &amp;anders…</translation>
    </message>
    <message>
        <source>what is known of the station</source>
        <translation>was von der Station bekannt ist</translation>
    </message>
    <message>
        <source>Book: %1</source>
        <translation>Buch: %1</translation>
    </message>
    <message>
        <source>1 reading</source>
        <translation>1 Ablesung</translation>
    </message>
    <message numerus="yes">
        <source>%n readings</source>
        <translation>
            <numerusform>%n Ablesung</numerusform>
            <numerusform>%n Ablesungen</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>From %1</source>
        <translation>Von %1 an</translation>
    </message>
    <message>
        <source>From the beginning</source>
        <translation>Von Anfang an</translation>
    </message>
    <message>
        <source>%1, in force</source>
        <translation>%1, gilt jetzt</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Ort</translation>
    </message>
    <message>
        <source>Elevation</source>
        <translation>Höhe</translation>
    </message>
    <message>
        <source>%1 m</source>
        <translation>%1&#xa0;m</translation>
    </message>
    <message>
        <source>Observing hours</source>
        <translation>Beobachtungstermine</translation>
    </message>
    <message>
        <source>none, extra readings only</source>
        <translation>keine, nur zusätzliche Ablesungen</translation>
    </message>
    <message>
        <source>%1; they follow %2</source>
        <translation>%1; sie folgen: %2</translation>
    </message>
    <message>
        <source>Time zone</source>
        <translation>Zeitzone</translation>
    </message>
    <message>
        <source>Exposure</source>
        <translation>Aufstellung</translation>
    </message>
    <message>
        <source>Own coefficient</source>
        <translation>Eigener Koeffizient</translation>
    </message>
    <message>
        <source>%1 × 10⁻⁴ per degree, water</source>
        <translation>%1 × 10⁻⁴ je Grad, Wasser</translation>
    </message>
    <message>
        <source>Mean pressure</source>
        <translation>Mittlerer Luftdruck</translation>
    </message>
    <message>
        <source>%1 hPa, where none was read</source>
        <translation>%1&#xa0;hPa, wo keiner abgelesen wurde</translation>
    </message>
    <message>
        <source>Surroundings</source>
        <translation>Umgebung</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::TakeBackForm</name>
    <message>
        <source>Take back</source>
        <translation>Zurücknehmen</translation>
    </message>
    <message>
        <source>Take it back</source>
        <translation>Zurücknehmen</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::TakeInDialog</name>
    <message>
        <source>Stop</source>
        <translation>Anhalten</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>Leave it</source>
        <translation>Lassen</translation>
    </message>
    <message>
        <source>Drop a table (CSV) or files of the Station Exchange Format here, or choose them. Nothing is written before you have seen what would become of every line.</source>
        <translation>Eine Tabelle (CSV) oder Dateien im Station Exchange Format hier ablegen oder auswählen. Nichts wird geschrieben, bevor zu sehen war, was aus jeder Zeile würde.</translation>
    </message>
    <message>
        <source>Choose a file</source>
        <translation>Eine Datei wählen</translation>
    </message>
    <message>
        <source>Tables and SEF files (*.csv *.tsv *.txt *.tab *.sef);;All files (*)</source>
        <translation>Tabellen und SEF-Dateien (*.csv *.tsv *.txt *.tab *.sef);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>%1 (Station Exchange Format; times in UTC, joined on time)</source>
        <translation>%1 (Station Exchange Format; Zeiten in UTC, nach der Zeit verbunden)</translation>
    </message>
    <message>
        <source>%1 (cells by %2, %3).</source>
        <translation>%1 (Zellen durch %2 getrennt, %3).</translation>
    </message>
    <message>
        <source>Read as the last file with these names was.</source>
        <translation>Gelesen wie die letzte Datei mit diesen Namen.</translation>
    </message>
    <message>
        <source>Its observing hours are taken by the station&apos;s rule: %1.</source>
        <translation>Ihre Termine gelten nach der Regel der Station: %1.</translation>
    </message>
    <message>
        <source>Trying what every line would become…</source>
        <translation>Es wird probiert, was aus jeder Zeile würde…</translation>
    </message>
    <message>
        <source>Stopped. Nothing was written.</source>
        <translation>Angehalten. Nichts wurde geschrieben.</translation>
    </message>
    <message>
        <source>Read the whole file before bringing it in.</source>
        <translation>Vor dem Einlesen die ganze Datei lesen.</translation>
    </message>
    <message>
        <source>One reading of the book differs from the file:</source>
        <translation>Eine Ablesung des Buchs unterscheidet sich von der Datei:</translation>
    </message>
    <message>
        <source>%1 readings of the book differ from the file:</source>
        <translation>%1 Ablesungen des Buchs unterscheiden sich von der Datei:</translation>
    </message>
    <message>
        <source>&amp;Bring in %1</source>
        <translation>%1 ein&amp;lesen</translation>
    </message>
    <message>
        <source>Bringing in…</source>
        <translation>Wird eingelesen…</translation>
    </message>
    <message>
        <source>bring in %1</source>
        <translation>%1 einlesen</translation>
    </message>
    <message>
        <source>Brought in: %1, of these marked: %2. Left out: %3.</source>
        <translation>Eingelesen: %1, davon angemerkt: %2. Weggelassen: %3.</translation>
    </message>
    <message>
        <source>The book as it was before is kept among its copies as “%1”.</source>
        <translation>Das Buch, wie es vorher war, liegt unter seinen Kopien als „%1“.</translation>
    </message>
    <message>
        <source>Something was changed since: undo that first, with Ctrl+Z.</source>
        <translation>Seither wurde etwas geändert: das zuerst zurücknehmen, mit Strg+Z.</translation>
    </message>
    <message>
        <source>Withdrawn: nothing of it counts any more; the history keeps what was brought in.</source>
        <translation>Zurückgezogen: nichts davon zählt mehr; die Geschichte bewahrt das Eingelesene.</translation>
    </message>
    <message>
        <source>Not everything could be withdrawn, so nothing was.</source>
        <translation>Nicht alles ließ sich zurückziehen, daher wurde nichts zurückgezogen.</translation>
    </message>
    <message>
        <source>Where the lines that are left out shall lie</source>
        <translation>Wo die weggelassenen Zeilen liegen sollen</translation>
    </message>
    <message>
        <source>%1 left out.csv</source>
        <translation>%1 weggelassen.csv</translation>
    </message>
    <message>
        <source>Tables (*.csv)</source>
        <translation>Tabellen (*.csv)</translation>
    </message>
    <message>
        <source>Saved as “%1”, each line with its reason.</source>
        <translation>Als „%1“ gespeichert, jede Zeile mit ihrem Grund.</translation>
    </message>
    <message>
        <source>Bring in a register</source>
        <translation>Ein Tagebuch einlesen</translation>
    </message>
    <message>
        <source>C&amp;hoose a file…</source>
        <translation>Eine &amp;Datei wählen…</translation>
    </message>
    <message>
        <source>which lines are shown</source>
        <translation>welche Zeilen gezeigt werden</translation>
    </message>
    <message>
        <source>all lines</source>
        <translation>alle Zeilen</translation>
    </message>
    <message>
        <source>what is new</source>
        <translation>was neu ist</translation>
    </message>
    <message>
        <source>what is marked</source>
        <translation>was angemerkt ist</translation>
    </message>
    <message>
        <source>conflicts</source>
        <translation>Widersprüche</translation>
    </message>
    <message>
        <source>what can&apos;t come in</source>
        <translation>was nicht hereinkommt</translation>
    </message>
    <message>
        <source>what is there already</source>
        <translation>was schon da ist</translation>
    </message>
    <message>
        <source>what every line would become</source>
        <translation>was aus jeder Zeile würde</translation>
    </message>
    <message>
        <source>what becomes of conflicts</source>
        <translation>was aus Widersprüchen wird</translation>
    </message>
    <message>
        <source>keep what the book has</source>
        <translation>behalten, was das Buch hat</translation>
    </message>
    <message>
        <source>take the file&apos;s; the old ones stay in the history</source>
        <translation>die der Datei nehmen; die alten bleiben in der Geschichte</translation>
    </message>
    <message>
        <source>leave these lines out and list them</source>
        <translation>diese Zeilen weglassen und auflisten</translation>
    </message>
    <message>
        <source>&amp;First keep a copy of the book</source>
        <translation>Zuerst eine &amp;Kopie des Buchs anlegen</translation>
    </message>
    <message>
        <source>how far it is</source>
        <translation>wie weit es ist</translation>
    </message>
    <message>
        <source>&amp;Read the whole file</source>
        <translation>Die &amp;ganze Datei lesen</translation>
    </message>
    <message>
        <source>&amp;Save what is left out…</source>
        <translation>Das Weggelassene &amp;speichern…</translation>
    </message>
    <message>
        <source>&amp;Withdraw what was brought in</source>
        <translation>Das Eingelesene &amp;zurückziehen</translation>
    </message>
    <message>
        <source>&amp;Bring in</source>
        <translation>Ein&amp;lesen</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::ThermometerDrawing</name>
    <message>
        <source>Drawn dry bulb thermometer</source>
        <translation>Gezeichnetes trockenes Thermometer</translation>
    </message>
    <message>
        <source>Drawn wet bulb thermometer</source>
        <translation>Gezeichnetes feuchtes Thermometer</translation>
    </message>
    <message>
        <source>Up and down move the column by a step of the scale, Page Up and Page Down by ten.</source>
        <translation>Pfeil auf und Pfeil ab bewegen den Faden um einen Schritt der Skala, Bild auf und Bild ab um zehn.</translation>
    </message>
    <message>
        <source>below scale</source>
        <translation>unter der Skala</translation>
    </message>
    <message>
        <source>no reading yet</source>
        <translation>noch keine Ablesung</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::ThermometerForm</name>
    <message>
        <source>Thermometer</source>
        <translation>Thermometer</translation>
    </message>
    <message>
        <source>Change a thermometer</source>
        <translation>Ein Thermometer ändern</translation>
    </message>
    <message>
        <source>A new thermometer</source>
        <translation>Ein neues Thermometer</translation>
    </message>
    <message>
        <source>What was read with it stays as it was read. A column that breaks or a zero that moved is a correction, not a new thermometer.</source>
        <translation>Was mit ihm abgelesen wurde, bleibt, wie es abgelesen wurde. Ein getrennter Faden oder ein verschobener Nullpunkt ist eine Korrektion, kein neues Thermometer.</translation>
    </message>
    <message>
        <source>Serial number or name</source>
        <translation>Seriennummer oder Name</translation>
    </message>
    <message>
        <source>Liquid</source>
        <translation>Flüssigkeit</translation>
    </message>
    <message>
        <source>spirit, mercury, …</source>
        <translation>Alkohol, Quecksilber, …</translation>
    </message>
    <message>
        <source>Scale in</source>
        <translation>Skala in</translation>
    </message>
    <message>
        <source>Read to</source>
        <translation>Abgelesen auf</translation>
    </message>
    <message>
        <source>finest step that is read</source>
        <translation>feinster abgelesener Schritt</translation>
    </message>
    <message>
        <source>Lowest mark</source>
        <translation>Tiefster Strich</translation>
    </message>
    <message>
        <source>lowest mark</source>
        <translation>tiefster Strich</translation>
    </message>
    <message>
        <source>Highest mark</source>
        <translation>Höchster Strich</translation>
    </message>
    <message>
        <source>highest mark</source>
        <translation>höchster Strich</translation>
    </message>
    <message>
        <source>not yet</source>
        <translation>noch nicht</translation>
    </message>
    <message>
        <source>as the dry bulb</source>
        <translation>als trockenes</translation>
    </message>
    <message>
        <source>as the wet bulb</source>
        <translation>als feuchtes</translation>
    </message>
    <message>
        <source>It hangs</source>
        <translation>Es hängt</translation>
    </message>
    <message>
        <source>From, year-month-day</source>
        <translation>Ab, Jahr-Monat-Tag</translation>
    </message>
    <message>
        <source>Write the number on it, or what you call it.</source>
        <translation>Die Nummer darauf schreiben oder wie es genannt wird.</translation>
    </message>
    <message>
        <source>There is a thermometer “%1” already. Give this one another name.</source>
        <translation>Ein Thermometer „%1“ gibt es schon. Diesem einen anderen Namen geben.</translation>
    </message>
    <message>
        <source>Write the %1.</source>
        <translation>%1 schreiben.</translation>
    </message>
    <message>
        <source>The finest step that is read lies between 0.01 and 2 degrees; look at “%1”.</source>
        <translation>Der feinste abgelesene Schritt liegt zwischen 0,01 und 2 Grad; „%1“ ansehen.</translation>
    </message>
    <message>
        <source>The lowest mark must lie below the highest.</source>
        <translation>Der tiefste Strich muss unter dem höchsten liegen.</translation>
    </message>
    <message>
        <source>The other bulb&apos;s thermometer is not known. Hang the pair up under “The pair in use”.</source>
        <translation>Das andere Thermometer ist nicht bekannt. Das Paar unter „Das benutzte Paar“ eintragen.</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::ThermometerSection</name>
    <message>
        <source>unknown</source>
        <translation>unbekannt</translation>
    </message>
    <message>
        <source>&amp;Thermometers</source>
        <translation>Ther&amp;mometer</translation>
    </message>
    <message>
        <source>New thermometer…</source>
        <translation>Neues Thermometer…</translation>
    </message>
    <message>
        <source>dry bulb now</source>
        <translation>zurzeit trocken</translation>
    </message>
    <message>
        <source>wet bulb now</source>
        <translation>zurzeit feucht</translation>
    </message>
    <message>
        <source>not in use</source>
        <translation>nicht benutzt</translation>
    </message>
    <message>
        <source>%1, %2: %3</source>
        <translation>%1, %2: %3</translation>
    </message>
    <message>
        <source>No thermometer is written down yet; readings are used as they are read.</source>
        <translation>Noch kein Thermometer eingetragen; Ablesungen gelten, wie sie abgelesen sind.</translation>
    </message>
    <message>
        <source>thermometer changed: %1</source>
        <translation>Thermometer geändert: %1</translation>
    </message>
    <message>
        <source>new thermometer: %1</source>
        <translation>neues Thermometer: %1</translation>
    </message>
    <message>
        <source>Kept. Readings are worked out afresh; undo takes it back.</source>
        <translation>Behalten. Die Ablesungen werden neu berechnet; Rückgängig nimmt es zurück.</translation>
    </message>
    <message>
        <source>It hangs, or hung, in the screen: take it down under “The pair in use” first.</source>
        <translation>Es hängt oder hing in der Hütte: zuerst unter „Das benutzte Paar“ abnehmen.</translation>
    </message>
    <message>
        <source>thermometer taken back: %1</source>
        <translation>Thermometer zurückgenommen: %1</translation>
    </message>
    <message>
        <source>Taken back. Undo brings it again.</source>
        <translation>Zurückgenommen. Rückgängig bringt es wieder.</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::TypedNumberEdit</name>
    <message>
        <source>below scale</source>
        <translation>unter der Skala</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::VerdictModel</name>
    <message>
        <source>line</source>
        <translation>Zeile</translation>
    </message>
    <message>
        <source>what becomes of it</source>
        <translation>was daraus wird</translation>
    </message>
    <message>
        <source>reading</source>
        <translation>Ablesung</translation>
    </message>
    <message>
        <source>dry</source>
        <translation>trocken</translation>
    </message>
    <message>
        <source>wet</source>
        <translation>feucht</translation>
    </message>
    <message>
        <source>why</source>
        <translation>warum</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::WeatherChoice</name>
    <message>
        <source>weather</source>
        <translation>Wetter</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <source>not noted</source>
        <translation>nicht notiert</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::WhirlCircle</name>
    <message>
        <source>%1 s</source>
        <translation>%1&#xa0;s</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::WhirlTimer</name>
    <message>
        <source>from the hand to the bulbs, centimetres</source>
        <translation>von der Hand zu den Kugeln, Zentimeter</translation>
    </message>
    <message>
        <source>cm</source>
        <translation>cm</translation>
    </message>
    <message>
        <source>a sound at each turn</source>
        <translation>ein Ton bei jeder Umdrehung</translation>
    </message>
    <message>
        <source>no movement, numbers only</source>
        <translation>keine Bewegung, nur Zahlen</translation>
    </message>
    <message>
        <source>From the hand to the bulbs</source>
        <translation>Von der Hand zu den Kugeln</translation>
    </message>
    <message>
        <source>%1 turns a second</source>
        <translation>%1 Umdrehungen in der Sekunde</translation>
    </message>
    <message>
        <source>Write the distance, from 5 to 100 cm.</source>
        <translation>Den Abstand schreiben, von 5 bis 100&#xa0;cm.</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Anhalten</translation>
    </message>
    <message>
        <source>Start</source>
        <translation>Los</translation>
    </message>
    <message>
        <source>turn %1</source>
        <translation>Umdrehung %1</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::WickForm</name>
    <message>
        <source>Wick and water</source>
        <translation>Strumpf und Wasser</translation>
    </message>
    <message>
        <source>Change an entry of the log</source>
        <translation>Einen Eintrag ändern</translation>
    </message>
    <message>
        <source>What was done to the wick</source>
        <translation>Was am Strumpf getan wurde</translation>
    </message>
    <message>
        <source>A new wick: muslin soaked and washed free of dressing, one layer, tied above and below the bulb, a thread of cotton to the reservoir; not touched with the fingers. Water: distilled or rain.</source>
        <translation>Ein neuer Strumpf: Musselin, eingeweicht und von Appretur frei gewaschen, eine Lage, über und unter der Kugel gebunden, ein Baumwollfaden zum Gefäß; nicht mit den Fingern berührt. Wasser: destilliert oder Regen.</translation>
    </message>
    <message>
        <source>Date, year-month-day</source>
        <translation>Datum, Jahr-Monat-Tag</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Was</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>Write it down once it has happened; this date is still to come.</source>
        <translation>Erst eintragen, wenn es geschehen ist; dieser Tag kommt noch.</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::WickSection</name>
    <message>
        <source>&amp;Wick and water</source>
        <translation>Strumpf und &amp;Wasser</translation>
    </message>
    <message>
        <source>Write down care…</source>
        <translation>Pflege eintragen…</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Nothing was written down apart from what was ticked with a reading.</source>
        <translation>Nichts eingetragen außer dem, was mit einer Ablesung vermerkt wurde.</translation>
    </message>
    <message>
        <source>wick and water: %1</source>
        <translation>Strumpf und Wasser: %1</translation>
    </message>
    <message>
        <source>Written down; it marks the charts. Undo takes it back.</source>
        <translation>Eingetragen; es erscheint in den Diagrammen. Rückgängig nimmt es zurück.</translation>
    </message>
    <message>
        <source>wick and water: entry taken back</source>
        <translation>Strumpf und Wasser: Eintrag zurückgenommen</translation>
    </message>
    <message>
        <source>Taken back. Undo brings it again.</source>
        <translation>Zurückgenommen. Rückgängig bringt es wieder.</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::WorkingDialog</name>
    <message>
        <source>The working</source>
        <translation>Der Rechengang</translation>
    </message>
    <message>
        <source>&amp;Copy</source>
        <translation>&amp;Kopieren</translation>
    </message>
    <message>
        <source>Copy as a p&amp;icture</source>
        <translation>Als &amp;Bild kopieren</translation>
    </message>
    <message>
        <source>&amp;Print…</source>
        <translation>D&amp;rucken…</translation>
    </message>
    <message>
        <source>Keep as P&amp;DF…</source>
        <translation>Als P&amp;DF behalten…</translation>
    </message>
    <message>
        <source>C&amp;lose</source>
        <translation>&amp;Schließen</translation>
    </message>
    <message>
        <source>Copied as text.</source>
        <translation>Als Text kopiert.</translation>
    </message>
    <message>
        <source>Copied as a picture.</source>
        <translation>Als Bild kopiert.</translation>
    </message>
    <message>
        <source>The PDF can&apos;t be written: %1. Choose another folder.</source>
        <translation>Das PDF lässt sich nicht schreiben: %1. Einen anderen Ordner wählen.</translation>
    </message>
    <message>
        <source>Keep the working as a PDF</source>
        <translation>Den Rechengang als PDF behalten</translation>
    </message>
    <message>
        <source>working.pdf</source>
        <translation>rechengang.pdf</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>Kept as %1.</source>
        <translation>Als %1 behalten.</translation>
    </message>
</context>
</TS>
