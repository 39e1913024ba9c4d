<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>AirText</name>
    <message>
        <source>Vapour pressure over temperature, hPa</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dry bulb, %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>relative humidity</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>CauseText</name>
    <message>
        <source>read ten high</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>read ten low</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>read five high</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>read five low</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>its sign lost or added</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>its decimal mark lost or moved</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>two digits exchanged</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a digit dropped</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a digit written twice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a digit too many</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>its tenths counted the wrong way below zero</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>its column parted: look at the thread for a gap</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dry and wet swapped: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>both read ten high: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>both read ten low: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>both signs lost or added: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>both decimal marks lost: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>°F written as °C: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>°C written as °F: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the wick was ice, not water</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the wick was water, not ice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the line above was copied</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the wick was dry: the wet bulb is of no use</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 / %2</source>
        <extracomment>%1 the dry bulb, %2 the wet bulb</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dry bulb: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wet bulb: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dry bulb is %1, %2</source>
        <extracomment>%1 a temperature, %2 what went wrong</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wet bulb is %1, %2</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ChangedText</name>
    <message>
        <source>There is no reading yet that it could change.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>None of the %1 readings would have another humidity or dew point.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Of %1 readings %2 would have another humidity or dew point, all in one month.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Of %1 readings %2 would have another humidity or dew point, in %3 months.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 would lose their humidity.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 would gain one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What was read stays as it is.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ChartText</name>
    <message>
        <source>extra</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>doubtful</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>erroneous</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wick changed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>station or instruments changed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>exposure diary</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>station average, %1 years</source>
        <extracomment>the station&apos;s own mean range; %1 is how many years</extracomment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ChoiceWords</name>
    <message>
        <source>Humidity table</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For the wall of the hut: relative humidity and dew point for this station&apos;s exposure and pressure, a wick with water and one with ice.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Scale</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>half degrees</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>whole degrees</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dry less &amp;wet by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no table without a coefficient: say on the page Station how the thermometers hang.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Month form</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A month to write in by hand: a line for each observing hour, with boxes for the degrees.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Month</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Deputy&apos;s card</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A card for whoever reads in your place: hours, order of reading, frost, wick, what to do in doubt. A5, both sides.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Year book</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A year bound: numbers, charts, twelve months, and the hut&apos;s humidity table. It takes a few seconds.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Year</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ClassText</name>
    <message>
        <source>Dry and wet were probably written in each other&apos;s place: look again which is which.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Both were probably read on the °F scale: read the other side of the stem.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The dry bulb was probably misread by ten: read it again, tenths first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The wet bulb was probably misread by ten: read it again, tenths first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The dry bulb was probably misread by five: count the lines from the nearest figure.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The wet bulb was probably misread by five: count the lines from the nearest figure.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The decimal point of the dry bulb probably moved: look at what was written.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The decimal point of the wet bulb probably moved: look at what was written.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The wick was probably dry, or the reading came too early: wet the wick, go on until it falls no further, and read again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The air round this pair was probably warmer: keep it in the shade and away from people, and read again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Water or ice was given otherwise than by most: touch the wick and see.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dry bulb %1 %2 above the middle.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dry bulb %1 %2 below the middle.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wet bulb %1 %2 above the middle.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wet bulb %1 %2 below the middle.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Read both again, wet bulb first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No pair gives a humidity yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 pair.</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n pairs.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>The middle value is %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Half of them lie between %1 and %2, all between %3 and %4.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With fewer than %1 pairs nobody is called far off.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nobody is far off.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Far off: %1.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>CopyText</name>
    <message>
        <source>daily</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>by hand</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>before bringing in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>before taking back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>d MMM yyyy, HH:mm</source>
        <extracomment>day, short month, year and clock time, in Qt&apos;s date format</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No copy was kept, for the book did not verify; the copies made before stay. %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No copy was kept: the folder for copies, “%1”, is not there. Plug in the drive it lies on, or choose another folder. The copies made before stay.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No copy was kept: the disk that holds “%1” is full. Free some space, or choose another folder. The copies made before stay.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No copy was kept: nothing can be written in “%1”. Make it writable, or choose another folder. The copies made before stay. (%2)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No copy was kept: another program is writing in the book. It is tried again later.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No copy was kept in “%1”: check the drive, or choose another folder. The copies made before stay. (%2)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No copy was made: “%1” can&apos;t be written there. Choose another folder. (%2)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No copy was made. %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The old copy “%1” could not be deleted and stays: delete it by hand if it is not wanted. (%2)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>damaged; it is never deleted by itself</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>can&apos;t be read (%1)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 copy</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%1 copies</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>1 reading</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%1 readings</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
</context>
<context>
    <name>DiaryText</name>
    <message>
        <source>screen washed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>screen painted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>louvres choked with snow</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hedge or trees grown</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hedge or trees cut</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>screen moved</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>photograph taken</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>new wick</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>reservoir cleaned and filled</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>other</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>DifferenceText</name>
    <message>
        <source>only in %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>revised later in %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>revised in each for itself</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The station&apos;s name and rules</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A period of the station</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A thermometer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The thermometers in use</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A thermometer&apos;s correction</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>An absence</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A note in the diary</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A check of the pair</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A check over salts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Another instrument beside the station&apos;s</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A reading of another instrument</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A limit of the checks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Another entry (%1)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>d MMM yyyy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>withdrawn</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>missing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2, %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2 in both, with other words or marks; %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2 in %3, %4 in %5; %6</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, entered %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 and %2 have nothing in common: they are not copies of one book.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 and %2 hold the same readings and the same facts.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 reading: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 readings: %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 fact of the station: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 facts of the station: %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>… and %1 more</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>EntryTextContext</name>
    <message>
        <source>%1 never came that night: the clocks were put forward. Write the time that the clock showed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no such date. Write it as day, month and year.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The station does not read at that hour on that date. Choose another hour, or an extra reading.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dry bulb</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wet bulb</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>maximum</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>minimum</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pressure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wind</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wind is a Beaufort force from 0 to 12, a whole number.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>whirl %1, wet bulb</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>whirl %1, dry bulb</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ErrorText</name>
    <message>
        <source>the book</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is not there: look for it in another folder, or start a new station.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is there already and was left as it is: choose another name.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is not a book of this program and was left untouched: choose another file.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is damaged and was left untouched: keep it, and restore the newest backup into a new file. (%2)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 was written by a later version: it can be read here but not written. Install the later version to write in it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 can&apos;t be written: make the file and its folder writable, or copy the book to a folder of your own.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is being written by another program: nothing was saved yet. Try again in a moment.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The disk that holds %1 is full: nothing was saved. Free some space and try again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 can&apos;t be opened: check that you may read the file and its folder. (%2)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The disk that holds %1 failed to read or write: nothing was saved. Check the drive or the network, then try again. (%2)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is a reading at this hour already: open it in the register to correct it, or choose another hour.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This reading was changed meanwhile: look at it again, then make your change.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no reading at this time: check date and hour.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is too little memory free to work with %1: nothing was saved. Close other programs and try again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 could not be written because of an error in the program: nothing was saved. Please report it. (%2)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Revision %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The book</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is empty: choose another file.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 can&apos;t be read as text: save it as CSV in UTF-8 and try again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 has a line of names and nothing below: choose another file.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is no text: save the register as CSV and try again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This is the Station Exchange Format in version %1; versions 1.0.0 and 0.2.0 can be read. Ask for the file in one of these.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The file begins as the Station Exchange Format does, but its line %1 is not as that format has it: look at the first thirteen lines.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The values are in “%1”; bulbs can be read in C, F or K and pressures in hPa, Pa or kPa. Have them worked out in one of these.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The days are counted by another calendar (%1), and only the Gregorian one can be read: have the dates worked out in it first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>These files are of different stations (%1): bring them in one by one, each into its own book.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>None of these files holds a dry bulb (ta), a wet bulb (tb) or a pressure (p), read at a moment: give at least one that does. (%1)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No column tells the time: name one with --map COLUMN=time, or two with =date and =hour. (%1)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The first line of %1 must name the columns: time (or date and clock), and rh or other_dry and other_wet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No column holds the dry or wet bulb: name them with --map COLUMN=dry and --map COLUMN=wet. (%1)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no column %1 in the file: check the name in the --map option.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Two columns would be the same field (%1): say with --map which one it is.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stopped: nothing was imported.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>More than %1 lines have dates that can be read as day and month or as month and day: say with --date-order which it is, or import from a file.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The file has more lines than can be taken at once: split it and import the parts. (%1)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“%1” has a year of two digits: write all four</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“%1” can be read as day and month or as month and day: write dates as 2025-03-01</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“%1” is not a day of the calendar: check day and month</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“%1” is not an hour of the day: check hour and minute</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the time and the hour beside it lie more than half a day apart: check “%1”</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“%1” in the column %2 has more than one mark: write one decimal mark and no groups</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“%1” in the column %2 has too many digits: check it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“%1” in the column %2 is not a Beaufort force: write 0 to 12</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“%1” says that the value stands for a stretch of time, not for a moment: take what was read at a moment</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the line has too many cells, as a decimal comma makes it in a file with commas between cells: use semicolons or decimal points</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the line has more cells than the first line: look for a stray separator</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the line has fewer cells than the first line: complete it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a quotation mark is opened and never closed: close it or take it away</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>text follows a closing quotation mark: look at the quotation marks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a quotation mark stands within the text: put the whole cell in quotation marks and double it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the line is longer than any reading can be: look for missing line ends</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the line holds a zero byte and is no text: save the file again as CSV</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the line is broken UTF-16: save the file again as CSV in UTF-8</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>another line of the file holds the same moment: keep one of them</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no time is given: add it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“%1” is not a time that can be read: write it as 2025-03-01T09:00</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“%1” came twice that night, when the clocks went back: add the offset from UTC</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“%1” never was on the clock, it was put forward that night: check the hour</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“%1” in the column %2 is not a number that can be read: check it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“%1” in the column %2 is not a word known there: check it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nothing was read on this line: write a bulb, or the origin missing and why</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the line has more or fewer cells than the first line: look for a stray separator</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>another line of the file holds the same hour: keep one of them</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the book holds a reading at this hour already: keep it, or import with --on-conflict revise</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the line can&apos;t be read as CSV: look at its quotation marks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>left aside: it holds “%1”, for which the register has no place.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>left aside: its values are “%1” over a time, not read at a moment.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type the %1 as read.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“%2” is not a number: type the %1 as read, like 7.3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“%2” has more than one mark: type the %1 with one decimal mark, like 7.3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“%2” has too many digits: type the %1 as read, like 7.3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A time is needed: write it as 2025-03-01T09:00.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“%1” is not a time: write it as 2025-03-01T09:00.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“%1” is not a day of the calendar: check day and month.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“%1” is not an hour of the day: check hour and minute.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A temperature outside −60…60 °C can&apos;t be worked with: read again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A pressure outside 300…1100 hPa can&apos;t be worked with: check it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This coefficient can&apos;t be: check it, such numbers lie near 0.0007 per kelvin.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Say whether the wick is water or ice.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The wet bulb stands above the dry bulb: read both again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The ice bulb stands too far above the dry bulb: read both again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ice can&apos;t be warmer than 0 °C: say water, or read again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The bulbs stand too far apart: no air is that dry. Read both again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The dew point lies below −60 °C and is not given.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The dew point lies above 60 °C and is not given.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No wet bulb belongs to this humidity: check the humidity and the dry bulb.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ExportText</name>
    <message>
        <source>%1 could not be written: %2. Choose another folder or free some space, then try again.</source>
        <extracomment>%1 a path, %2 the system&apos;s own reason</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is a book or another database, and nothing is written over one. Choose another name.</source>
        <extracomment>%1 a path</extracomment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>FileText</name>
    <message>
        <source>%1 could not be written: %2. Choose another folder or free some space, then try again.</source>
        <extracomment>%1 a path, %2 the system&apos;s own reason</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The folder %1 could not be made. Choose another place and try again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 could not be drawn because of an error in the program. The files before it were written. Please report it.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>FindingText</name>
    <message>
        <source>wet bulb</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dry bulb</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Read again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>to confirm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>doubtful</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>erroneous</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>impossible</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One bulb only</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The wet bulb is missing, so there is no humidity.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The dry bulb is missing, so there is no humidity.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Read the other bulb if you still can; the one reading is kept.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wet bulb a touch above dry bulb</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The wet bulb stands %1 above the dry bulb. That is within reading error and taken as saturated air.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing to do in fog or drizzle. Otherwise look at the wick and read once more.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wet bulb above dry bulb</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The wet bulb stands %1 above the dry bulb, corrections included. A wet wick can only cool, so no humidity is worked out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Read both again. Were the two numbers swapped, or one read ten or five off?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Further apart than air allows</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The bulbs stand %1 apart. At this dry bulb even perfectly dry air brings them no further apart than %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The bulbs stand %1 apart. Even perfectly dry air does not bring them that far.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Read both again. One of them may have been read ten or five off.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Very dry air</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The humidity comes out at %1. Under %2 it is asked about.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Read both bulbs again. If it is so, keep it; where the air is often that dry, this limit can be lowered for the station.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ice bulb above dry bulb</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The ice bulb stands %1 above the dry bulb, as it may in freezing fog. Taken as saturated air.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing to do in fog. Otherwise read both again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ice bulb too far above dry bulb</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The ice bulb stands %1 above the dry bulb. That would be more than 100 %, so no humidity is worked out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Read both again. If the wet bulb stays at 0.0, the water is still freezing: wait until it falls.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ice above zero</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ice was given, but the wet bulb stands at %1. Ice can&apos;t be warmer than 0 °C.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look at the wick: if it is wet, say water; if it is ice, read again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pressure out of range</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A pressure of %1 can&apos;t be worked with: the range is 300…1100 hPa.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Check the pressure, or leave it empty: it is then worked out from the elevation.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Temperature out of range</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 can&apos;t be worked with: the range is −60…60 °C.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Read again. Was the decimal mark lost?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No coefficient</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The station is set to work with a psychrometer coefficient of its own, but none is on record, so there is no humidity.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Enter that coefficient, or say how the air reaches the bulbs: in a screen, whirled, by a fan.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dew point not given</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The dew point lies below −60 °C, where it is not worked out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Read the wet bulb again. The humidity stands.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Below the tested range</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For a wick of water colder than −20 °C there are hardly any measurements to go by; the humidity may be up to 2 % off.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing to do. An ice bulb is the surer reading in such cold.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pressure assumed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No pressure and no elevation was given: 1013.25 hPa was used.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Give the elevation with --elevation or the pressure with --pressure.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Below the scale</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The column of the %1 has gone into the bulb: there is no number.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing to do: it is kept as below scale.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Off the thermometer&apos;s scale</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The %1 was read as %2, above the last mark of the scale at %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The %1 was read as %2, below the last mark of the scale at %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Read again. On an old page, look whether a figure was doubled or the decimal mark lost.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Beyond what this season brings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The %1 was read as %2; in this latitude and season air rarely passes %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Read again, and look at the tens of the scale.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dew point beyond what this season brings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The dew point comes out at %1; in this latitude and season it rarely passes %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Read both bulbs again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Unlikely pressure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The pressure was read as %1; at this elevation about %2 is usual.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The pressure was read as %1, which no station has.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Give the pressure at the station, not the one reduced to sea level, or leave it empty.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Unusual for this month and hour</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The dew point of %1 lies far from what this month and hour brought here in %4 years. Between %2 and %3 nothing would be asked.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The dry bulb of %1 lies far from what this month and hour brought here in %4 years. Between %2 and %3 nothing would be asked.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Read again. If it is so, keep it: records happen.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fog, but dry air</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fog was noted, but the humidity comes out at %1; in fog it is hardly ever under %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look whether the wick is clean and wet, and whether it was fog or haze. Then read again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rain through dry air</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rain was noted at a humidity of %1. That happens, but seldom.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing to do if the wick was clean and wet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Saturated, but no fog or rain noted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The humidity comes out at %1 without fog, rain or dew in the weather column.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look at the wick: is it wet? If not, wet it, wait and read again. If there was dew or fog, note it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look at the three numbers again: one of them was misread.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Maximum below minimum</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The maximum of %1 stands below the minimum of %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Outside maximum and minimum</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The dry bulb of %1 stands above the maximum of %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The dry bulb of %1 stands below the minimum of %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Much colder than the last reading</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Much warmer than the last reading</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The dry bulb went from %1 to %2 in %3 h.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Read again. If the weather changed, keep it and say so in a note.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Much drier than the last reading</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Much moister than the last reading</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The dew point went from %1 to %2 in %3 h.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Read the wet bulb again. If the air changed, keep it and say so in a note.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The same pair again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The very same two numbers stand %1 times running.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Read both once more. If the air stands so still, keep it; with fog in the weather column nothing is asked.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Two readings for one hour</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This hour stands twice with the same numbers.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This hour stands twice with different numbers.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose one and withdraw the other; both stay in the history.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A day like another</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All readings of this day are those of %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look at the page: was one day&apos;s line written twice? If both days are right, judge them sound.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The time of this reading has not come yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Check date and hour, and the clock of this computer.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Early</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Read %1 min before the hour. The true time is kept.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing to do.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Late</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Read %1 min after the hour. The true time is kept.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A favoured tenth</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Of %1 readings of the %2, %3 end in %4; about one in ten is to be expected.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Read the tenths before the whole degrees, with the eye level with the column.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A slip in reading or writing would explain these numbers better than the weather does.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From the readings round it one would expect a dry bulb near %1 and a dew point near %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Unlike the readings round it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Read again. On an old page, compare with what is written there.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wet the wick, wait until the wet bulb has fallen and settled, and read again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The wick may be drying</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The wet bulb rose by %1 from whirl to whirl. It should only fall or stand.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The wick may be dry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The bulbs stand only %1 apart. The air would hold far more moisture than in the last readings (%2 of vapour against %3), and no fog, rain or dew was noted to bring it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The wet bulb stands at %1, and it is not said whether the wick is water or ice. The answer changes the humidity, so none is worked out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Water would give %1, ice %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Water or ice?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Touch the wick with a splinter of wood: if it is soft, say water; if it is hard, say ice.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The wick may be thawing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The wet bulb stands at %1 while the air is at %2: melting ice holds it there, and the humidity is not yet true.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Melt the ice with tepid water and wait until the wet bulb rises, then read again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The wick may be freezing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The wet bulb stands at %1 with the air at %2: while the water freezes it holds there, and the humidity comes out too high.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wait until the wet bulb falls and settles, then read again and say ice.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Is the wick ice?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Water was given at a wet bulb of %1. As ice the humidity would be %2 rather than %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Touch the wick with a piece of ice or a splinter of wood: if it is hard, say ice. If it is still wet, keep it.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>HistoryText</name>
    <message>
        <source>wetted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>changed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wick</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pressure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>weather</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wind</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>max</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>min</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>whirls, wet / dry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>observer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wick care</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>read at</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hour</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>reason</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>origin</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>judged</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>paper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>missing: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>withdrawn</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no longer withdrawn</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>read back against the paper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no longer read back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>empty</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 %2, was %3</source>
        <extracomment>%1 what, %2 new value, %3 old value</extracomment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>InstrumentText</name>
    <message>
        <source>%1 °C</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: no trend to be seen (%2).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2, which is more than chance.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 to %2 %3, read to %4</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at %1 add %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 × 10⁻⁴ per degree</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> ± %1 %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, ice %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a reference to compare with</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what will follow the station&apos;s</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the register has no reading within five minutes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the station&apos;s own reading gives no humidity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the other instrument&apos;s humidity is missing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing has been read yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The two differ by more than %1 °C.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>They are a pair: no difference above %1 °C.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 at the ice point: %2 off ± %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: dry is %2 against wet ± %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In the bath, as read</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In the bath, both corrected by the ice point</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A difference does not say which of them errs; the ice point does.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The sensor agrees with every solution within ± 2 %.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of %2 solutions are read more than 2 % off.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: published %2 %, read %3 %, %4</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The published values are of 25 °C; at this temperature they do not hold.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One solution says nothing of the rest of the range.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fewer than two readings stand beside one of the station&apos;s: nothing can be said yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The station reads %1 % RH against the reference (95&#xa0;%), over %2 readings; one difference scatters by %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 to %2 %: %3, n %4</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, scatter %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>% RH for each degree of depression</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>% RH for each step of wind</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 readings gave no humidity and take no part.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 pairs with a depression of 3 °C or more, and 30 are needed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of %2 pairs have a depression under 3 °C, where the coefficient hardly shows</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the depressions lie between %1 and %2 °C, and they must span 3 °C</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no psychrometer has such a coefficient: look at units, wick and times</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Water</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: coefficient %2 × 10⁻⁴ per degree, standard error %3, 95 % from %4 to %5, %6 pairs, depressions %7 to %8 °C.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The evidence is enough to use it, with ± %1 % (standard).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: not enough to use it: %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is left over, hPa for each degree of depression</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is left over, hPa for each step of wind</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 common readings: with fewer than 30 nothing is decided. Go on side by side.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The two agree within 0.2 °C and 3 % RH: the records may be joined as they are.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The two differ: the record breaks here, and averages must not be pooled across it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The readings do not decide it yet. Go on side by side.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, new against old: %2 %3 (95&#xa0;%)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dry bulb</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wet bulb</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Relative humidity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dew point</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 common readings in %2 of the 12 months.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A season that was not seen may differ: a whole year is better.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>InstrumentsPage</name>
    <message>
        <source>wetted</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>LimitChangeTextContext</name>
    <message>
        <source>The rules with limits are %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That rule has %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 reading</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n readings</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no limit %1. %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 stays at %2: the humidity itself is worked out with it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 counts %2: give a whole number from %3 instead of %4.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 can&apos;t be %2, above %3 at %4: give %4 or less, or change both.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 can&apos;t be %2, below %3 at %4: give %4 or more, or change both.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 can&apos;t be %2: it may be %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>that</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There are no readings yet that this could change.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Of %1 in the book none would be judged otherwise.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 that are quiet now would be asked about</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 would be asked about no longer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 more would be left out of means until judged</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 would count in means again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Of %1 in the book %2 would be judged otherwise</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>LimitText</name>
    <message>
        <source>Air too hot or too cold for the season</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Marks a bulb beyond what air does at this latitude and in this half of the year. The first pair is doubtful, the outer pair wrong.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dew point too high or too low for the season</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Marks a dew point that air hardly ever has. Used in summer poleward of the latitude above and in winter towards the equator; in the other half-years the temperature limits serve.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pressure that can&apos;t be</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Marks a pressure that no station has, or one far from what this elevation makes usual: often the sea-level value was written.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wet bulb above dry bulb</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A wet wick can only cool. A little above counts as reading error and is taken as saturated air; more is doubtful.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Very dry air</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Asks you to read again when the air seems drier than it usually gets. Lower it where the air really is that dry.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wick run dry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A dry wick reads like a dry bulb: the bulbs stand close together, and the air seems to hold far more vapour than just before.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wick freezing or thawing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>While a wick freezes or thaws the wet bulb stands at 0.0 °C and tells nothing. Looks for frost in the last readings.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ice taken for water</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Asks whether the wick is ice where water was given well below zero and the answer changes the humidity.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sudden change of temperature</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Asks you to confirm a jump since the last reading. Raise it where the days swing widely.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sudden change of dew point</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Asks you to confirm a jump of the moisture since the last reading.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The same pair again and again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Asks whether a line was copied when the very same pair stands several times running. Quiet in fog.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A favoured last figure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tells, privately, when one tenth is written far oftener than the others.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A day like another</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Marks a day whose readings all equal those of an earlier day.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Read early</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Notes a reading made well before its hour. The true time is kept.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Read late</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Notes a reading made well after its hour. The true time is kept.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Time not yet come</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Marks a reading whose time lies ahead of this computer&apos;s clock.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Unusual for this month and hour</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Compares a reading with the same month and hour of this station&apos;s other years and asks about what lies far outside.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fog, but dry air</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Asks about the wick or the remark when fog was noted and the air seems too dry for it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rain through dry air</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Notes rain in dry air: it happens, but seldom.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Outside maximum and minimum</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Asks which was misread when the dry bulb stands outside the maximum and minimum that were read.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The month&apos;s numbers</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>When a month has too few readings for a mean, and which days are counted as damp or dry. The stricter rule is 5 and 3 days. Holds for whole months.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Saturated in fine weather</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Asks about the wick when the air seems saturated and neither fog nor rain nor dew was noted.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Unlike the readings round it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Marks a reading that a slip of the pen explains better than the weather does. Higher marks more readings.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>latitude that parts high from low</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>high latitude, summer: doubtful below</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>high latitude, summer: doubtful above</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>high latitude, summer: wrong below</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>high latitude, summer: wrong above</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>high latitude, winter: doubtful below</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>high latitude, winter: doubtful above</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>high latitude, winter: wrong below</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>high latitude, winter: wrong above</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>low latitude, summer: doubtful below</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>low latitude, summer: doubtful above</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>low latitude, summer: wrong below</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>low latitude, summer: wrong above</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>low latitude, winter: doubtful below</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>low latitude, winter: doubtful above</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>low latitude, winter: wrong below</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>low latitude, winter: wrong above</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>doubtful below</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>doubtful above</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wrong below</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wrong above</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>doubtful farther from the usual than</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>reading error up to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ask below a humidity of</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bulbs closer together than</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>vapour at least so many times that of before</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>vapour more than before by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>looks back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>or wet bulb rising from whirl to whirl by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a thaw: air warmer than before by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ask with a wet bulb below</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>where the humidity would differ by more than</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>change within 3 hours</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>change within 6 hours</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>change within 12 hours</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>times running, read to tenths</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>times running, read to half degrees</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>times running, read to whole degrees</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a gap longer than this ends the run</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>only with at least</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>how uneven the figures are (chi-square)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>equal readings, read to tenths</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>equal readings, read more coarsely</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>by more than</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>how far outside the middle half, in widths of it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>note below a humidity of</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ask from a humidity of</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>also the next maximum and minimum within</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no mean with so many days missing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no mean with so many missing in a row</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>count days at or above a humidity of</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>count days at or below a humidity of</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mark where belief in the reading falls below</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>readings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>days</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>years</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>h</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>min</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>widths</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>common practice, no source</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>WMO-No. 1203, from memory</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>our judgement</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>computed</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>PageCellText</name>
    <message>
        <source>Write the wind as a Beaufort force, a whole number from 0 to 12; “%1” is none.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write w for water or i for ice; “%1” is neither.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write the weather so that it can&apos;t be two things: %1, or 0 for none. “%2” is not clear; a remark in other words goes into the note.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Say why nothing was read: %1; or m and your own words.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A bulb&apos;s reading is written out on every line; only a missing line is repeated so.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no line above to repeat: write the cell out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>illegible</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>PairText</name>
    <message>
        <source>Dry and wet bulb, %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dry bulb</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wet bulb</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>depression</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>PaperText</name>
    <message>
        <source>station</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>height, m</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hour</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>n of</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mean RH</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>highest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lowest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mean e, hPa</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>its dew point</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The club&apos;s stations · %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At observing hours; RH relative humidity, e vapour pressure, dew point in °C. n readings that count, of the days of the month.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Thermometers that hang differently read differently in the same air, and so do other hours and heights: the groups below are not for ranking one another, and stations stand in alphabetical order.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reading %1 in my place</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In doubt ask</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Before you go out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reading</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In frost</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wick and water</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>When something is not right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take care</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>when</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>where</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>read to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>away</source>
        <extracomment>%1 and %2 are dates, %3 a deputy&apos;s initials</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 to %2; %3 reads</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Half an hour ahead hang the instrument outdoors in the shade. Look at the wick: clean, wet, tight round the bulb. Look for a break in each column.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Check the cord and the swivel.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look at the wick when you open the screen: clean, wet, tight round the bulb. Look for a break in each column.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stand in the shade and face the wind, arm out, nobody and nothing within 1.5 m. Whirl for about a minute at two turns a second, stop, and read the wet bulb first, at once, then the dry bulb. Whirl again until the wet bulb falls no further; the lowest counts, with the dry bulb beside it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Read the dry bulb first, then the wet bulb, quickly and without breathing on them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Eye level with the top of the column. Tenths first, whole degrees after, then look once more whether you are ten off.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write both down as read, with the time and your initials, before you do anything else.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>32 °F</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>0 °C</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With the wet bulb at %1 or below say whether the wick holds water or ice: touch it, or watch whether the column stands still at %1 on its way down.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wet the wick a quarter of an hour ahead and let it freeze before you whirl.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take the reservoir away. A quarter of an hour ahead brush on a thin film of ice-cold water; melt thick ice off first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>After a thaw old ice holds the bulb at %1: melt it with tepid water and wait until the column has risen.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Distilled or rain water only, never from the tap. Do not touch the wick with your fingers. Put on a new one when it is yellow, frayed or beads the water; write that down too.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The wet bulb stands above the dry one, or both read the same in clear dry weather: read again, wet the wick, wait, read once more. Write down what you read even if it looks wrong, and say so beside it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Missed an hour? Leave it empty and say why. A reading made late is written with its true time. Nothing is made up.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Deputy&apos;s card · %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dry less wet, %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Humidity table</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 hPa</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fitted at this station</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>coefficient %1 × 10⁻⁴ per K at 0 °C (%2)</source>
        <extracomment>%1 a number, %2 where it comes from</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Relative humidity, %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dew point, %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>water on the wick</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ICE on the wick</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Find the dry bulb at the side, dry less wet at the top: the figure where they meet. Halfway between two figures take the middle. With ice on the wick use the pages that say so, also for a dry bulb above freezing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2, %3. Within 1 % from %4 to %5 hPa.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Only for thermometers exposed as named above: in stiller air the wet bulb reads too high, and so does the humidity. Relative humidity is over liquid water, also with ice on the wick. Not for aviation, heat stress, spraying, food or process safety, medical or legal decisions.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Humidity table · %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The station keeps no observing hour in this month.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Observer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Book</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Page</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dry %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wet %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>water</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>weather</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wind</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>who</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Whirl in the shade, facing the wind, until the wet bulb falls no further. Read the wet bulb first, at once, then the dry bulb.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Read the dry bulb first, then the wet bulb, without breathing on them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tenths before whole degrees. Write what you read; corrections are made later.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With the wet bulb at 0 °C (32 °F) or below tick water or ice.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A missed hour stays empty; say why in the note. Strike out a slip, so that it can still be read, and write the right figure beside it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep clear of people and glass when whirling; mind ice underfoot, and stay in when there is thunder.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Form for %1 · %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>highest at observing hours</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lowest at observing hours</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mean relative humidity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mean dew point</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mean vapour pressure, hPa</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dew point of the mean vapour pressure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mean depression</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mean dry bulb</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mean wet bulb</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>days at or above %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>days at or below %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>days with fog noted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>expected</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>counted (n)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>missing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>set aside</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mean of observing hours</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>incomplete</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>corrected</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>T</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tw</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>RH</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Td</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wick</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>weather, remark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>remark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No mean yet: the month is not over, and days without a reading, also those to come, count as missing (WMO-No. 1203).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2</source>
        <extracomment>%1 an observing hour, %2 a sentence why there is no mean
----------
%1 date and hour, %2 why a reading was revised</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>revised</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 could not be painted because of an error in the program; nothing was written. Please report it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Monthly return · %1 · %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>T dry bulb and Tw wet bulb as read, Td dew point, in %1; RH relative humidity in %. All at observing hours.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Extra readings, outside the means</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The month&apos;s numbers, at observing hours</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Queries still open, set aside until they are judged: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Signed off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Corrections made</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The station</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How the numbers were made</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>N</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>S</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>E</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>W</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 × 10⁻⁴ per K</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>own, not stated</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>water %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, ice %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>; fitted at this station</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>water %1, ice %2; %3</source>
        <extracomment>%1 and %2 are coefficients, %3 where they come from</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none on record</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>read to %1 %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>corrected (%1)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no correction on record</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 (%2 readings)</source>
        <extracomment>%1 &quot;read&quot; or &quot;from elevation&quot;, %2 how many readings</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>valid from</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>position</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>elevation</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 m above sea level</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>time zone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>observing hours</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>exposure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>psychrometer coefficient</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pressure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dry thermometer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wet thermometer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>surroundings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>T and Tw are given as read; corrections on record are applied before anything is worked out. Vapour pressure follows from the psychrometer equation with the coefficient above, saturation from Sonntag&apos;s formulae; relative humidity is always over liquid water, also below freezing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Means are of observing hours, each hour weighted equally; they are not means over 24 hours. A mean is not given where %1 or more days are missing, or %2 or more in a row.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set aside: readings judged doubtful or erroneous, readings marked so and not yet judged, and estimates. They stand above as read and stay out of means and extremes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How sure: a single relative humidity is good to %1 %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, a dew point to %1 %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> (k = 2, the month&apos;s median).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The year in numbers</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The year in charts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This month is still to come.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing was written down in this month.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The hut&apos;s humidity table</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Relative humidity and dew point from a dry and a wet bulb</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>observers</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This station is invented, and so are its readings.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Contents</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>page</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mean e</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Td of e</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mean Td</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the month is not over</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>n readings that count, of those expected; RH relative humidity; e vapour pressure in hPa; Td of e the dew point of its mean, Td dew point, in %1. At observing hours; a mean of observing hours weights them equally and is no mean over 24 hours. Where there is no mean the reason stands below.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mean of observing hours</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No reading of this year is in the book.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Year book · %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ParagraphText</name>
    <message>
        <source>No humidity could be worked out at %1 in %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 and %2</source>
        <extracomment>several observing hours, &quot;7 h, 14 h and 21 h&quot;</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 at %2 is not over, so there is no mean yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 at %2:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In %1 the relative humidity at %2, read at %3, was %4 on average, and the dew point %5</source>
        <extracomment>%1 month, %2 station, %3 &quot;9 h and 21 h&quot;, %4 a humidity, %5 a temperature</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>; a single reading is sure to about %1 %2 and %3 %4</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The one reading that counts (%1) gave %2 and a dew point of %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The driest reading, %1, came on %2, the dampest, %3, on %4.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The dew point lay between %1 (%2) and %3 (%4).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fog on one day</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>fog on %n days</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>%1 or more on one day</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%1 or more on %n days</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>%1 or less on one day</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%1 or less on %n days</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>At observing hours there was %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 missing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 set aside</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 still to come</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>None of the %1 readings is missing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Of %1 readings %2 count (%3).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One reading was revised later; what was first written is kept.</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n readings were revised later; what was first written is kept.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>One marked reading is not yet judged and is left out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n marked readings are not yet judged and are left out.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>Worked out from a dry and a wet bulb read at fixed hours; these are not 24-hour means.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Station and readings are invented.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>PromptText</name>
    <message>
        <source>Wickbook books (*.wickbook);;All files (*)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where the new book shall lie</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open a book</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>QObject</name>
    <message>
        <source>undone: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>done again: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is a folder: choose a file in it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 can&apos;t be read: %2. Check that you may read it, or choose another file.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bring in one table at a time; several files together only where they are of the Station Exchange Format.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing was brought in. %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 could not be written: %2. Choose another folder or free some space, then try again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>Writing %n readings…</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
</context>
<context>
    <name>RestoreText</name>
    <message>
        <source>%1 does not verify: choose another copy. (%2)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is sound: %2 in %3 revisions.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It could not be held against the other book. %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It was not held against the other book to the end.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Restored and verified: %1, %2.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ReviewText</name>
    <message>
        <source>d MMM yyyy</source>
        <extracomment>day, short month and year, in Qt&apos;s date format</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1–%2</source>
        <extracomment>a span of days within one month: 3–9 Jan 1881</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 – %2</source>
        <extracomment>a span from one month into another: 28 Jan – 2 Feb 1881</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 reading</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n readings</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>%1, %2, %3</source>
        <extracomment>what is asked, how many readings, when</extracomment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>SalvageText</name>
    <message>
        <source>name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>place and hours</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>thermometer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>which thermometers hang</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>correction</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>limit of the checks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>absence</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>diary</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>check of the pair</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>check over salts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>comparison with another instrument</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a fact of a later version</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>salvaged from a damaged book</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>salvage: bytes of this reading changed in the damaged book, so that it may not be what was read</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>salvage: a reading written later stands at this hour; what withdrew or moved this one is lost</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Salvaged station, its facts lost</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 and %2 more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stopped: there is no new book, and the damaged one is as it was.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Everything came back: all %1 revisions are there and proved.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of %2 revisions came back, %3 of them proved to be as they were written.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Revisions that can&apos;t be read and are lost: %1 (number %2). Look for them in the newest copy that verifies, or in the paper register.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Revisions that came in altered, as they now read: %1 (number %2).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Altered readings that are judged doubtful: %1. Compare them with the paper register, correct them, or judge them sound.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Facts of the station are altered (%1): check them on the pages Station and Instruments.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Revisions that can&apos;t be proved, since the one before is hurt: %1 (number %2). Nothing says that they changed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Readings that became extra ones, judged doubtful: %1. A reading written later stands at their hour, and what withdrew or moved them is lost: withdraw them or give them another hour.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The station&apos;s name is lost: enter it, and what else is missing, on the pages Station and Instruments.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of %2 pages of the file could not be read as what they should be.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A write that had been interrupted was taken back, as opening the book would have done.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>SheetText</name>
    <message>
        <source>One bulb is missing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Number</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dry %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wet %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dry less wet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Humidity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What I notice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Relative humidity in %, ice on the wick</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Relative humidity in %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Down: the dry bulb in %1. Across: dry less wet in %1. Where your row and your column meet stands the humidity.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Answers</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Questions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The middle value stays where it is when a few go wrong; the mean would move with them. Pairs differ because thermometers, wicks, places and eyes do.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1. Write all humidities in order, lowest first. Which one stands in the middle?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>2. Between which two values does the middle half of the class lie?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>3. Whose pair is far from the others? What may have happened? How would you find out?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>4. Compare the mean with the middle value. Which of them moves when one wick is dry?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How damp is the air? Answers</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How damp is the air? Work sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Date ____________   Time ____________   Place ______________________________</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All read the same air at the same time. Wet the wick, move air past the bulbs until the wet one falls no further, read the wet bulb first and tenths before whole degrees. Write down what you read, also when it looks odd. You are a number here, not a name.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Table and answers hold for this instrument (%1) and %2 hPa.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>SheetWords</name>
    <message>
        <source>Before printing · %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sent to the printer.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The printer took nothing: look whether it is on, and try again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Written to %1.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>SigningText</name>
    <message>
        <source>expected</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>counted (n)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>missing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>set aside</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mean dry bulb, °C</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mean wet bulb, °C</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mean vapour pressure, hPa</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dew point of the mean vapour pressure, °C</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mean dew point, °C</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mean relative humidity, %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>highest relative humidity, %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lowest relative humidity, %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>highest dew point, °C</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lowest dew point, °C</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>why there is no mean</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>one reading revised</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n readings revised</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>one reading added</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n readings added</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>one reading taken out</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n readings taken out</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>%1 %2 → %3</source>
        <extracomment>%1 a number&apos;s name, %2 and %3 its value as signed and now</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at %1 %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Signed off by %1 on %2.</source>
        <extracomment>%1 initials or a name, %2 a date</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Queries then open: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing has changed since.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Changed since it was signed: %1.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>TakeInText</name>
    <message>
        <source>date and time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>date</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>observing hour</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>clock time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dry bulb</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wet bulb</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wick</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pressure, hPa</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>weather</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wind, Beaufort</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>maximum</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>minimum</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>observer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>origin</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>quality</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>unit of the bulbs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pressure source</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>unit of maximum and minimum</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>care of the wick</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>whirls</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>why missing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>copied from paper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>paper book</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>paper page</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>read back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>time zone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>offset from UTC</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Say above which column is the date and time, or which are the date and the hour.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Say above which column is the dry bulb and which the wet bulb.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Two columns can&apos;t be the same: choose “left aside” for one of them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 has more than %2 lines, too many to be shown one by one: bring it in with the command wickbook import, or in parts.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>new</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>new, marked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>there already</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>conflict: kept</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>conflict: revised</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>conflict: left out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>left out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“%1” came twice that night, when the clocks went back: say above which is meant.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“%1” can be read as day and month or as month and day: say above which.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The bulbs agree; the file differs in what stands beside them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The book has %1, the file %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The old one stays in the history.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 new</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>(%1 marked)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 there already</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 in conflict with the book</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 that can&apos;t come in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The first %1 lines of a long file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One line</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%1 lines</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>semicolon</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tab</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>comma</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>TakenText</name>
    <message>
        <source>%1 is open in another window, which was brought forward: go on there.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is open in another window and can only be read here: close it there, then open it here again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is open on the computer %2 and can only be read here: close it there, then open it here again.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>TermText</name>
    <message>
        <source>drawn by a fan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>whirled by hand</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sling, US practice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in a louvred screen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>still air indoors</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>own coefficient</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A fan draws air past both bulbs at 2.5 m/s or more.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The frame is whirled by hand, 3 m/s or more at the bulbs.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A sling with the coefficient of the older US tables.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Both thermometers hang in a louvred screen, in natural air of about 1 m/s.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No ventilation. The humidity is only a rough guide.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A coefficient fitted by comparison at this station.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>water</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>haze</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mist</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fog</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>drizzle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rain</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>snow</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sleet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hail</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>thunder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dew</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hoar frost</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rime</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>glaze</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>observed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>corrected</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>estimated</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>missing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not judged</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sound</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>doubtful</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>erroneous</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>UTC</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>standard time, all the year</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the clock, with summer time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>read</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>station mean</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from elevation</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>WMO-No. 1203</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this station&apos;s rule</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No mean: %1 or more days are missing (%2).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No mean: %1 or more days in a row are missing (%2).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No mean: nothing was read.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>invented station</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Whirl in clear space, away from people, walls and glasses: keep 1.5 m clear. Check the cord, the swivel and the binding first. Not in a thunderstorm, and mind the ground underfoot.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Broken glass cuts. Spilled mercury is poisonous: leave the room, air it, use neither broom nor vacuum cleaner, and follow your local rules for disposal. Prefer spirit thermometers.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In frost look out for ice on the path, the ladder and the screen; in heat, for yourself.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>These numbers serve a weather register. They are not for aviation, heat stress, spraying, burning, frost protection, food or process safety, medical or legal decisions, nor for claims of records: those need instruments and people licensed for them.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>UsualText</name>
    <message>
        <source>normal of %1 years</source>
        <extracomment>%1 number of years</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>average of %1 other years</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That is about as usual at this station (%1: %2).</source>
        <extracomment>%1 &quot;average of 12 other years&quot;, %2 a humidity</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It was drier than usual at this station (%1: %2).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It was moister than usual at this station (%1: %2).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It was the driest such month of this station&apos;s record (%1: %2; until now %3 with %4).</source>
        <extracomment>%1 and %2 as above, %3 a year, %4 its humidity</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It was the moistest such month of this station&apos;s record (%1: %2; until now %3 with %4).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The air held more vapour than usual: the dew point&apos;s average is %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The air held less vapour than usual: the dew point&apos;s average is %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No station average of this month yet: it takes %1 other years with a mean, at the same place and hours, and there are %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>RH %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dew point %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>vapour pressure %1 hPa</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 hPa</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This month here, %1: %2.</source>
        <extracomment>%1 &quot;average of 12 other years&quot;, %2 its numbers</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Departure: %1.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>WorkingTextContext</name>
    <message>
        <source>dry bulb, scale and correction</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wet bulb, scale and correction</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what the two corrections share</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>coefficient of the exposure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pressure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 °C</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 °F, that is %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: read %2 %3, correction %4 %3, so %5</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The wet bulb stands above the dry bulb within the reading&apos;s error: the air is taken as saturated, and e is what it can hold at the dry bulb.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>e = f·e&lt;sub&gt;w&lt;/sub&gt;(t) = %1 × %2 = &lt;b&gt;%3 hPa&lt;/b&gt;</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Over the wet bulb, %1 °C, %2: e&lt;sub&gt;s&lt;/sub&gt; = %3 hPa</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>water</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>e = f·e&lt;sub&gt;s&lt;/sub&gt;(t&lt;sub&gt;w&lt;/sub&gt;) − A·p·(t − t&lt;sub&gt;w&lt;/sub&gt;)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>e = %1 × %2 − %3 × 10⁻⁴ × %4 × (%5 − %6) = &lt;b&gt;%7 hPa&lt;/b&gt;</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dew point: where %1 hPa would be saturation over water: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Frost point: where it would be saturation over ice: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dry bulb</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wet bulb</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Saturated at the dry bulb, %1 °C, over water: e&lt;sub&gt;w&lt;/sub&gt; = %2 hPa</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Relative humidity = 100 × %1 ÷ (%2 × %3) = &lt;b&gt;%4 %&lt;/b&gt;</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>each by itself (one standard uncertainty)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>together, twice the root of the squares: ±</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dry ↓ depression →</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The same from this station&apos;s table</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Relative humidity in %, wick as ice, at %1 hPa, degrees in %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Relative humidity in %, wick as water, at %1 hPa, degrees in %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The cell is empty: there is no air with this depression.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The reading&apos;s own row and column stand between the printed ones.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Both bulbs are needed for the working.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How sure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The working</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The working: %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>YearsText</name>
    <message>
        <source>Relative humidity, %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dew point, %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 to %2, other years: %3</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>charts</name>
    <message>
        <source>MMM yyyy</source>
        <extracomment>short month and year, in Qt&apos;s date format, below a chart</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Relative humidity, %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dew point, %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>missing</name>
    <message>
        <source>away</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ill</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wick dry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>broken</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>forgotten</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>oldpage</name>
    <message>
        <source>Dry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dry bulb as read</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dry bulb</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wet bulb as read</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wet bulb</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wick</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Water or ice on the wick</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wick</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weather</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>weather</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wind</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wind, Beaufort force</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wind</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hPa</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pressure, hPa</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pressure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Max</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Maximum as read</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>maximum</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Min</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Minimum as read</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>minimum</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>note</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>paper</name>
    <message>
        <source>p. %1</source>
        <extracomment>page of a paper register</extracomment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>print</name>
    <message>
        <source>%1 (%2)</source>
        <extracomment>%1 the station&apos;s name, %2 a mark such as &quot;invented station&quot;</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <extracomment>%1 the station, %2 a month and its year</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Relative humidity and dew point at observing hours</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>settings</name>
    <message>
        <source>What the window remembers (%1) can&apos;t be read, nor put aside: books are not concerned, but the window begins with its usual settings. Delete the file.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What the window remembers (%1) could not be read and was put aside: books are not concerned. The window begins with its usual settings; open the book again.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>text</name>
    <message>
        <source>below scale</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 h</source>
        <extracomment>%1 is an hour of the day, 9 or 9:30; &quot;h&quot; as in a register&apos;s column head</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dddd d MMMM yyyy</source>
        <extracomment>day of the week, day, month and year, in Qt&apos;s date format</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>d MMM</source>
        <extracomment>day and short month, in Qt&apos;s date format</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>d MMM yyyy</source>
        <extracomment>day, short month and year, in Qt&apos;s date format</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2</source>
        <extracomment>%1 a date, %2 an hour</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>MMMM yyyy</source>
        <extracomment>month and year, in Qt&apos;s date format</extracomment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wickbook::ui::AbsenceForm</name>
    <message>
        <source>Absence</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change an absence</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>An absence ahead</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Without a deputy, hours missed on these days have their reason by themselves. A reading made all the same counts as always.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>First day, year-month-day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Last day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nobody</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Who reads meanwhile, initials</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put the last day on or after the first; it lies before it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose a reason or write one in your own words.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wickbook::ui::AbsenceSection</name>
    <message>
        <source>&amp;Absences and deputies</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>An absence a&amp;head…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nobody reads</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 reads</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No absence is written down. Enter one ahead, with whoever reads meanwhile: then the gap has its reason.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>absence changed: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>absence: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kept. Undo takes it back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>absence taken back: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Taken back. Undo brings it again.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wickbook::ui::AnswerPanel</name>
    <message>
        <source>frost point %1 %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>vapour pressure %1 hPa</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>depression %1 %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>deficit %1 hPa</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 g/⁠m³</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 g/⁠kg</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, coefficient %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pressure %1 hPa as read</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pressure %1 hPa, the station&apos;s mean</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pressure %1 hPa worked out from %2 m</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Relative humidity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dew point</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show the working</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Relative humidity %1 %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dew point %1 %2 %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Relative humidity: none yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dew point: none yet</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wickbook::ui::BesideDialog</name>
    <message>
        <source>The clock never showed that time: it was put forward. Look at “%1”.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That time is still to come. Look at date and time.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is not a relative humidity in per cent.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write what the other instrument showed: its humidity, or both its bulbs.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write both bulbs of the station&apos;s pair, or neither: then the register&apos;s reading counts.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wind is a whole number from 0 to 12, as Beaufort has it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>reading of another instrument</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kept.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kept, but it takes no part yet: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>reading of another instrument taken back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Taken back. Undo brings it again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Readings of the other instrument</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>CSV files (*.csv *.txt);;All files (*)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 can&apos;t be opened. Choose another file.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One reading of another instrument</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n readings of another instrument</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>One reading came in.</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n readings came in.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>%1 have no reading of the station within five minutes and were left aside.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 were there already.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 lines could not be read, the first: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>own coefficient out of the comparison with %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kept. Readings are worked out afresh; undo takes it back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no change of place or exposure yet. Write it down on the Station page, with its date, and join then.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The records are joined already.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>joined</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>records joined after the overlap with %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Joined: charts and averages go on across the change. Undo takes it back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Beside another instrument</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>readings of the other instrument</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>When</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Other, RH %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Station, RH %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Difference</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Bring in a file…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Take back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Delete, in the table. Undo brings it again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Use this coefficient…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Join the records</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The record goes on across the change of place or exposure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Date</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Other: RH %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>humidity of the other instrument</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>its air temperature</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>air temperature of the other instrument</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>or its dry bulb</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dry bulb of the other instrument</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>its wet bulb</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wet bulb of the other instrument</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>its wick</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wind, Beaufort</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wind</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Station: dry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dry bulb of the station</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wet bulb of the station</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wick</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Enter keeps it. Empty: the register&apos;s reading within five minutes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what the readings say</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>other, RH %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>station, RH %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>depression, °C</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>station − other, RH %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wind, Beaufort</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>d MMM yyyy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 / %2</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wickbook::ui::BesidePlot</name>
    <message>
        <source>%1 against %2</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wickbook::ui::ChangesPreview</name>
    <message>
        <source>what would change, month by month</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Month</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Readings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>RH % now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>then</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dew point now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Largest, % RH</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>how far the register has been looked through</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stop looking</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stopped before the end; nothing is known of what would change.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wickbook::ui::ChartPanel</name>
    <message>
        <source>Chart of humidity and dew point</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How long a time the chart shows</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>two weeks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a month</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a season</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a year</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>all</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as zoomed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What the chart shows</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>over time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>years over one another</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>vapour and warmth</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dry and wet bulb</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At which observing hour</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pict&amp;ure…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save the chart as a picture, PNG or SVG (Ctrl+C copies it)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reading the register beside the window… %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reading the register beside the window…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No readings here yet. They appear as they are written down.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No readings in this span. + and − zoom, Ctrl+← and Ctrl+→ move.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>RH %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dew point %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dry %1, wet %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>doubtful</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>erroneous</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 singled out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>↑ and ↓ single out a year</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>← and → walk the readings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <extracomment>%1 the first and %2 the last day of a chart</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A picture is PNG or SVG: let the name end in .png or .svg.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The picture could not be drawn; make the window smaller or close other programs, then try again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The chart was written to %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The chart is on the clipboard as a picture.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The chart as a picture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>PNG at print size (*.png);;SVG (*.svg)</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wickbook::ui::ClassWindow</name>
    <message>
        <source>Class round</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Many pairs of the same air, side by side. Pupils are numbers; nothing of this comes into the station&apos;s register, and it is gone when the window has been started again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pairs of the class</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What the class found</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pressure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Instrument</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Scale</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rea&amp;d to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Pressure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Print…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Save as PDF…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Work sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sheet with &amp;answers</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Copy as table</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Copied.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Start a &amp;new round</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The pressure where the class stands lies between %1 and %2 hPa: read it again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type the first pair: dry, Enter, wet, Enter.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save the sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>class-answers.pdf</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>class-sheet.pdf</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The sheet could not be painted because of an error in the program: nothing was written. Please report it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Saved.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wickbook::ui::CoefficientForm</name>
    <message>
        <source>Exposure and coefficient</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How the pair is exposed from this date on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The coefficient decides what humidity a depression means. An own one comes out of a comparison at this station.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From, year-month-day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from the beginning</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The thermometers are</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Own coefficient, water</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>own coefficient over water</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>× 10⁻⁴ per degree</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Own coefficient, ice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>own coefficient over ice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>× 10⁻⁴ per degree; empty: as water</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Its uncertainty</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>uncertainty of the coefficient</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%, standard</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mean pressure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mean pressure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hPa at the station; empty: from elevation</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write the own coefficient, as in 7.99 for 7.99 × 10⁻⁴, or choose another exposure.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A coefficient lies between 0 and 50 × 10⁻⁴ per degree; 6 to 12 is usual.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The uncertainty of the coefficient lies between 0 and 100 %.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write the date from which it holds.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The mean pressure at the station lies between 500 and 1080 hPa.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing differs yet from what is in force. Change a field, or close this.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wickbook::ui::CoefficientSection</name>
    <message>
        <source>E&amp;xposure and coefficient</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From a date on…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mean pressure %1 hPa</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pressure from elevation again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From the beginning</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How the pair is exposed is not written down.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>exposure and coefficient</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kept. Readings are worked out afresh; undo takes it back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The beginning can&apos;t be taken back, for the pair must hang somehow. Change it instead.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>exposure and coefficient taken back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Taken back. Undo brings it again.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wickbook::ui::ColumnsDialog</name>
    <message>
        <source>Columns of the page</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put the columns as the page in hand has them. Space switches a column on or off, Ctrl+↑ and Ctrl+↓ move it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Columns, in the page&apos;s order</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Enter stops at this column</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move &amp;up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move &amp;down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Use these</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave as it was</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wickbook::ui::ColumnsView</name>
    <message>
        <source>the first rows of the file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>left aside</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what column %1, “%2”, is</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wickbook::ui::CopiesSection</name>
    <message>
        <source>Chan&amp;ge…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>change where copies go</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Keep one every day the book has changed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Without, nothing keeps a copy but you, and bringing in a register.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>copies of the book</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>how far it is</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A copy is kept every day the book has changed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No copy is kept by itself any more: make one now and then.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Make one now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Verify it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reads every page and the whole chain of revisions of the chosen copy.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Verif&amp;y all</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rest&amp;ore into a new book…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A copy to hand o&amp;n…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A verified copy for somebody else, set to be read only.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kept and verified: “%1”.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One old copy gave way to newer ones.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 old copies gave way to newer ones.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Copies of the book: fold away</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Copies of the book</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the last one failed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>last %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>holds what this book does not</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>verified</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>does not verify: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The sample station keeps no copies: it is gone when the window closes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Looking for copies…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no copy yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Last copy: %1. %2 in all. The newest of each of 7 days, 8 weeks and 24 months stay.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where: the folder “%1” beside the book</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Verified: %1, every page and the whole chain of revisions.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 verified, %2 did not: keep using the others, and make one now.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where copies of the book shall lie</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From now on copies go there; those made before stay where they are.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where the copy to hand on shall lie</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 to read.wickbook</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wickbook books (*.wickbook)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Making the copy…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“%1” is written, verified, and set to be read only.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“%1” is written and verified. The disk it lies on knows no files to be read only.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wickbook::ui::CorrectionCurve</name>
    <message>
        <source>the correction over the scale</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wickbook::ui::CorrectionForm</name>
    <message>
        <source>Correction</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A thermometer&apos;s correction</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From a certificate or the ice point: what to add at which reading. Between the points it is taken as a straight line, beyond them as the nearest. It holds until the thermometer&apos;s next one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Thermometer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From, year-month-day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>empty: from the beginning</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At a reading of</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>add</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Points</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drawn</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>standard uncertainty</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>degrees, standard (half of a ± for 95 %)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Uncertainty</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where it comes from</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>certificate and number, ice point, …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>reading in line %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>correction in line %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A correction of %1 is that of a broken thermometer. Look at line %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Two points stand at the reading %1. Leave one of them out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write down the thermometer first, under “Thermometers”.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write at least one point: a reading, and what to add to it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>An uncertainty is not below zero.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write where the correction comes from: a certificate, an ice point.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wickbook::ui::CorrectionSection</name>
    <message>
        <source>&amp;Corrections</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New correction…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from the beginning</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2: %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, uncertainty %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No correction is known; readings are used as they are read. A certificate, or the ice point, gives one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>correction of %1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kept. What was read stays; what follows from it is worked out afresh. Undo takes it back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>correction taken back: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Taken back. Undo brings it again.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wickbook::ui::DatedSection</name>
    <message>
        <source>Insert, in the list</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Enter, in the list</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Delete, in the list. Undo brings it again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: fold away</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wickbook::ui::DiaryForm</name>
    <message>
        <source>Exposure diary</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change an entry of the diary</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What happened</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing is worked out from it. It is for whoever asks later why the readings changed. A new place is a period: “From a date on the station differs”.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Date, year-month-day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write it down once it has happened; this date is still to come.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write in the note what it was.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wickbook::ui::DiarySection</name>
    <message>
        <source>&amp;Exposure diary</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Write down…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The diary is empty. Write down when the screen is washed or painted, snow chokes the louvres, or a hedge grows or is cut.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>diary changed: %1, %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>diary: %1, %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kept. Undo takes it back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>taken back from the diary: %1, %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Taken back. Undo brings it again.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wickbook::ui::EndPanel</name>
    <message>
        <source>Queries of this page</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The page&apos;s end: no queries</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The page&apos;s end: one query</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>The page&apos;s end: %n queries</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>Esc goes back to the page.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What does the paper say?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the paper says so: a slip of these keys</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the paper says what was typed: a slip at the time, corrected now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>neither: back to the note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 to %1 answer. </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>S sound, D doubtful, E erroneous. Enter goes to the line, Esc back to the page.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Enter goes to the line, Esc back to the page.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wickbook::ui::EntryForm</name>
    <message>
        <source>Whirl by whirl</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Repeats</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Is the wick wet or frozen? W for water, I for ice.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As read off the scale. &lt; stands for a column that has gone into the bulb.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dry bulb</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wet bulb</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dry bulb</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wet bulb</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The beat  B</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wick</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>water</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wick care</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wetted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>new</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wick</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wick care</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How to tell  ?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pressure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wind, Beaufort force</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>observer, initials</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>maximum</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>minimum</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weather</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wind</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Observer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pressure, hPa</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Maximum</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Minimum</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wickbook::ui::EntryPanel</name>
    <message>
        <source>&amp;Dry bulb</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Wet bulb</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wick</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not given</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wic&amp;k</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Pressure, hPa</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from elevation</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weat&amp;her</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fog, rime</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>W&amp;ind force</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Observer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>es&amp;timated, not read</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>An estimate is marked, and stays out of means and extremes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wh&amp;y?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave as it is</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not needed for a first entry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>found in the pocket-book</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>misread, read again on paper …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pressure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“%1” is not a weather word. Write one of: %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write the wind as a Beaufort force from 0 to 12; “%1” is none.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dry bulb</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wet bulb</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write at least one of the two readings. An hour without any is given a reason with M.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Say why: what stood here first is kept, and so is the reason.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Say why, and from what it is estimated: the reason is kept.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>RH %1, dew point %2 %3</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wickbook::ui::FactForm</name>
    <message>
        <source>Keep it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>See what changes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Looking…</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wickbook::ui::FindBar</name>
    <message>
        <source>Find in the whole register</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a word, a number, a date</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Find in the whole re&amp;gister</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Before</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Find the one before (Shift+F3)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Next</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Find the next one (F3)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stop looking (Esc)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Close</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Close the search (Esc)</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wickbook::ui::FirstStartPage</name>
    <message>
        <source>A register for a dry and a wet bulb</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write down what the two thermometers say; relative humidity and dew point are worked out, with how sure they are.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save &amp;what can be read…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Start a station</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A new book: name, place, observing hours, thermometers. One page.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Open a book</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A register kept with this program before.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Look around in the sample station</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A copy of an invented station with two years of readings. Nothing there can be spoilt.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Opened before</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wickbook::ui::FittingForm</name>
    <message>
        <source>The pair in use</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which thermometers hang from this date on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write down every exchange, also when the two swap their places.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From, year-month-day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from the beginning</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dry bulb</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wet bulb</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write the date from which they hang there.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write down the thermometers first, under “Thermometers”.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One thermometer can&apos;t be both bulbs. Choose another for one of them.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wickbook::ui::FittingSection</name>
    <message>
        <source>The pair &amp;in use</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From a date on…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From the beginning</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: dry %2, wet %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is not written down which thermometer hangs where.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pair in use: dry %1, wet %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kept. Readings are worked out afresh; undo takes it back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pair in use taken back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This pair, as if it had never hung there</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Taken back. Undo brings it again.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wickbook::ui::FortnightChart</name>
    <message>
        <source>Relative humidity of the last two weeks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>readings shown: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing written down in these two weeks yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>% RH, hollow: doubtful</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wickbook::ui::HelpDialog</name>
    <message>
        <source>Help</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wickbook::ui::HistoryPanel</name>
    <message>
        <source>Every revision of this line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>written again as it was</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>why: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose a line to see what it has been through.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This hour is still to come.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing was written down for this hour. Enter writes down a forgotten reading, M says why there is none.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wickbook::ui::HourChooser</name>
    <message>
        <source>frost is likely: wet the wick now and touch it with ice; hang the frame out in the shade, look at the columns</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hang the frame out in the shade, look at the wick and the columns</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>frost is likely: take the reservoir away and brush a little ice-cold water on the wick now; look at the columns</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>frost is likely: wet the wick now; look at the wick and the columns</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>look at the wick and the columns</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>now %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the wick is %1 days old</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>whirl until the wet bulb falls no further, read the wet bulb first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>read the dry bulb first, tenths before whole degrees</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the hour before</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the hour after</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>date</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>observing hour</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>read at, by the clock</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Left empty: now, or for an older reading the hour itself.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>which of the two</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the first time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the second time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>read at</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>an extra reading</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no such date. Write it as day, month and year.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose a date</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wickbook::ui::IceCorrectionsForm</name>
    <message>
        <source>Ice points</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take the ice points over as corrections</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>They hold from the day of the check on. A correction known before is moved as a whole, so that the ice point reads right.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wickbook::ui::IndexTabs</name>
    <message>
        <source>Pages</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wickbook::ui::InstrumentsPage</name>
    <message>
        <source>none written down within a year. Note it with a reading, or under “Wick and water”.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>today</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>yesterday</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n days ago</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>Look whether it is yellow, frayed or beading.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Instruments</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the instruments</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dry bulb now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wet bulb now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Thermometer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not written down; readings are used as they are read</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Correction</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none known; readings are used as they are read</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, coefficient %1 × 10⁻⁴ per degree ± %2 %, ice %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Exposure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pressure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as read; else the station&apos;s mean, %1 hPa</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as read; else from the elevation</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Last new wick</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wickbook::ui::LetterChoice</name>
    <message>
        <source>%1: %2, key %3</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wickbook::ui::LimitForm</name>
    <message>
        <source>A limit of the checks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Built in: %1 (%2). A station may have %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>for all readings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from the beginning</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From, year-month-day, or empty</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Each reading is judged by the limits that hold for its own date.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>readings judged</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>S&amp;top counting</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write the limit.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>See what changes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Judging the whole register once as it is and once as it would be.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not counted to the end. It can be kept all the same.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The limit is so already.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write why: the reason is kept with the limit.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wickbook::ui::LimitsModel</name>
    <message>
        <source>the beginning</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fixed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as built in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Source of the built-in value: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rule and limit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Built in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At this station</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why (who)</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wickbook::ui::LimitsSection</name>
    <message>
        <source>limits of the checks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Change this limit…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back to the &amp;built-in value…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>history of this limit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Limits of the checks: fold away</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Limits of the checks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 of this station&apos;s own</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n of this station&apos;s own</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>taken back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as built in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from %1 on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from the beginning</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>limit back to built in: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>limit changed: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kept. The readings are judged afresh; undo takes it back.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wickbook::ui::LinesModel</name>
    <message>
        <source>for comparison</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>changed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Date</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hour</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>RH</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weather</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mark</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wickbook::ui::MainWindow</name>
    <message>
        <source>Make a cop&amp;y now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Res&amp;tore from a copy…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Book</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;New station…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Open a book…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Recent</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Sample station</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Bring in a register…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save what can be read of a &amp;damaged book…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On &amp;paper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Class &amp;round…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Close the book</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Edit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Undo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Redo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Register</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Page</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Look through the whole register…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Help on this page</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;About Wickbook</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Humidity table…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Month form…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Deputy&apos;s card…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Year book…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From an &amp;old page…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no books opened yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>About Wickbook</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wickbook %1

A register for a station with a dry and a wet bulb.
Free software under the GNU General Public License, version 3 or later.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save &amp;what can be read…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open the book first that the register is to be brought into.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wickbook</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Help  F1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Undo: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Redo: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The sample station needs a little room for temporary files, and there is none: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>invented</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>read only</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wickbook::ui::MarginStrip</name>
    <message>
        <source>kept</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>doubtful</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>erroneous</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>missing, with its reason</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not written down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>due now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>still to come</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The last eight weeks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2: %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>missing: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This station has no observing hours.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wickbook::ui::MarginalNote</name>
    <message>
        <source>Likely causes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Enter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, then the humidity is %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>RH %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wickbook::ui::MissingPanel</name>
    <message>
        <source>Why nothing was read</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why was &amp;nothing read? Choose with ↓ or write your own words.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave as it is</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>for &amp;all %1 hours in a row, in this month</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wickbook::ui::MonthPage</name>
    <message>
        <source>Open the &amp;folder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open the folder of the monthly return</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The month before (Alt+←)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The month after (Alt+→)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Paper of the monthly return</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A4</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Letter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Sign off…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Say that the month has been looked at and stands as it is</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Monthly re&amp;turn…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write the month&apos;s report, charts, tables and paragraph into a folder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pr&amp;int…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look at the month&apos;s pages as they will be printed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All readings as CS&amp;V…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write every observation of the book into one CSV file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The month&apos;s numbers, at observing hours</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing has been written down in %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take &amp;signing back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take the month&apos;s signing back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 signed off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is signed off (Ctrl+Z undoes it).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>signing of %1 taken back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is no longer signed off (Ctrl+Z undoes it).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is not over: sign it off once its last hour has passed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of %2 readings at observing hours count; missing %3, set aside %4.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One hour is still to come.</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n hours are still to come.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>The month could not be read, so nothing was written. Turn to another month and back, then try again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n files were written into %1.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>%1 observations were written to %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Folder for the monthly return</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All readings as CSV</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>CSV files (*.csv)</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wickbook::ui::MoveDialog</name>
    <message>
        <source>that month has no such day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>on %1 no reading was due at that hour</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 has a reading at that hour already</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is still to come</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>one line to %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n lines to %1 … %2</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>These belong to another month</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>These belong elsewhere</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lines that stay where they are</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mo&amp;ve them</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave them here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Which lines</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which lines</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the same days of another month</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>another date</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>another hour</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where &amp;to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The &amp;month they belong to (↑ ↓ change it)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The month they belong to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The &amp;date of the first line (↑ ↓ change it)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The date of the first line; the others keep their distance</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the hour each line has</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Hour</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hour</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>written in the wrong place</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wh&amp;y?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There are no such lines on this page. Choose others.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>They are in this month already. Choose the month they belong to.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>They stand there already. Choose another date or hour.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No line can go to %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No line can go there.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One line goes to the same day and hour of %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n lines go to the same days and hours of %1.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>What would go: %1.</source>
        <extracomment>%1 &quot;14 lines to 1 Apr 2025, 9 h … 7 Apr 2025, 21 h&quot;</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One stays here:</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n stay here:</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>%1 (%2 / %3) stays: %4</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wickbook::ui::NotesPanel</name>
    <message>
        <source>read right: keep it as read</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What does the paper say?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the paper says so: it was a slip of the keys</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the paper says what was typed: it was a slip at the thermometer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>neither: back to the notes</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wickbook::ui::ObservePage</name>
    <message>
        <source>Dry bulb</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wet bulb</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Save  ⏎</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Undo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open it in the register</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Last two weeks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Taken back. Ctrl+Shift+Z keeps it again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Your unfinished entry is here again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as read</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from %1 m</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Below the scale there is no number to work with; it is kept as below scale.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Saved %1: %2 / %3%4.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type the dry bulb and the wet bulb first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is off the thermometer&apos;s scale, which runs from %2 to %3 %4. Read it again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Say first whether the wick is wet or frozen: W for water, I for ice.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The dry bulb is empty. Enter again keeps the wet bulb alone, as incomplete.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The wet bulb is empty. Enter again keeps the dry bulb alone, as incomplete.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Enter again keeps what stands in the two bulbs.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The margin has a note on this reading. Enter keeps it as read, Esc goes back to the field.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+Z takes it back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>extra reading</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>typed first: %1 / %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This hour is written down already: %1 / %2. Changes are made in the register.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The entry is still here; press Enter to try again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Try again  ⏎</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Touch the wick with something cold and clean: ice is hard and dull, water gives and shines. A wick can stay liquid below zero and freeze with the air above it. With water the humidity would be %1, with ice %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Taken: %1. What was typed first is kept with it.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wickbook::ui::ObserversSection</name>
    <message>
        <source>%1 of %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Counting: %1 %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Counting …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>who has read, and how</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>First</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Last</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Readings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As deputy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Doubtful</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Erroneous</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Estimated</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Minutes off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>0 or 5, dry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>0 or 5, wet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Favours</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Minutes off the hour, early and late alike. A fifth of the last digits is 0 or 5 where no digit is favoured. What changes with the initials may be the hand, not the air.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Who ha&amp;s read: fold away</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Who ha&amp;s read, and how</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 (%2, %3)</source>
        <extracomment>which last digit, of which bulb, and its share</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not written down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 (%2 late)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 (%2 early)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 reading</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n readings</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>named</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no initials</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nobody has read yet.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wickbook::ui::OldPage</name>
    <message>
        <source>Some lines of this page are not in the book yet. Store them first, or empty them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From an old page</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This station&apos;s record begins on %1, so no reading was due in %2. To type this page off, let the station&apos;s first period begin earlier (Station page), or turn to the month it belongs to.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Turn to %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This station has no observing hours in %1, so the page has no lines. Give it its hours on the Station page, then come back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This month has no line for “%1”. Write the day as a number.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: first %2, the second time %3. Ctrl+E settles which the paper says.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Alt+%1: %2 (%3).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This hour is still to come.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nothing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2 or %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The two passes differ. What does the paper say?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, as in the book</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, as typed the second time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“%1” is not in the book</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of %2 lines are in the book.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One line is empty: m and a letter says why.</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n lines are empty: m and a letter says why.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n are read back.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n could not be stored yet.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>The checks have nothing to say to this line.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This cause says what happened, not what was read. Look at the paper: Enter goes to the line.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>typed again from the page: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Taken for %1: %2. What stood there first is kept; Ctrl+Z takes it back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>typed twice, and the paper looked at again: %1 was %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>judged %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is judged %2 (Ctrl+Z undoes it).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Some lines are not in the book yet. Store them first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave the second &amp;pass</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type it &amp;again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Second pass: type the page again. What you typed first is hidden; lines that come out alike are marked as read back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the lines typed just now (%1)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the lines marked on the page (%1)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>every line of the month (%1)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>move: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing was moved. %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One line now stands in %1. Ctrl+Z takes it back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n lines now stand in %1. Ctrl+Z takes them back.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>&amp;Try again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Month before</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Month before (Ctrl+Page up)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Month after</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Month after (Ctrl+Page down)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Month of the page</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Paper &amp;book</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Paper book the page is in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pa&amp;ge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Page of the paper book</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Read b&amp;y</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Initials of who read, as the page has them</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go to &amp;day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go to the day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+G, the day, Enter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Without the point: 234 is %1, 6 is %2, −6 is −%2</source>
        <extracomment>%1 is 23.4, %2 is 0.6, with the locale&apos;s mark</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For the thermometers only; a point or comma that is typed always counts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where Enter goes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Enter goes along the line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Enter goes down the column</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How the page has its hours</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hours under each other</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hours side by side</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Notes at the page&apos;s end</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Columns…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why lines of this page change that were in the book</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why it chan&amp;ges</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep the change</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave the book as it is</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>m and a letter: missing (%1). &quot; repeats what stands above. w or i after the wet bulb: water or ice.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Page&apos;s &amp;end</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+E</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type the page a second time without seeing the first: what is alike is marked as read back, what is not is shown</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Another &amp;month…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>These lines belong to another month</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back to Observe</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open the &amp;Station page</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>typed from the page</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is not in the book yet. %2 What you typed is still on the page.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>typed again from the page</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 was in the book already. Say why it changes, once for this page: Enter keeps the change, Esc leaves the book as it is.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write a reason: what stood there first is kept, and so is why it changed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>read back against the page: typed twice alike</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wickbook::ui::PageModel</name>
    <message>
        <source>nothing written yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>goes into the book when the line is left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not in the book</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in the book</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in the book, read back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in the book, doubtful</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in the book, can hardly be right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>missing, with a reason</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>typed otherwise the second time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>empty</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No reading was due at this hour on this day.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Date</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hour</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Observing hour</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>RH %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Relative humidity, %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dew p.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dew point, %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How the line stands</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wickbook::ui::PageSet</name>
    <message>
        <source>Observe</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Register</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Month</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Instruments</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Station</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wickbook::ui::PageView</name>
    <message>
        <source>The page&apos;s lines</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wickbook::ui::PairCheckForm</name>
    <message>
        <source>Pair check</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Both bulbs without wick in one stirred bath</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ice point: slush of crushed ice of distilled water, well packed, bulbs deep in it, read when they stand still. Then water of about 20 °C, stirred all the while. Let glass warm and cool slowly; broken glass and mercury go by your local rules. A field may stay empty.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Date, year-month-day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dry bulb&apos;s thermometer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wet bulb&apos;s thermometer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dry, at the ice point</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wet, at the ice point</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dry, in the bath</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wet, in the bath</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dry bulb at the ice point</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wet bulb at the ice point</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dry bulb in the bath</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wet bulb in the bath</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write it down once it has happened; this date is still to come.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write down the thermometers first, under “Thermometers”.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One thermometer can&apos;t be both bulbs. Choose another for one of them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write what at least one of them showed at the ice point, or both in the bath.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wickbook::ui::PairCheckSection</name>
    <message>
        <source>Both bulbs in one b&amp;ath</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New pair check…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take the ice points over…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>its thermometers are not written down any more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Once a year, and after every knock: both without wick in one stirred bath.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pair check</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Written down. It changes no reading until its ice points are taken over.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pair check taken back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Taken back. Undo brings it again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ice point of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This check has no ice point, and a difference alone does not say which thermometer errs.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>corrections from the ice points</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kept. What was read stays; what follows from it is worked out afresh. Undo takes it back.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wickbook::ui::PairsModel</name>
    <message>
        <source>The wick is water or ice: type w or i.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is not a number: write it as 16.4.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At or below zero: type w for water or i for ice.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>empty</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Number</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dry %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wet %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wick</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dry less wet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Humidity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dew point</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What to look at</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wickbook::ui::PaperDialog</name>
    <message>
        <source>Where these lines stand on paper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Which lines</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pocket-book 3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Book</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Page</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Keep</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave it as it is</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>They stand so already.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One line will have no place on paper any more.</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n lines will have no place on paper any more.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>One line will stand on: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n lines will stand on: %1.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
</context>
<context>
    <name>wickbook::ui::PeriodForm</name>
    <message>
        <source>From a date on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from the beginning</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>See what changes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From this date on the station differs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change what is different; leave the rest as it stands.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From, year-month-day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Observing hours</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>They follow</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Time zone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The thermometers are</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>latitude</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>° north</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>longitude</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>° east</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>elevation</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>m</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Latitude</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Longitude</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Elevation</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Surroundings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no time zone of that name. Choose one from the list.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write the %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing differs yet from what is in force. Change a field, or close this.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wickbook::ui::PeriodSection</name>
    <message>
        <source>S</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>N</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>W</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>E</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What di&amp;ffers from when</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From a date on…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From the beginning</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>elevation %1 m</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no observing hours</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hours follow %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>own coefficient %1 × 10⁻⁴ per degree</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mean pressure %1 hPa</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no mean pressure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>joined to the record before</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing is known of the station yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Of %1 readings %2 would have another humidity or dew point.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By the new hours %1 would lie elsewhere; they stay under the hour they were written at.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What was read stays as it is.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>period changed: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the station differs: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kept. Readings are worked out afresh; undo takes it back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The beginning can&apos;t be taken back, for a station must stand somewhere. Change it instead.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Take it back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>period taken back: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Taken back. Undo brings it again.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wickbook::ui::QueriesModel</name>
    <message>
        <source>When</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dry / wet as read</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>RH</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Query</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wickbook::ui::QueriesPanel</name>
    <message>
        <source>Queries to settle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>S sound, D doubtful, E erroneous, Enter opens the line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No queries to settle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One query to settle</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n queries to settle</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>judged %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>judged %1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is judged %2 (Ctrl+Z undoes it).</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wickbook::ui::QueryMark</name>
    <message>
        <source>cross: cannot be right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>circle: doubtful</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wickbook::ui::ReadingChoices</name>
    <message>
        <source>The file begins with</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a line of names</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a reading</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Between the cells stands a</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mark as found</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The bulbs were read in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the unit in the names, or the station&apos;s</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>°C</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>°F</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Decimal mark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>comma or point</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>point</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>comma</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dates like 3/4/2025 are</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as the other dates show</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>day, then month</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>month, then day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Times without an offset are by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the station&apos;s clock (%1)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Times the clock showed twice are</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>left out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the earlier</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the later</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, as found</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no time zone of that name. Choose one from the list.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wickbook::ui::RegisterModel</name>
    <message>
        <source>kept</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>doubtful</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>erroneous</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>incomplete</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>estimated, not read</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>missing, with a reason</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not written down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>to come</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>read back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, extra</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 (absence)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Date</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hour</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Observing hour</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dry bulb as read, %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wet bulb as read, %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Depr.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wet-bulb depression, %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wick</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Water or ice on the wick</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>RH %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Relative humidity, %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>±</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Relative humidity is good to, %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dew p.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dew point, %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weather</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wind</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wind, Beaufort force</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Observer&apos;s initials</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Origin</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How the value came about</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Judged</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What was judged of it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How the line stands</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Read back against the paper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Paper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Book and page of the paper register</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wickbook::ui::RegisterPage</name>
    <message>
        <source>Nothing was changed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This hour is still to come.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>revised %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wrote down %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is a reading at this hour: a reason is for hours without one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose a reason or write one in your own words.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is missing: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>reason changed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 to %2 are missing: %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ordered by: %1. O again turns it round.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ordered by: %1, the other way round. O again: as on the page.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In the order of the page.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One line is on the clipboard as a table.</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n lines are on the clipboard as a table.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>Stopped.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Looking: %1 %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No line of the register holds “%1”.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This is the only one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Found, round the end of the register.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Found.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The month before (Page Up)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The month after (Page Down)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>go to 2025-03 or a date</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go to a month or a date</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>find in this month</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Find in this month</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>only &amp;queries</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Undo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Undo (Ctrl+Z)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Redo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Copy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Copy the lines shown as a table (Ctrl+C)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Lines</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What can be done with the lines that are marked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Revise…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Enter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why it is &amp;missing…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With&amp;draw</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Delete</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Read &amp;back against the paper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Space</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Not read back after all</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shift+Space</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Book and &amp;page on paper…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mo&amp;ve elsewhere…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Judge &amp;sound</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Judge d&amp;oubtful</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Judge &amp;erroneous</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Order by this &amp;column</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Find in the whole register…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+Shift+F</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n lines</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>There is no reading here to judge. Go to an hour that has one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>judged %1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>judged %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>withdrew %1 (Ctrl+Z brings it back)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>withdrew %1 (Ctrl+Z brings them back)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>withdrawn</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing is written down for that hour: there is nothing to read back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>read back: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not read back: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>read back against the paper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not taken for read back any more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>read back already: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That was the last line of the month. Page Down turns the page.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing has been written down in this month that could stand on paper.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this line: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the lines marked on the page (%1)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the lines without a page (%1)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>every line of the month (%1)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>on paper: %1, %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no place on paper any more: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>named its page on paper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>took its page on paper away</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing has been written down in this month that could be moved.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>moved %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1. Ctrl+Z takes it back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Enter revise · Space read back, P its page · S sound, D doubtful, E erroneous · M why missing · V move · Delete withdraw · Shift+↓ marks several · F3 find · O order · Page Up, Page Down turn the month</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write a month as 2025-03 or a date as 2025-03-14.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No hours were promised in this month, and nothing was read.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing has been written down in %1. Enter writes down a forgotten reading.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Undone: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of %2 hours count</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 missing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 set aside</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 to be judged</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of %2 read back</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n lines marked</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>one line shown</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n lines shown</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
</context>
<context>
    <name>wickbook::ui::RegisterView</name>
    <message>
        <source>The month&apos;s lines</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wickbook::ui::RepeatsPanel</name>
    <message>
        <source>Wet bulb first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dry bulb</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>whirl %1, wet bulb</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>whirl %1, dry bulb</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Whirl %1 is the reading, and its dry bulb is missing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The wet bulb rises: the wick is drying. Stop, wet it and whirl again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The wet bulb has not settled yet: whirl again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>settled</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lowest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A row for each whirl, until two wet bulbs agree within %1 %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Settled: whirl %1 is the reading.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wickbook::ui::RestoreDialog</name>
    <message>
        <source>Stop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Close</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Say where the copies are: a folder of them, or one file.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Copies in “%1”</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Looking for copies…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There are no copies in this folder: choose another folder, or one file.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The copy is verified first; a new book is made of it, and nothing else is written.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 restored from %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Verifying the copy…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stopped.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Restoring…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stopped. Nothing was written.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where the copies are</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The copy to restore from</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wickbook books (*.wickbook);;All files (*)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where the new book shall lie</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Restore from a copy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;New book</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>file of the new book</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>C&amp;hoose…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>choose the file of the new book</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what differs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Another &amp;folder…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Another f&amp;ile…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>copies to restore from</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>how far it is</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Verify the copy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Restore</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Open the restored book</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wickbook::ui::ReviewWindow</name>
    <message>
        <source>Look through the register – Wickbook</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look through the register</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The register has changed since it was looked through.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look again  F5</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look through the register again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How far the register has been looked through</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cancel  Esc</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stop looking through the register</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The other window can be used meanwhile.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Groups of questions, worst first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In the list the keys are for the whole group, in the table for the readings chosen: S sound, D doubtful, E erroneous · W why · 1 to 3 take a likely cause · Enter opens in the register · N next, P previous group · Ctrl+Z takes back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stopped. Nothing was changed, and nothing is kept of it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Every reading is judged among its neighbours; what is marked and not yet judged is asked about here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>reading %1 of %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Opening the book</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reading the book: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Learning what this station usually reads</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Judging: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 looked at</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 to ask about, in %2 groups, worst first; %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing to ask: no reading is marked that has not been judged; %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose a reading that is asked about first, or go to the list for the whole group.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>judged %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2, %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 %2. Ctrl+Z takes it back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What should have stood there is not known. Judge the reading doubtful or erroneous instead.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>slip of the keys: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>slip at the thermometer: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>corrected %1, %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2. What was read first is kept. Ctrl+Z takes it back.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wickbook::ui::RunPanel</name>
    <message>
        <source>Readings of this group, with their neighbours</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What the checks say</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Why</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why, kept with each judgement</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>kept with each judgement, for example: fog every morning that week</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sound  S</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Doubtful  D</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Erroneous  E</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Judge %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No reading is chosen.</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>Judge the %n chosen:</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>Judge this reading:</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>Judge all %n:</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>What does the paper say?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the paper says so: it was a slip of the keys</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the paper says what stands here: it was a slip at the thermometer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>neither: back to the notes</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wickbook::ui::RunsModel</name>
    <message>
        <source>a slip: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wickbook::ui::SaltCheckForm</name>
    <message>
        <source>%1, %2 %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Salt check</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A sensor over saturated salt solutions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It checks an electronic sensor, not a psychrometer. Wet slurry of the salt in a closed jar, near 25 °C, several hours until it stands still. Lithium chloride is poisonous: gloves, no kitchen vessels, local rules for disposal. A field may stay empty.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Date, year-month-day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sensor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>temperature of the solutions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>°C</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Temperature</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>reading over %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>% read</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write it down once it has happened; this date is still to come.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is not a relative humidity. Look at the %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write what the sensor showed over at least one solution.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write which sensor it was.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wickbook::ui::SaltCheckSection</name>
    <message>
        <source>A sensor over &amp;salts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New salt check…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2: %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For an electronic sensor that the station is compared with; a psychrometer is not checked so.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>salt check</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Written down. Undo takes it back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>salt check taken back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Taken back. Undo brings it again.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wickbook::ui::SalvageDialog</name>
    <message>
        <source>Save what can be read</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save what can be read of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Every revision that can still be read goes into a new book, and what can&apos;t is counted. The damaged book stays as it is: keep it. Where there is a copy that verifies, restore that one first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what came back and what is lost</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>how far it is</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Name the new book…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Stop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Open the new book</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Close</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 salvaged</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reading %1 page by page.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wickbook::ui::SheetDialog</name>
    <message>
        <source>A4</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Letter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pa&amp;per</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Look at the pages…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>P&amp;rint…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Save as PDF…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Close</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wickbook::ui::SideBySideForm</name>
    <message>
        <source>Beside another instrument</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Another instrument beside the station&apos;s</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Same place, same air, read within five minutes of the station&apos;s pair. A reference tells how far the station lies off and gives its own coefficient; a new instrument or site goes beside the old for a year before it takes over.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What it is</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>First day, year-month-day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Last day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as announced; may stay empty</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>uncertainty of the reference</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>% RH, standard; of a reference</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Its uncertainty</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no psychrometer, or as the station&apos;s</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A psychrometer, exposed as</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What was decided</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at the end: joined, broken, coefficient taken over from …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write what the other instrument is.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The last day lies before the first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The uncertainty of a reference lies between 0 and 20 % RH.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wickbook::ui::SideBySideSection</name>
    <message>
        <source>Beside a&amp;nother instrument</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Announce one…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Readings and what they say…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2: from %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> to %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A reference tells how far the station lies off and gives its own coefficient; what shall follow the station&apos;s instrument stands beside it first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>beside another instrument: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Written down. Its readings come in under “Readings and what they say”.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>comparison taken back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Taken back with its readings. Undo brings them again.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wickbook::ui::SignForm</name>
    <message>
        <source>%1 of %2 readings at observing hours count. The numbers and the readings are kept as they are now. A change stays possible afterwards; the month and its report then say so.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Queries still open: %1; their readings stay set aside. Better settle them first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sign off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sign off %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Initials or name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write who signs the month off.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wickbook::ui::StationForm</name>
    <message>
        <source>The hours follow standard time all the year, and so the sun; while summer time is in force the clock is ahead of them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The hours go with the clock on the wall; when it changes in spring and autumn they move against the sun, which changes a humidity record.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The hours are those of UTC, the same moment everywhere.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tomorrow the clock skips %1, so nothing is expected then.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tomorrow %1 is read when the clock shows %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Start a station</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One page; everything on it can be changed later.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Start the book</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Latitude runs from −90 to 90.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Longitude runs from −180 to 180.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The elevation must lie between −500 and 9000 m; write it in metres.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no time zone of that name. Choose one from the list.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>name of the station</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>latitude</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>° north</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>longitude</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>° east</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Degrees and decimals, south with a minus sign.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Degrees and decimals, west with a minus sign.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Place, south and west with −</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>elevation</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>m</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Elevation above the sea</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>observing hours</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Observing hours</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what the hours follow</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>They follow</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>time zone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Time zone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>how the thermometers are exposed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The thermometers are</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>scale of the thermometers</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>finest step that is read</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tenths</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fifths</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>halves</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>whole degrees</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>read to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Scale</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lowest mark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>highest mark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Marks run from</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Give the station a name, so that its book can be told from others.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write the %1: the checks and the pressure need it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no such place: latitude runs from −90 to 90, longitude from −180 to 180.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The lowest mark of the scale must lie below the highest.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wickbook::ui::StationPage</name>
    <message>
        <source>From a date on the station &amp;differs…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what is known of the station</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Book: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 reading</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n readings</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From the beginning</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, in force</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Place</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Elevation</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 m</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Observing hours</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none, extra readings only</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1; they follow %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Time zone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Exposure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Own coefficient</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 × 10⁻⁴ per degree, water</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mean pressure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 hPa, where none was read</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Surroundings</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wickbook::ui::TakeBackForm</name>
    <message>
        <source>Take back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take it back</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wickbook::ui::TakeInDialog</name>
    <message>
        <source>Stop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Close</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drop a table (CSV) or files of the Station Exchange Format here, or choose them. Nothing is written before you have seen what would become of every line.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose a file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tables and SEF files (*.csv *.tsv *.txt *.tab *.sef);;All files (*)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 (Station Exchange Format; times in UTC, joined on time)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 (cells by %2, %3).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Read as the last file with these names was.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Its observing hours are taken by the station&apos;s rule: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Trying what every line would become…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stopped. Nothing was written.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Read the whole file before bringing it in.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One reading of the book differs from the file:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 readings of the book differ from the file:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Bring in %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bringing in…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bring in %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Brought in: %1, of these marked: %2. Left out: %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The book as it was before is kept among its copies as “%1”.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Something was changed since: undo that first, with Ctrl+Z.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Withdrawn: nothing of it counts any more; the history keeps what was brought in.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not everything could be withdrawn, so nothing was.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where the lines that are left out shall lie</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 left out.csv</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tables (*.csv)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Saved as “%1”, each line with its reason.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bring in a register</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>C&amp;hoose a file…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>which lines are shown</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>all lines</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what is new</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what is marked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>conflicts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what can&apos;t come in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what is there already</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what every line would become</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what becomes of conflicts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>keep what the book has</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>take the file&apos;s; the old ones stay in the history</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>leave these lines out and list them</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;First keep a copy of the book</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>how far it is</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Read the whole file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Save what is left out…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Withdraw what was brought in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Bring in</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wickbook::ui::ThermometerDrawing</name>
    <message>
        <source>Drawn dry bulb thermometer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drawn wet bulb thermometer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Up and down move the column by a step of the scale, Page Up and Page Down by ten.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>below scale</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no reading yet</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wickbook::ui::ThermometerForm</name>
    <message>
        <source>Thermometer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change a thermometer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A new thermometer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What was read with it stays as it was read. A column that breaks or a zero that moved is a correction, not a new thermometer.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Serial number or name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Liquid</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>spirit, mercury, …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Scale in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Read to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>finest step that is read</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lowest mark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lowest mark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Highest mark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>highest mark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as the dry bulb</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as the wet bulb</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It hangs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From, year-month-day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write the number on it, or what you call it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is a thermometer “%1” already. Give this one another name.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write the %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The finest step that is read lies between 0.01 and 2 degrees; look at “%1”.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The lowest mark must lie below the highest.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The other bulb&apos;s thermometer is not known. Hang the pair up under “The pair in use”.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wickbook::ui::ThermometerSection</name>
    <message>
        <source>unknown</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Thermometers</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New thermometer…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dry bulb now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wet bulb now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not in use</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2: %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No thermometer is written down yet; readings are used as they are read.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>thermometer changed: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>new thermometer: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kept. Readings are worked out afresh; undo takes it back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It hangs, or hung, in the screen: take it down under “The pair in use” first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>thermometer taken back: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Taken back. Undo brings it again.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wickbook::ui::TypedNumberEdit</name>
    <message>
        <source>below scale</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wickbook::ui::VerdictModel</name>
    <message>
        <source>line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what becomes of it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>reading</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>why</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wickbook::ui::WeatherChoice</name>
    <message>
        <source>weather</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not noted</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wickbook::ui::WhirlCircle</name>
    <message>
        <source>%1 s</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wickbook::ui::WhirlTimer</name>
    <message>
        <source>from the hand to the bulbs, centimetres</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a sound at each turn</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no movement, numbers only</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From the hand to the bulbs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 turns a second</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write the distance, from 5 to 100 cm.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Start</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>turn %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wickbook::ui::WickForm</name>
    <message>
        <source>Wick and water</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change an entry of the log</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What was done to the wick</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A new wick: muslin soaked and washed free of dressing, one layer, tied above and below the bulb, a thread of cotton to the reservoir; not touched with the fingers. Water: distilled or rain.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Date, year-month-day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write it down once it has happened; this date is still to come.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wickbook::ui::WickSection</name>
    <message>
        <source>&amp;Wick and water</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write down care…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing was written down apart from what was ticked with a reading.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wick and water: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Written down; it marks the charts. Undo takes it back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wick and water: entry taken back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Taken back. Undo brings it again.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wickbook::ui::WorkingDialog</name>
    <message>
        <source>The working</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Copy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Copy as a p&amp;icture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Print…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep as P&amp;DF…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>C&amp;lose</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Copied as text.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Copied as a picture.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The PDF can&apos;t be written: %1. Choose another folder.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep the working as a PDF</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>working.pdf</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kept as %1.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
</TS>
