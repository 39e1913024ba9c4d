<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="fr" sourcelanguage="en">
<context>
    <name>AirText</name>
    <message>
        <source>Vapour pressure over temperature, hPa</source>
        <translation>Tension de vapeur selon la température, hPa</translation>
    </message>
    <message>
        <source>dry bulb, %1</source>
        <translation>thermomètre sec, %1</translation>
    </message>
    <message>
        <source>relative humidity</source>
        <translation>humidité relative</translation>
    </message>
</context>
<context>
    <name>CauseText</name>
    <message>
        <source>read ten high</source>
        <translation>lu dix trop haut</translation>
    </message>
    <message>
        <source>read ten low</source>
        <translation>lu dix trop bas</translation>
    </message>
    <message>
        <source>read five high</source>
        <translation>lu cinq trop haut</translation>
    </message>
    <message>
        <source>read five low</source>
        <translation>lu cinq trop bas</translation>
    </message>
    <message>
        <source>its sign lost or added</source>
        <translation>signe perdu ou en trop</translation>
    </message>
    <message>
        <source>its decimal mark lost or moved</source>
        <translation>virgule perdue ou déplacée</translation>
    </message>
    <message>
        <source>two digits exchanged</source>
        <translation>deux chiffres intervertis</translation>
    </message>
    <message>
        <source>a digit dropped</source>
        <translation>un chiffre oublié</translation>
    </message>
    <message>
        <source>a digit written twice</source>
        <translation>un chiffre écrit deux fois</translation>
    </message>
    <message>
        <source>a digit too many</source>
        <translation>un chiffre de trop</translation>
    </message>
    <message>
        <source>its tenths counted the wrong way below zero</source>
        <translation>dixièmes comptés à l’envers sous zéro</translation>
    </message>
    <message>
        <source>its column parted: look at the thread for a gap</source>
        <translation>colonne brisée&#xa0;: chercher une coupure dans le fil</translation>
    </message>
    <message>
        <source>dry and wet swapped: %1</source>
        <translation>sec et mouillé intervertis&#xa0;: %1</translation>
    </message>
    <message>
        <source>both read ten high: %1</source>
        <translation>les deux lus dix trop haut&#xa0;: %1</translation>
    </message>
    <message>
        <source>both read ten low: %1</source>
        <translation>les deux lus dix trop bas&#xa0;: %1</translation>
    </message>
    <message>
        <source>both signs lost or added: %1</source>
        <translation>les deux signes perdus ou en trop&#xa0;: %1</translation>
    </message>
    <message>
        <source>both decimal marks lost: %1</source>
        <translation>les deux virgules perdues&#xa0;: %1</translation>
    </message>
    <message>
        <source>°F written as °C: %1</source>
        <translation>°F écrits comme °C&#xa0;: %1</translation>
    </message>
    <message>
        <source>°C written as °F: %1</source>
        <translation>°C écrits comme °F&#xa0;: %1</translation>
    </message>
    <message>
        <source>the wick was ice, not water</source>
        <translation>la mousseline était en glace, non en eau</translation>
    </message>
    <message>
        <source>the wick was water, not ice</source>
        <translation>la mousseline était en eau, non en glace</translation>
    </message>
    <message>
        <source>the line above was copied</source>
        <translation>la ligne du dessus a été recopiée</translation>
    </message>
    <message>
        <source>the wick was dry: the wet bulb is of no use</source>
        <translation>la mousseline était sèche&#xa0;: le thermomètre mouillé ne sert à rien</translation>
    </message>
    <message>
        <source>%1 / %2</source>
        <extracomment>%1 the dry bulb, %2 the wet bulb</extracomment>
        <translation>%1 / %2</translation>
    </message>
    <message>
        <source>dry bulb: %1</source>
        <translation>sec&#xa0;: %1</translation>
    </message>
    <message>
        <source>wet bulb: %1</source>
        <translation>mouillé&#xa0;: %1</translation>
    </message>
    <message>
        <source>dry bulb is %1, %2</source>
        <extracomment>%1 a temperature, %2 what went wrong</extracomment>
        <translation>sec à %1, %2</translation>
    </message>
    <message>
        <source>wet bulb is %1, %2</source>
        <translation>mouillé à %1, %2</translation>
    </message>
</context>
<context>
    <name>ChangedText</name>
    <message>
        <source>There is no reading yet that it could change.</source>
        <translation>Il n’y a encore aucun relevé que cela pourrait changer.</translation>
    </message>
    <message>
        <source>None of the %1 readings would have another humidity or dew point.</source>
        <translation>Aucun des %1 relevés n’aurait une autre humidité ni un autre point de rosée.</translation>
    </message>
    <message>
        <source>Of %1 readings %2 would have another humidity or dew point, all in one month.</source>
        <translation>Sur %1 relevés, %2 auraient une autre humidité ou un autre point de rosée, tous dans un même mois.</translation>
    </message>
    <message>
        <source>Of %1 readings %2 would have another humidity or dew point, in %3 months.</source>
        <translation>Sur %1 relevés, %2 auraient une autre humidité ou un autre point de rosée, dans %3 mois.</translation>
    </message>
    <message>
        <source>%1 would lose their humidity.</source>
        <translation>%1 perdraient leur humidité.</translation>
    </message>
    <message>
        <source>%1 would gain one.</source>
        <translation>%1 en gagneraient une.</translation>
    </message>
    <message>
        <source>What was read stays as it is.</source>
        <translation>Ce qui a été lu reste tel quel.</translation>
    </message>
</context>
<context>
    <name>ChartText</name>
    <message>
        <source>extra</source>
        <translation>hors heure</translation>
    </message>
    <message>
        <source>doubtful</source>
        <translation>douteux</translation>
    </message>
    <message>
        <source>erroneous</source>
        <translation>erroné</translation>
    </message>
    <message>
        <source>wick changed</source>
        <translation>mousseline changée</translation>
    </message>
    <message>
        <source>station or instruments changed</source>
        <translation>station ou instruments changés</translation>
    </message>
    <message>
        <source>exposure diary</source>
        <translation>journal du site</translation>
    </message>
    <message>
        <source>station average, %1 years</source>
        <extracomment>the station&apos;s own mean range; %1 is how many years</extracomment>
        <translation>moyenne de la station, %1 ans</translation>
    </message>
</context>
<context>
    <name>ChoiceWords</name>
    <message>
        <source>Humidity table</source>
        <translation>Table psychrométrique</translation>
    </message>
    <message>
        <source>For the wall of the hut: relative humidity and dew point for this station&apos;s exposure and pressure, a wick with water and one with ice.</source>
        <translation>Pour le mur de l’abri&#xa0;: humidité relative et point de rosée pour l’exposition et la pression de cette station, mousseline en eau et en glace.</translation>
    </message>
    <message>
        <source>&amp;Scale</source>
        <translation>É&amp;chelle</translation>
    </message>
    <message>
        <source>half degrees</source>
        <translation>demi-degrés</translation>
    </message>
    <message>
        <source>whole degrees</source>
        <translation>degrés entiers</translation>
    </message>
    <message>
        <source>Dry less &amp;wet by</source>
        <translation>Sec moins &amp;mouillé, par</translation>
    </message>
    <message>
        <source>There is no table without a coefficient: say on the page Station how the thermometers hang.</source>
        <translation>Pas de table sans coefficient&#xa0;: dire sur la page Station comment les thermomètres sont exposés.</translation>
    </message>
    <message>
        <source>Month form</source>
        <translation>Formulaire du mois</translation>
    </message>
    <message>
        <source>A month to write in by hand: a line for each observing hour, with boxes for the degrees.</source>
        <translation>Un mois à remplir à la main&#xa0;: une ligne par heure d’observation, avec des cases pour les degrés.</translation>
    </message>
    <message>
        <source>&amp;Month</source>
        <translation>&amp;Mois</translation>
    </message>
    <message>
        <source>Deputy&apos;s card</source>
        <translation>Carte du remplaçant</translation>
    </message>
    <message>
        <source>A card for whoever reads in your place: hours, order of reading, frost, wick, what to do in doubt. A5, both sides.</source>
        <translation>Une carte pour qui lit à votre place&#xa0;: heures, ordre de lecture, gel, mousseline, que faire en cas de doute. A5, recto verso.</translation>
    </message>
    <message>
        <source>Year book</source>
        <translation>Annuaire</translation>
    </message>
    <message>
        <source>A year bound: numbers, charts, twelve months, and the hut&apos;s humidity table. It takes a few seconds.</source>
        <translation>Une année reliée&#xa0;: nombres, graphiques, douze mois et la table psychrométrique de l’abri. Cela prend quelques secondes.</translation>
    </message>
    <message>
        <source>&amp;Year</source>
        <translation>&amp;Année</translation>
    </message>
    <message>
        <source>Reading the year…</source>
        <translation>Lecture de l’année…</translation>
    </message>
    <message>
        <source>&amp;Cancel</source>
        <translation>Annule&amp;r</translation>
    </message>
    <message>
        <source>Stopped; no page was made.</source>
        <translation>Arrêté ; aucune page n’a été faite.</translation>
    </message>
</context>
<context>
    <name>ClassText</name>
    <message>
        <source>Dry and wet were probably written in each other&apos;s place: look again which is which.</source>
        <translation>Sec et mouillé ont sans doute été écrits l’un pour l’autre&#xa0;: regarder lequel est lequel.</translation>
    </message>
    <message>
        <source>Both were probably read on the °F scale: read the other side of the stem.</source>
        <translation>Les deux ont sans doute été lus sur l’échelle en °F&#xa0;: lire l’autre côté de la tige.</translation>
    </message>
    <message>
        <source>The dry bulb was probably misread by ten: read it again, tenths first.</source>
        <translation>Le sec a sans doute été lu dix à côté&#xa0;: relire, les dixièmes d’abord.</translation>
    </message>
    <message>
        <source>The wet bulb was probably misread by ten: read it again, tenths first.</source>
        <translation>Le mouillé a sans doute été lu dix à côté&#xa0;: relire, les dixièmes d’abord.</translation>
    </message>
    <message>
        <source>The dry bulb was probably misread by five: count the lines from the nearest figure.</source>
        <translation>Le sec a sans doute été lu cinq à côté&#xa0;: compter les traits depuis le chiffre le plus proche.</translation>
    </message>
    <message>
        <source>The wet bulb was probably misread by five: count the lines from the nearest figure.</source>
        <translation>Le mouillé a sans doute été lu cinq à côté&#xa0;: compter les traits depuis le chiffre le plus proche.</translation>
    </message>
    <message>
        <source>The decimal point of the dry bulb probably moved: look at what was written.</source>
        <translation>La virgule du sec a sans doute été déplacée&#xa0;: regarder ce qui est écrit.</translation>
    </message>
    <message>
        <source>The decimal point of the wet bulb probably moved: look at what was written.</source>
        <translation>La virgule du mouillé a sans doute été déplacée&#xa0;: regarder ce qui est écrit.</translation>
    </message>
    <message>
        <source>The wick was probably dry, or the reading came too early: wet the wick, go on until it falls no further, and read again.</source>
        <translation>La mousseline était sans doute sèche, ou la lecture trop hâtive&#xa0;: humecter, continuer jusqu’à ce qu’il ne baisse plus, et relire.</translation>
    </message>
    <message>
        <source>The air round this pair was probably warmer: keep it in the shade and away from people, and read again.</source>
        <translation>L’air autour de ce couple était sans doute plus chaud&#xa0;: rester à l’ombre et loin des gens, et relire.</translation>
    </message>
    <message>
        <source>Water or ice was given otherwise than by most: touch the wick and see.</source>
        <translation>Eau ou glace a été dit autrement que par la plupart&#xa0;: toucher la mousseline.</translation>
    </message>
    <message>
        <source>Dry bulb %1 %2 above the middle.</source>
        <translation>Sec %1&#xa0;%2 au-dessus du milieu.</translation>
    </message>
    <message>
        <source>Dry bulb %1 %2 below the middle.</source>
        <translation>Sec %1&#xa0;%2 au-dessous du milieu.</translation>
    </message>
    <message>
        <source>Wet bulb %1 %2 above the middle.</source>
        <translation>Mouillé %1&#xa0;%2 au-dessus du milieu.</translation>
    </message>
    <message>
        <source>Wet bulb %1 %2 below the middle.</source>
        <translation>Mouillé %1&#xa0;%2 au-dessous du milieu.</translation>
    </message>
    <message>
        <source>Read both again, wet bulb first.</source>
        <translation>Relire les deux, le mouillé d’abord.</translation>
    </message>
    <message>
        <source>No pair gives a humidity yet.</source>
        <translation>Aucun couple ne donne encore d’humidité.</translation>
    </message>
    <message>
        <source>1 pair.</source>
        <translation>1 couple.</translation>
    </message>
    <message numerus="yes">
        <source>%n pairs.</source>
        <translation>
            <numerusform>%n couple.</numerusform>
            <numerusform>%n couples.</numerusform>
        </translation>
    </message>
    <message>
        <source>The middle value is %1.</source>
        <translation>La valeur médiane est %1.</translation>
    </message>
    <message>
        <source>Half of them lie between %1 and %2, all between %3 and %4.</source>
        <translation>La moitié se trouve entre %1 et %2, tous entre %3 et %4.</translation>
    </message>
    <message>
        <source>With fewer than %1 pairs nobody is called far off.</source>
        <translation>Avec moins de %1 couples, aucun n’est dit éloigné.</translation>
    </message>
    <message>
        <source>Nobody is far off.</source>
        <translation>Aucun n’est éloigné.</translation>
    </message>
    <message>
        <source>Far off: %1.</source>
        <translation>Éloignés&#xa0;: %1.</translation>
    </message>
</context>
<context>
    <name>CopyText</name>
    <message>
        <source>daily</source>
        <translation>chaque jour</translation>
    </message>
    <message>
        <source>by hand</source>
        <translation>à la main</translation>
    </message>
    <message>
        <source>before bringing in</source>
        <translation>avant la reprise</translation>
    </message>
    <message>
        <source>before taking back</source>
        <translation>avant l’annulation</translation>
    </message>
    <message>
        <source>d MMM yyyy, HH:mm</source>
        <extracomment>day, short month, year and clock time, in Qt&apos;s date format</extracomment>
        <translation>d MMM yyyy, HH:mm</translation>
    </message>
    <message>
        <source>No copy was kept, for the book did not verify; the copies made before stay. %1</source>
        <translation>Aucune copie n’a été gardée, car le livre n’a pu être vérifié&#xa0;; les copies d’avant restent. %1</translation>
    </message>
    <message>
        <source>No copy was kept: the folder for copies, “%1”, is not there. Plug in the drive it lies on, or choose another folder. The copies made before stay.</source>
        <translation>Aucune copie n’a été gardée&#xa0;: le dossier des copies, « %1&#xa0;», n’est pas là. Brancher le disque où il se trouve ou choisir un autre dossier. Les copies d’avant restent.</translation>
    </message>
    <message>
        <source>No copy was kept: the disk that holds “%1” is full. Free some space, or choose another folder. The copies made before stay.</source>
        <translation>Aucune copie n’a été gardée&#xa0;: le disque de « %1&#xa0;» est plein. Libérer de la place ou choisir un autre dossier. Les copies d’avant restent.</translation>
    </message>
    <message>
        <source>No copy was kept: nothing can be written in “%1”. Make it writable, or choose another folder. The copies made before stay. (%2)</source>
        <translation>Aucune copie n’a été gardée&#xa0;: on ne peut rien écrire dans « %1&#xa0;». Y permettre l’écriture ou choisir un autre dossier. Les copies d’avant restent. (%2)</translation>
    </message>
    <message>
        <source>No copy was kept: another program is writing in the book. It is tried again later.</source>
        <translation>Aucune copie n’a été gardée&#xa0;: un autre programme écrit dans le livre. Nouvel essai plus tard.</translation>
    </message>
    <message>
        <source>No copy was kept in “%1”: check the drive, or choose another folder. The copies made before stay. (%2)</source>
        <translation>Aucune copie n’a été gardée dans « %1&#xa0;»&#xa0;: vérifier le disque ou choisir un autre dossier. Les copies d’avant restent. (%2)</translation>
    </message>
    <message>
        <source>No copy was made: “%1” can&apos;t be written there. Choose another folder. (%2)</source>
        <translation>Aucune copie n’a été faite&#xa0;: « %1&#xa0;» ne peut y être écrit. Choisir un autre dossier. (%2)</translation>
    </message>
    <message>
        <source>No copy was made. %1</source>
        <translation>Aucune copie n’a été faite. %1</translation>
    </message>
    <message>
        <source>The old copy “%1” could not be deleted and stays: delete it by hand if it is not wanted. (%2)</source>
        <translation>L’ancienne copie « %1&#xa0;» n’a pu être supprimée et reste&#xa0;: la supprimer à la main si elle n’est plus utile. (%2)</translation>
    </message>
    <message>
        <source>damaged; it is never deleted by itself</source>
        <translation>endommagée&#xa0;; elle n’est jamais supprimée d’elle-même</translation>
    </message>
    <message>
        <source>can&apos;t be read (%1)</source>
        <translation>illisible (%1)</translation>
    </message>
    <message>
        <source>1 copy</source>
        <translation>1 copie</translation>
    </message>
    <message numerus="yes">
        <source>%1 copies</source>
        <translation>
            <numerusform>%1 copie</numerusform>
            <numerusform>%1 copies</numerusform>
        </translation>
    </message>
    <message>
        <source>1 reading</source>
        <translation>1 relevé</translation>
    </message>
    <message numerus="yes">
        <source>%1 readings</source>
        <translation>
            <numerusform>%1 relevé</numerusform>
            <numerusform>%1 relevés</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>DiaryText</name>
    <message>
        <source>screen washed</source>
        <translation>abri lavé</translation>
    </message>
    <message>
        <source>screen painted</source>
        <translation>abri repeint</translation>
    </message>
    <message>
        <source>louvres choked with snow</source>
        <translation>persiennes pleines de neige</translation>
    </message>
    <message>
        <source>hedge or trees grown</source>
        <translation>haie ou arbres ont poussé</translation>
    </message>
    <message>
        <source>hedge or trees cut</source>
        <translation>haie ou arbres taillés</translation>
    </message>
    <message>
        <source>screen moved</source>
        <translation>abri déplacé</translation>
    </message>
    <message>
        <source>photograph taken</source>
        <translation>photographie prise</translation>
    </message>
    <message>
        <source>new wick</source>
        <translation>nouvelle mousseline</translation>
    </message>
    <message>
        <source>reservoir cleaned and filled</source>
        <translation>réservoir d’eau nettoyé et rempli</translation>
    </message>
    <message>
        <source>other</source>
        <translation>autre</translation>
    </message>
</context>
<context>
    <name>DifferenceText</name>
    <message>
        <source>only in %1</source>
        <translation>seulement dans %1</translation>
    </message>
    <message>
        <source>revised later in %1</source>
        <translation>révisé plus tard dans %1</translation>
    </message>
    <message>
        <source>revised in each for itself</source>
        <translation>révisé dans chacun de son côté</translation>
    </message>
    <message>
        <source>The station&apos;s name and rules</source>
        <translation>Le nom et les règles de la station</translation>
    </message>
    <message>
        <source>A period of the station</source>
        <translation>Une période de la station</translation>
    </message>
    <message>
        <source>A thermometer</source>
        <translation>Un thermomètre</translation>
    </message>
    <message>
        <source>The thermometers in use</source>
        <translation>Les thermomètres en service</translation>
    </message>
    <message>
        <source>A thermometer&apos;s correction</source>
        <translation>La correction d’un thermomètre</translation>
    </message>
    <message>
        <source>An absence</source>
        <translation>Une absence</translation>
    </message>
    <message>
        <source>A note in the diary</source>
        <translation>Une note du journal</translation>
    </message>
    <message>
        <source>A check of the pair</source>
        <translation>Un contrôle du couple</translation>
    </message>
    <message>
        <source>A check over salts</source>
        <translation>Un contrôle sur sels</translation>
    </message>
    <message>
        <source>Another instrument beside the station&apos;s</source>
        <translation>Un autre instrument à côté de celui de la station</translation>
    </message>
    <message>
        <source>A reading of another instrument</source>
        <translation>Un relevé d’un autre instrument</translation>
    </message>
    <message>
        <source>A limit of the checks</source>
        <translation>Un seuil des contrôles</translation>
    </message>
    <message>
        <source>Another entry (%1)</source>
        <translation>Une autre inscription (%1)</translation>
    </message>
    <message>
        <source>d MMM yyyy</source>
        <translation>d MMM yyyy</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>withdrawn</source>
        <translation>retiré</translation>
    </message>
    <message>
        <source>missing</source>
        <translation>manquant</translation>
    </message>
    <message>
        <source>%1: %2, %3</source>
        <translation>%1&#xa0;: %2, %3</translation>
    </message>
    <message>
        <source>%1: %2 in both, with other words or marks; %3</source>
        <translation>%1&#xa0;: %2 dans les deux, avec d’autres mots ou marques&#xa0;; %3</translation>
    </message>
    <message>
        <source>%1: %2 in %3, %4 in %5; %6</source>
        <translation>%1&#xa0;: %2 dans %3, %4 dans %5&#xa0;; %6</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>, entered %1</source>
        <translation>, inscrit le %1</translation>
    </message>
    <message>
        <source>%1 and %2 have nothing in common: they are not copies of one book.</source>
        <translation>%1 et %2 n’ont rien en commun&#xa0;: ce ne sont pas des copies d’un même livre.</translation>
    </message>
    <message>
        <source>%1 and %2 hold the same readings and the same facts.</source>
        <translation>%1 et %2 contiennent les mêmes relevés et les mêmes faits.</translation>
    </message>
    <message>
        <source>1 reading: %1.</source>
        <translation>1 relevé&#xa0;: %1.</translation>
    </message>
    <message>
        <source>%1 readings: %2.</source>
        <translation>%1 relevés&#xa0;: %2.</translation>
    </message>
    <message>
        <source>1 fact of the station: %1.</source>
        <translation>1 fait de la station&#xa0;: %1.</translation>
    </message>
    <message>
        <source>%1 facts of the station: %2.</source>
        <translation>%1 faits de la station&#xa0;: %2.</translation>
    </message>
    <message>
        <source>… and %1 more</source>
        <translation>… et %1 autres</translation>
    </message>
</context>
<context>
    <name>EntryTextContext</name>
    <message>
        <source>%1 never came that night: the clocks were put forward. Write the time that the clock showed.</source>
        <translation>%1 n’a pas existé cette nuit-là&#xa0;: les horloges ont été avancées. Écrire l’heure que montrait l’horloge.</translation>
    </message>
    <message>
        <source>There is no such date. Write it as day, month and year.</source>
        <translation>Cette date n’existe pas. Écrire jour, mois et année.</translation>
    </message>
    <message>
        <source>The station does not read at that hour on that date. Choose another hour, or an extra reading.</source>
        <translation>La station n’observe pas à cette heure ce jour-là. Choisir une autre heure, ou un relevé hors heure.</translation>
    </message>
    <message>
        <source>dry bulb</source>
        <translation>thermomètre sec</translation>
    </message>
    <message>
        <source>wet bulb</source>
        <translation>thermomètre mouillé</translation>
    </message>
    <message>
        <source>maximum</source>
        <translation>maximum</translation>
    </message>
    <message>
        <source>minimum</source>
        <translation>minimum</translation>
    </message>
    <message>
        <source>pressure</source>
        <translation>pression</translation>
    </message>
    <message>
        <source>wind</source>
        <translation>vent</translation>
    </message>
    <message>
        <source>Wind is a Beaufort force from 0 to 12, a whole number.</source>
        <translation>Le vent est une force Beaufort de 0 à 12, un nombre entier.</translation>
    </message>
    <message>
        <source>whirl %1, wet bulb</source>
        <translation>passage %1, mouillé</translation>
    </message>
    <message>
        <source>whirl %1, dry bulb</source>
        <translation>passage %1, sec</translation>
    </message>
</context>
<context>
    <name>ErrorText</name>
    <message>
        <source>the book</source>
        <translation>le livre</translation>
    </message>
    <message>
        <source>%1 is not there: look for it in another folder, or start a new station.</source>
        <translation>%1 n’est pas là&#xa0;: le chercher dans un autre dossier ou commencer une nouvelle station.</translation>
    </message>
    <message>
        <source>%1 is there already and was left as it is: choose another name.</source>
        <translation>%1 existe déjà et n’a pas été touché&#xa0;: choisir un autre nom.</translation>
    </message>
    <message>
        <source>%1 is not a book of this program and was left untouched: choose another file.</source>
        <translation>%1 n’est pas un livre de ce programme et n’a pas été touché&#xa0;: choisir un autre fichier.</translation>
    </message>
    <message>
        <source>%1 is damaged and was left untouched: keep it, and restore the newest backup into a new file. (%2)</source>
        <translation>%1 est endommagé et n’a pas été touché&#xa0;: le garder, et restaurer la copie la plus récente dans un nouveau fichier. (%2)</translation>
    </message>
    <message>
        <source>%1 was written by a later version: it can be read here but not written. Install the later version to write in it.</source>
        <translation>%1 a été écrit par une version plus récente&#xa0;: il peut être lu ici, non complété. Installer la version récente pour y écrire.</translation>
    </message>
    <message>
        <source>%1 can&apos;t be written: make the file and its folder writable, or copy the book to a folder of your own.</source>
        <translation>%1 ne peut être écrit&#xa0;: permettre l’écriture du fichier et de son dossier, ou copier le livre dans un dossier à vous.</translation>
    </message>
    <message>
        <source>%1 is being written by another program: nothing was saved yet. Try again in a moment.</source>
        <translation>Un autre programme écrit dans %1&#xa0;: rien n’est encore enregistré. Réessayer dans un instant.</translation>
    </message>
    <message>
        <source>The disk that holds %1 is full: nothing was saved. Free some space and try again.</source>
        <translation>Le disque de %1 est plein&#xa0;: rien n’a été enregistré. Libérer de la place et réessayer.</translation>
    </message>
    <message>
        <source>%1 can&apos;t be opened: check that you may read the file and its folder. (%2)</source>
        <translation>%1 ne peut être ouvert&#xa0;: vérifier le droit de lire le fichier et son dossier. (%2)</translation>
    </message>
    <message>
        <source>The disk that holds %1 failed to read or write: nothing was saved. Check the drive or the network, then try again. (%2)</source>
        <translation>Le disque de %1 n’a pu lire ou écrire&#xa0;: rien n’a été enregistré. Vérifier le disque ou le réseau, puis réessayer. (%2)</translation>
    </message>
    <message>
        <source>There is a reading at this hour already: open it in the register to correct it, or choose another hour.</source>
        <translation>Il y a déjà un relevé à cette heure&#xa0;: l’ouvrir dans le registre pour le corriger, ou choisir une autre heure.</translation>
    </message>
    <message>
        <source>This reading was changed meanwhile: look at it again, then make your change.</source>
        <translation>Ce relevé a été changé entre-temps&#xa0;: le regarder à nouveau, puis changer.</translation>
    </message>
    <message>
        <source>There is no reading at this time: check date and hour.</source>
        <translation>Il n’y a pas de relevé à ce moment&#xa0;: vérifier la date et l’heure.</translation>
    </message>
    <message>
        <source>There is too little memory free to work with %1: nothing was saved. Close other programs and try again.</source>
        <translation>Trop peu de mémoire libre pour travailler avec %1&#xa0;: rien n’a été enregistré. Fermer d’autres programmes et réessayer.</translation>
    </message>
    <message>
        <source>%1 could not be written because of an error in the program: nothing was saved. Please report it. (%2)</source>
        <translation>%1 n’a pu être écrit à cause d’une erreur du programme&#xa0;: rien n’a été enregistré. Merci de la signaler. (%2)</translation>
    </message>
    <message>
        <source>Revision %1</source>
        <translation>Version %1</translation>
    </message>
    <message>
        <source>The book</source>
        <translation>Le livre</translation>
    </message>
    <message>
        <source>%1 is empty: choose another file.</source>
        <translation>%1 est vide&#xa0;: choisir un autre fichier.</translation>
    </message>
    <message>
        <source>%1 can&apos;t be read as text: save it as CSV in UTF-8 and try again.</source>
        <translation>%1 ne peut être lu comme texte&#xa0;: l’enregistrer en CSV UTF-8 et réessayer.</translation>
    </message>
    <message>
        <source>%1 has a line of names and nothing below: choose another file.</source>
        <translation>%1 a une ligne de noms et rien dessous&#xa0;: choisir un autre fichier.</translation>
    </message>
    <message>
        <source>%1 is no text: save the register as CSV and try again.</source>
        <translation>%1 n’est pas du texte&#xa0;: enregistrer le registre en CSV et réessayer.</translation>
    </message>
    <message>
        <source>This is the Station Exchange Format in version %1; versions 1.0.0 and 0.2.0 can be read. Ask for the file in one of these.</source>
        <translation>C’est le Station Exchange Format en version %1&#xa0;; les versions 1.0.0 et 0.2.0 peuvent être lues. Demander le fichier dans l’une d’elles.</translation>
    </message>
    <message>
        <source>The file begins as the Station Exchange Format does, but its line %1 is not as that format has it: look at the first thirteen lines.</source>
        <translation>Le fichier commence comme le Station Exchange Format, mais sa ligne %1 n’est pas comme ce format la veut&#xa0;: regarder les treize premières lignes.</translation>
    </message>
    <message>
        <source>The values are in “%1”; bulbs can be read in C, F or K and pressures in hPa, Pa or kPa. Have them worked out in one of these.</source>
        <translation>Les valeurs sont en « %1&#xa0;»&#xa0;; les thermomètres peuvent être lus en C, F ou K et les pressions en hPa, Pa ou kPa. Les faire convertir dans l’une de ces unités.</translation>
    </message>
    <message>
        <source>The days are counted by another calendar (%1), and only the Gregorian one can be read: have the dates worked out in it first.</source>
        <translation>Les jours suivent un autre calendrier (%1), et seul le grégorien peut être lu&#xa0;: faire d’abord convertir les dates.</translation>
    </message>
    <message>
        <source>These files are of different stations (%1): bring them in one by one, each into its own book.</source>
        <translation>Ces fichiers viennent de stations différentes (%1)&#xa0;: les reprendre un à un, chacun dans son livre.</translation>
    </message>
    <message>
        <source>None of these files holds a dry bulb (ta), a wet bulb (tb) or a pressure (p), read at a moment: give at least one that does. (%1)</source>
        <translation>Aucun de ces fichiers ne contient de thermomètre sec (ta), mouillé (tb) ou de pression (p) lus à un moment&#xa0;: en donner au moins un. (%1)</translation>
    </message>
    <message>
        <source>No column tells the time: name one with --map COLUMN=time, or two with =date and =hour. (%1)</source>
        <translation>Aucune colonne ne dit l’heure&#xa0;: en nommer une par --map COLONNE=time, ou deux par =date et =hour. (%1)</translation>
    </message>
    <message>
        <source>The first line of %1 must name the columns: time (or date and clock), and rh or other_dry and other_wet.</source>
        <translation>La première ligne de %1 doit nommer les colonnes&#xa0;: time (ou date et clock), et rh ou other_dry et other_wet.</translation>
    </message>
    <message>
        <source>No column holds the dry or wet bulb: name them with --map COLUMN=dry and --map COLUMN=wet. (%1)</source>
        <translation>Aucune colonne ne contient le thermomètre sec ou mouillé&#xa0;: les nommer par --map COLONNE=dry et --map COLONNE=wet. (%1)</translation>
    </message>
    <message>
        <source>There is no column %1 in the file: check the name in the --map option.</source>
        <translation>Il n’y a pas de colonne %1 dans le fichier&#xa0;: vérifier le nom dans l’option --map.</translation>
    </message>
    <message>
        <source>Two columns would be the same field (%1): say with --map which one it is.</source>
        <translation>Deux colonnes seraient le même champ (%1)&#xa0;: dire par --map laquelle c’est.</translation>
    </message>
    <message>
        <source>Stopped: nothing was imported.</source>
        <translation>Arrêté&#xa0;: rien n’a été repris.</translation>
    </message>
    <message>
        <source>More than %1 lines have dates that can be read as day and month or as month and day: say with --date-order which it is, or import from a file.</source>
        <translation>Plus de %1 lignes ont des dates lisibles comme jour et mois ou comme mois et jour&#xa0;: dire par --date-order ce qui vaut, ou reprendre depuis un fichier.</translation>
    </message>
    <message>
        <source>The file has more lines than can be taken at once: split it and import the parts. (%1)</source>
        <translation>Le fichier a plus de lignes qu’on n’en peut prendre d’un coup&#xa0;: le diviser et reprendre les parties. (%1)</translation>
    </message>
    <message>
        <source>“%1” has a year of two digits: write all four</source>
        <translation>« %1&#xa0;» a une année à deux chiffres&#xa0;: écrire les quatre</translation>
    </message>
    <message>
        <source>“%1” can be read as day and month or as month and day: write dates as 2025-03-01</source>
        <translation>« %1&#xa0;» se lit comme jour et mois ou comme mois et jour&#xa0;: écrire les dates comme 2025-03-01</translation>
    </message>
    <message>
        <source>“%1” is not a day of the calendar: check day and month</source>
        <translation>« %1&#xa0;» n’est pas un jour du calendrier&#xa0;: vérifier jour et mois</translation>
    </message>
    <message>
        <source>“%1” is not an hour of the day: check hour and minute</source>
        <translation>« %1&#xa0;» n’est pas une heure du jour&#xa0;: vérifier heure et minute</translation>
    </message>
    <message>
        <source>the time and the hour beside it lie more than half a day apart: check “%1”</source>
        <translation>l’heure et l’horloge à côté diffèrent de plus d’une demi-journée&#xa0;: vérifier « %1&#xa0;»</translation>
    </message>
    <message>
        <source>“%1” in the column %2 has more than one mark: write one decimal mark and no groups</source>
        <translation>« %1&#xa0;» dans la colonne %2 a plus d’une marque&#xa0;: écrire une seule marque décimale et pas de groupes</translation>
    </message>
    <message>
        <source>“%1” in the column %2 has too many digits: check it</source>
        <translation>« %1&#xa0;» dans la colonne %2 a trop de chiffres&#xa0;: vérifier</translation>
    </message>
    <message>
        <source>“%1” in the column %2 is not a Beaufort force: write 0 to 12</source>
        <translation>« %1&#xa0;» dans la colonne %2 n’est pas une force Beaufort&#xa0;: écrire 0 à 12</translation>
    </message>
    <message>
        <source>“%1” says that the value stands for a stretch of time, not for a moment: take what was read at a moment</source>
        <translation>« %1&#xa0;» dit que la valeur vaut pour une durée, non pour un moment&#xa0;: prendre ce qui a été lu à un moment</translation>
    </message>
    <message>
        <source>the line has too many cells, as a decimal comma makes it in a file with commas between cells: use semicolons or decimal points</source>
        <translation>la ligne a trop de cellules, comme en fait une virgule décimale dans un fichier séparé par des virgules&#xa0;: utiliser des points-virgules ou des points décimaux</translation>
    </message>
    <message>
        <source>the line has more cells than the first line: look for a stray separator</source>
        <translation>la ligne a plus de cellules que la première&#xa0;: chercher un séparateur égaré</translation>
    </message>
    <message>
        <source>the line has fewer cells than the first line: complete it</source>
        <translation>la ligne a moins de cellules que la première&#xa0;: la compléter</translation>
    </message>
    <message>
        <source>a quotation mark is opened and never closed: close it or take it away</source>
        <translation>un guillemet est ouvert et jamais fermé&#xa0;: le fermer ou l’ôter</translation>
    </message>
    <message>
        <source>text follows a closing quotation mark: look at the quotation marks</source>
        <translation>du texte suit un guillemet fermant&#xa0;: regarder les guillemets</translation>
    </message>
    <message>
        <source>a quotation mark stands within the text: put the whole cell in quotation marks and double it</source>
        <translation>un guillemet se trouve dans le texte&#xa0;: mettre toute la cellule entre guillemets et le doubler</translation>
    </message>
    <message>
        <source>the line is longer than any reading can be: look for missing line ends</source>
        <translation>la ligne est plus longue qu’un relevé ne peut l’être&#xa0;: chercher des fins de ligne manquantes</translation>
    </message>
    <message>
        <source>the line holds a zero byte and is no text: save the file again as CSV</source>
        <translation>la ligne contient un octet nul et n’est pas du texte&#xa0;: enregistrer à nouveau le fichier en CSV</translation>
    </message>
    <message>
        <source>the line is broken UTF-16: save the file again as CSV in UTF-8</source>
        <translation>la ligne est de l’UTF-16 abîmé&#xa0;: enregistrer à nouveau le fichier en CSV UTF-8</translation>
    </message>
    <message>
        <source>another line of the file holds the same moment: keep one of them</source>
        <translation>une autre ligne du fichier a le même moment&#xa0;: garder l’une des deux</translation>
    </message>
    <message>
        <source>no time is given: add it</source>
        <translation>aucune heure n’est donnée&#xa0;: l’ajouter</translation>
    </message>
    <message>
        <source>“%1” is not a time that can be read: write it as 2025-03-01T09:00</source>
        <translation>« %1&#xa0;» n’est pas une heure lisible&#xa0;: l’écrire comme 2025-03-01T09:00</translation>
    </message>
    <message>
        <source>“%1” came twice that night, when the clocks went back: add the offset from UTC</source>
        <translation>« %1&#xa0;» est venu deux fois cette nuit-là, quand les horloges ont été retardées&#xa0;: ajouter l’écart à l’UTC</translation>
    </message>
    <message>
        <source>“%1” never was on the clock, it was put forward that night: check the hour</source>
        <translation>« %1&#xa0;» n’a jamais été à l’horloge, avancée cette nuit-là&#xa0;: vérifier l’heure</translation>
    </message>
    <message>
        <source>“%1” in the column %2 is not a number that can be read: check it</source>
        <translation>« %1&#xa0;» dans la colonne %2 n’est pas un nombre lisible&#xa0;: vérifier</translation>
    </message>
    <message>
        <source>“%1” in the column %2 is not a word known there: check it</source>
        <translation>« %1&#xa0;» dans la colonne %2 n’y est pas un mot connu&#xa0;: vérifier</translation>
    </message>
    <message>
        <source>nothing was read on this line: write a bulb, or the origin missing and why</source>
        <translation>rien n’a été lu sur cette ligne&#xa0;: écrire un thermomètre, ou l’origine missing et pourquoi</translation>
    </message>
    <message>
        <source>the line has more or fewer cells than the first line: look for a stray separator</source>
        <translation>la ligne a plus ou moins de cellules que la première&#xa0;: chercher un séparateur égaré</translation>
    </message>
    <message>
        <source>another line of the file holds the same hour: keep one of them</source>
        <translation>une autre ligne du fichier a la même heure&#xa0;: garder l’une des deux</translation>
    </message>
    <message>
        <source>the book holds a reading at this hour already: keep it, or import with --on-conflict revise</source>
        <translation>le livre a déjà un relevé à cette heure&#xa0;: le garder, ou reprendre avec --on-conflict revise</translation>
    </message>
    <message>
        <source>the line can&apos;t be read as CSV: look at its quotation marks</source>
        <translation>la ligne ne peut être lue comme CSV&#xa0;: regarder ses guillemets</translation>
    </message>
    <message>
        <source>left aside: it holds “%1”, for which the register has no place.</source>
        <translation>laissé de côté&#xa0;: il contient « %1&#xa0;», pour quoi le registre n’a pas de place.</translation>
    </message>
    <message>
        <source>left aside: its values are “%1” over a time, not read at a moment.</source>
        <translation>laissé de côté&#xa0;: ses valeurs sont « %1&#xa0;» sur une durée, non lues à un moment.</translation>
    </message>
    <message>
        <source>Type the %1 as read.</source>
        <translation>Taper %1 comme lu.</translation>
    </message>
    <message>
        <source>“%2” is not a number: type the %1 as read, like 7.3.</source>
        <translation>« %2&#xa0;» n’est pas un nombre&#xa0;: taper %1 comme lu, par exemple 7,3.</translation>
    </message>
    <message>
        <source>“%2” has more than one mark: type the %1 with one decimal mark, like 7.3.</source>
        <translation>« %2&#xa0;» a plus d’une marque&#xa0;: taper %1 avec une seule marque décimale, par exemple 7,3.</translation>
    </message>
    <message>
        <source>“%2” has too many digits: type the %1 as read, like 7.3.</source>
        <translation>« %2&#xa0;» a trop de chiffres&#xa0;: taper %1 comme lu, par exemple 7,3.</translation>
    </message>
    <message>
        <source>A time is needed: write it as 2025-03-01T09:00.</source>
        <translation>Il faut une heure&#xa0;: l’écrire comme 2025-03-01T09:00.</translation>
    </message>
    <message>
        <source>“%1” is not a time: write it as 2025-03-01T09:00.</source>
        <translation>« %1&#xa0;» n’est pas une heure&#xa0;: l’écrire comme 2025-03-01T09:00.</translation>
    </message>
    <message>
        <source>“%1” is not a day of the calendar: check day and month.</source>
        <translation>« %1&#xa0;» n’est pas un jour du calendrier&#xa0;: vérifier jour et mois.</translation>
    </message>
    <message>
        <source>“%1” is not an hour of the day: check hour and minute.</source>
        <translation>« %1&#xa0;» n’est pas une heure du jour&#xa0;: vérifier heure et minute.</translation>
    </message>
    <message>
        <source>A temperature outside −60…60 °C can&apos;t be worked with: read again.</source>
        <translation>On ne peut calculer avec une température hors de −60…60&#xa0;°C&#xa0;: relire.</translation>
    </message>
    <message>
        <source>A pressure outside 300…1100 hPa can&apos;t be worked with: check it.</source>
        <translation>On ne peut calculer avec une pression hors de 300…1100&#xa0;hPa&#xa0;: la vérifier.</translation>
    </message>
    <message>
        <source>This coefficient can&apos;t be: check it, such numbers lie near 0.0007 per kelvin.</source>
        <translation>Ce coefficient est impossible&#xa0;: le vérifier, de tels nombres sont voisins de 0,0007 par kelvin.</translation>
    </message>
    <message>
        <source>Say whether the wick is water or ice.</source>
        <translation>Dire si la mousseline est en eau ou en glace.</translation>
    </message>
    <message>
        <source>The wet bulb stands above the dry bulb: read both again.</source>
        <translation>Le mouillé est au-dessus du sec&#xa0;: relire les deux.</translation>
    </message>
    <message>
        <source>The ice bulb stands too far above the dry bulb: read both again.</source>
        <translation>Le thermomètre givré est trop au-dessus du sec&#xa0;: relire les deux.</translation>
    </message>
    <message>
        <source>Ice can&apos;t be warmer than 0 °C: say water, or read again.</source>
        <translation>La glace ne peut être plus chaude que 0&#xa0;°C&#xa0;: dire eau, ou relire.</translation>
    </message>
    <message>
        <source>The bulbs stand too far apart: no air is that dry. Read both again.</source>
        <translation>Les thermomètres sont trop écartés&#xa0;: aucun air n’est si sec. Relire les deux.</translation>
    </message>
    <message>
        <source>The dew point lies below −60 °C and is not given.</source>
        <translation>Le point de rosée est au-dessous de −60&#xa0;°C et n’est pas donné.</translation>
    </message>
    <message>
        <source>The dew point lies above 60 °C and is not given.</source>
        <translation>Le point de rosée est au-dessus de 60&#xa0;°C et n’est pas donné.</translation>
    </message>
    <message>
        <source>No wet bulb belongs to this humidity: check the humidity and the dry bulb.</source>
        <translation>Aucun thermomètre mouillé ne correspond à cette humidité&#xa0;: vérifier l’humidité et le sec.</translation>
    </message>
</context>
<context>
    <name>ExportText</name>
    <message>
        <source>%1 could not be written: %2. Choose another folder or free some space, then try again.</source>
        <extracomment>%1 a path, %2 the system&apos;s own reason</extracomment>
        <translation>%1 n’a pu être écrit&#xa0;: %2. Choisir un autre dossier ou libérer de la place, puis réessayer.</translation>
    </message>
    <message>
        <source>%1 is a book or another database, and nothing is written over one. Choose another name.</source>
        <extracomment>%1 a path</extracomment>
        <translation>%1 est un livre ou une autre base de données, et on n’écrit par-dessus aucun. Choisir un autre nom.</translation>
    </message>
    <message>
        <source>Stopped; nothing was written.</source>
        <translation>Arrêté&#xa0;; rien n’a été écrit.</translation>
    </message>
</context>
<context>
    <name>FileText</name>
    <message>
        <source>%1 could not be written: %2. Choose another folder or free some space, then try again.</source>
        <extracomment>%1 a path, %2 the system&apos;s own reason</extracomment>
        <translation>%1 n’a pu être écrit&#xa0;: %2. Choisir un autre dossier ou libérer de la place, puis réessayer.</translation>
    </message>
    <message>
        <source>The folder %1 could not be made. Choose another place and try again.</source>
        <translation>Le dossier %1 n’a pu être créé. Choisir un autre endroit et réessayer.</translation>
    </message>
    <message>
        <source>%1 could not be drawn because of an error in the program. The files before it were written. Please report it.</source>
        <translation>%1 n’a pu être dessiné à cause d’une erreur du programme. Les fichiers précédents ont été écrits. Merci de la signaler.</translation>
    </message>
</context>
<context>
    <name>FindingText</name>
    <message>
        <source>wet bulb</source>
        <translation>thermomètre mouillé</translation>
    </message>
    <message>
        <source>dry bulb</source>
        <translation>thermomètre sec</translation>
    </message>
    <message>
        <source>Read again.</source>
        <translation>Relire.</translation>
    </message>
    <message>
        <source>note</source>
        <translation>remarque</translation>
    </message>
    <message>
        <source>to confirm</source>
        <translation>à confirmer</translation>
    </message>
    <message>
        <source>doubtful</source>
        <translation>douteux</translation>
    </message>
    <message>
        <source>erroneous</source>
        <translation>erroné</translation>
    </message>
    <message>
        <source>impossible</source>
        <translation>impossible</translation>
    </message>
    <message>
        <source>One bulb only</source>
        <translation>Un seul thermomètre</translation>
    </message>
    <message>
        <source>The wet bulb is missing, so there is no humidity.</source>
        <translation>Le thermomètre mouillé manque, donc pas d’humidité.</translation>
    </message>
    <message>
        <source>The dry bulb is missing, so there is no humidity.</source>
        <translation>Le thermomètre sec manque, donc pas d’humidité.</translation>
    </message>
    <message>
        <source>Read the other bulb if you still can; the one reading is kept.</source>
        <translation>Lire l’autre thermomètre s’il est encore temps&#xa0;; le relevé unique est gardé.</translation>
    </message>
    <message>
        <source>Wet bulb a touch above dry bulb</source>
        <translation>Mouillé un rien au-dessus du sec</translation>
    </message>
    <message>
        <source>The wet bulb stands %1 above the dry bulb. That is within reading error and taken as saturated air.</source>
        <translation>Le mouillé est %1 au-dessus du sec. C’est dans l’erreur de lecture et compte comme air saturé.</translation>
    </message>
    <message>
        <source>Nothing to do in fog or drizzle. Otherwise look at the wick and read once more.</source>
        <translation>Rien à faire par brouillard ou bruine. Sinon regarder la mousseline et relire une fois.</translation>
    </message>
    <message>
        <source>Wet bulb above dry bulb</source>
        <translation>Mouillé au-dessus du sec</translation>
    </message>
    <message>
        <source>The wet bulb stands %1 above the dry bulb, corrections included. A wet wick can only cool, so no humidity is worked out.</source>
        <translation>Le mouillé est %1 au-dessus du sec, corrections comprises. Une mousseline humide ne peut que refroidir, donc aucune humidité n’est calculée.</translation>
    </message>
    <message>
        <source>Read both again. Were the two numbers swapped, or one read ten or five off?</source>
        <translation>Relire les deux. Les nombres ont-ils été intervertis, ou l’un lu dix ou cinq à côté&#xa0;?</translation>
    </message>
    <message>
        <source>Further apart than air allows</source>
        <translation>Plus écartés que l’air ne le permet</translation>
    </message>
    <message>
        <source>The bulbs stand %1 apart. At this dry bulb even perfectly dry air brings them no further apart than %2.</source>
        <translation>Les thermomètres sont écartés de %1. À ce thermomètre sec, même un air tout à fait sec ne les écarte pas de plus de %2.</translation>
    </message>
    <message>
        <source>The bulbs stand %1 apart. Even perfectly dry air does not bring them that far.</source>
        <translation>Les thermomètres sont écartés de %1. Même un air tout à fait sec ne les écarte pas autant.</translation>
    </message>
    <message>
        <source>Read both again. One of them may have been read ten or five off.</source>
        <translation>Relire les deux. L’un a pu être lu dix ou cinq à côté.</translation>
    </message>
    <message>
        <source>Very dry air</source>
        <translation>Air très sec</translation>
    </message>
    <message>
        <source>The humidity comes out at %1. Under %2 it is asked about.</source>
        <translation>L’humidité est de %1. Au-dessous de %2, on demande.</translation>
    </message>
    <message>
        <source>Read both bulbs again. If it is so, keep it; where the air is often that dry, this limit can be lowered for the station.</source>
        <translation>Relire les deux. Si c’est bien cela, garder&#xa0;; là où l’air est souvent si sec, ce seuil peut être abaissé pour la station.</translation>
    </message>
    <message>
        <source>Ice bulb above dry bulb</source>
        <translation>Thermomètre givré au-dessus du sec</translation>
    </message>
    <message>
        <source>The ice bulb stands %1 above the dry bulb, as it may in freezing fog. Taken as saturated air.</source>
        <translation>Le thermomètre givré est %1 au-dessus du sec, comme il se peut dans un brouillard givrant. Compté comme air saturé.</translation>
    </message>
    <message>
        <source>Nothing to do in fog. Otherwise read both again.</source>
        <translation>Rien à faire par brouillard. Sinon relire les deux.</translation>
    </message>
    <message>
        <source>Ice bulb too far above dry bulb</source>
        <translation>Thermomètre givré trop au-dessus du sec</translation>
    </message>
    <message>
        <source>The ice bulb stands %1 above the dry bulb. That would be more than 100 %, so no humidity is worked out.</source>
        <translation>Le thermomètre givré est %1 au-dessus du sec. Ce serait plus de 100&#xa0;%, donc aucune humidité n’est calculée.</translation>
    </message>
    <message>
        <source>Read both again. If the wet bulb stays at 0.0, the water is still freezing: wait until it falls.</source>
        <translation>Relire les deux. Si le mouillé reste à 0,0, l’eau gèle encore&#xa0;: attendre qu’il baisse.</translation>
    </message>
    <message>
        <source>Ice above zero</source>
        <translation>Glace au-dessus de zéro</translation>
    </message>
    <message>
        <source>Ice was given, but the wet bulb stands at %1. Ice can&apos;t be warmer than 0 °C.</source>
        <translation>Glace a été dit, mais le mouillé est à %1. La glace ne peut être plus chaude que 0&#xa0;°C.</translation>
    </message>
    <message>
        <source>Look at the wick: if it is wet, say water; if it is ice, read again.</source>
        <translation>Regarder la mousseline&#xa0;: si elle est humide, dire eau&#xa0;; si elle est en glace, relire.</translation>
    </message>
    <message>
        <source>Pressure out of range</source>
        <translation>Pression hors limites</translation>
    </message>
    <message>
        <source>A pressure of %1 can&apos;t be worked with: the range is 300…1100 hPa.</source>
        <translation>On ne peut calculer avec une pression de %1&#xa0;: la plage est 300…1100&#xa0;hPa.</translation>
    </message>
    <message>
        <source>Check the pressure, or leave it empty: it is then worked out from the elevation.</source>
        <translation>Vérifier la pression, ou la laisser vide&#xa0;: elle est alors calculée d’après l’altitude.</translation>
    </message>
    <message>
        <source>Temperature out of range</source>
        <translation>Température hors limites</translation>
    </message>
    <message>
        <source>%1 can&apos;t be worked with: the range is −60…60 °C.</source>
        <translation>On ne peut calculer avec %1&#xa0;: la plage est −60…60&#xa0;°C.</translation>
    </message>
    <message>
        <source>Read again. Was the decimal mark lost?</source>
        <translation>Relire. La virgule s’est-elle perdue&#xa0;?</translation>
    </message>
    <message>
        <source>No coefficient</source>
        <translation>Pas de coefficient</translation>
    </message>
    <message>
        <source>The station is set to work with a psychrometer coefficient of its own, but none is on record, so there is no humidity.</source>
        <translation>La station doit calculer avec un coefficient psychrométrique propre, mais aucun n’est inscrit, donc pas d’humidité.</translation>
    </message>
    <message>
        <source>Enter that coefficient, or say how the air reaches the bulbs: in a screen, whirled, by a fan.</source>
        <translation>Inscrire ce coefficient, ou dire comment l’air atteint les thermomètres&#xa0;: dans un abri, à la fronde, ventilé.</translation>
    </message>
    <message>
        <source>Dew point not given</source>
        <translation>Point de rosée non donné</translation>
    </message>
    <message>
        <source>The dew point lies below −60 °C, where it is not worked out.</source>
        <translation>Le point de rosée est au-dessous de −60&#xa0;°C, où il n’est pas calculé.</translation>
    </message>
    <message>
        <source>Read the wet bulb again. The humidity stands.</source>
        <translation>Relire le thermomètre mouillé. L’humidité reste valable.</translation>
    </message>
    <message>
        <source>Below the tested range</source>
        <translation>Au-dessous de la plage éprouvée</translation>
    </message>
    <message>
        <source>For a wick of water colder than −20 °C there are hardly any measurements to go by; the humidity may be up to 2 % off.</source>
        <translation>Pour une mousseline en eau au-dessous de −20&#xa0;°C il n’y a guère de mesures&#xa0;; l’humidité peut être fausse de 2&#xa0;%.</translation>
    </message>
    <message>
        <source>Nothing to do. An ice bulb is the surer reading in such cold.</source>
        <translation>Rien à faire. Par un tel froid, un thermomètre givré est la lecture la plus sûre.</translation>
    </message>
    <message>
        <source>Pressure assumed</source>
        <translation>Pression supposée</translation>
    </message>
    <message>
        <source>No pressure and no elevation was given: 1013.25 hPa was used.</source>
        <translation>Ni pression ni altitude&#xa0;: 1013,25&#xa0;hPa a été pris.</translation>
    </message>
    <message>
        <source>Give the elevation with --elevation or the pressure with --pressure.</source>
        <translation>Donner l’altitude par --elevation ou la pression par --pressure.</translation>
    </message>
    <message>
        <source>Below the scale</source>
        <translation>Sous l’échelle</translation>
    </message>
    <message>
        <source>The column of the %1 has gone into the bulb: there is no number.</source>
        <translation>La colonne du %1 est entrée dans le réservoir&#xa0;: il n’y a pas de nombre.</translation>
    </message>
    <message>
        <source>Nothing to do: it is kept as below scale.</source>
        <translation>Rien à faire&#xa0;: c’est gardé comme «&#xa0;sous l’échelle&#xa0;».</translation>
    </message>
    <message>
        <source>Off the thermometer&apos;s scale</source>
        <translation>Hors de l’échelle du thermomètre</translation>
    </message>
    <message>
        <source>The %1 was read as %2, above the last mark of the scale at %3.</source>
        <translation>Le %1 a été lu %2, au-dessus du dernier trait de l’échelle à %3.</translation>
    </message>
    <message>
        <source>The %1 was read as %2, below the last mark of the scale at %3.</source>
        <translation>Le %1 a été lu %2, au-dessous du dernier trait de l’échelle à %3.</translation>
    </message>
    <message>
        <source>Read again. On an old page, look whether a figure was doubled or the decimal mark lost.</source>
        <translation>Relire. Sur une vieille page, regarder si un chiffre est doublé ou si la virgule manque.</translation>
    </message>
    <message>
        <source>Beyond what this season brings</source>
        <translation>Au-delà de ce qu’apporte cette saison</translation>
    </message>
    <message>
        <source>The %1 was read as %2; in this latitude and season air rarely passes %3.</source>
        <translation>Le %1 a été lu %2&#xa0;; à cette latitude et en cette saison l’air dépasse rarement %3.</translation>
    </message>
    <message>
        <source>Read again, and look at the tens of the scale.</source>
        <translation>Relire, et regarder les dizaines de l’échelle.</translation>
    </message>
    <message>
        <source>Dew point beyond what this season brings</source>
        <translation>Point de rosée au-delà de cette saison</translation>
    </message>
    <message>
        <source>The dew point comes out at %1; in this latitude and season it rarely passes %2.</source>
        <translation>Le point de rosée est de %1&#xa0;; à cette latitude et en cette saison il dépasse rarement %2.</translation>
    </message>
    <message>
        <source>Read both bulbs again.</source>
        <translation>Relire les deux thermomètres.</translation>
    </message>
    <message>
        <source>Unlikely pressure</source>
        <translation>Pression invraisemblable</translation>
    </message>
    <message>
        <source>The pressure was read as %1; at this elevation about %2 is usual.</source>
        <translation>La pression a été lue %1&#xa0;; à cette altitude, environ %2 est habituel.</translation>
    </message>
    <message>
        <source>The pressure was read as %1, which no station has.</source>
        <translation>La pression a été lue %1, qu’aucune station n’a.</translation>
    </message>
    <message>
        <source>Give the pressure at the station, not the one reduced to sea level, or leave it empty.</source>
        <translation>Donner la pression à la station, non celle réduite au niveau de la mer, ou la laisser vide.</translation>
    </message>
    <message>
        <source>Unusual for this month and hour</source>
        <translation>Inhabituel pour ce mois et cette heure</translation>
    </message>
    <message>
        <source>The dew point of %1 lies far from what this month and hour brought here in %4 years. Between %2 and %3 nothing would be asked.</source>
        <translation>Le point de rosée de %1 est loin de ce que ce mois et cette heure ont apporté ici en %4 ans. Entre %2 et %3, on ne demanderait rien.</translation>
    </message>
    <message>
        <source>The dry bulb of %1 lies far from what this month and hour brought here in %4 years. Between %2 and %3 nothing would be asked.</source>
        <translation>La température de %1 est loin de ce que ce mois et cette heure ont apporté ici en %4 ans. Entre %2 et %3, on ne demanderait rien.</translation>
    </message>
    <message>
        <source>Read again. If it is so, keep it: records happen.</source>
        <translation>Relire. Si c’est bien cela, garder&#xa0;: les records existent.</translation>
    </message>
    <message>
        <source>Fog, but dry air</source>
        <translation>Brouillard, mais air sec</translation>
    </message>
    <message>
        <source>Fog was noted, but the humidity comes out at %1; in fog it is hardly ever under %2.</source>
        <translation>Du brouillard a été noté, mais l’humidité est de %1&#xa0;; par brouillard elle n’est presque jamais sous %2.</translation>
    </message>
    <message>
        <source>Look whether the wick is clean and wet, and whether it was fog or haze. Then read again.</source>
        <translation>Regarder si la mousseline est propre et humide, et si c’était brouillard ou brume sèche. Puis relire.</translation>
    </message>
    <message>
        <source>Rain through dry air</source>
        <translation>Pluie à travers un air sec</translation>
    </message>
    <message>
        <source>Rain was noted at a humidity of %1. That happens, but seldom.</source>
        <translation>De la pluie a été notée à une humidité de %1. Cela arrive, mais rarement.</translation>
    </message>
    <message>
        <source>Nothing to do if the wick was clean and wet.</source>
        <translation>Rien à faire si la mousseline était propre et humide.</translation>
    </message>
    <message>
        <source>Saturated, but no fog or rain noted</source>
        <translation>Saturé, sans brouillard ni pluie notés</translation>
    </message>
    <message>
        <source>The humidity comes out at %1 without fog, rain or dew in the weather column.</source>
        <translation>L’humidité est de %1 sans brouillard, pluie ni rosée dans la colonne du temps.</translation>
    </message>
    <message>
        <source>Look at the wick: is it wet? If not, wet it, wait and read again. If there was dew or fog, note it.</source>
        <translation>Regarder la mousseline&#xa0;: est-elle humide&#xa0;? Sinon humecter, attendre et relire. S’il y avait rosée ou brouillard, le noter.</translation>
    </message>
    <message>
        <source>Look at the three numbers again: one of them was misread.</source>
        <translation>Regarder à nouveau les trois nombres&#xa0;: l’un a été mal lu.</translation>
    </message>
    <message>
        <source>Maximum below minimum</source>
        <translation>Maximum au-dessous du minimum</translation>
    </message>
    <message>
        <source>The maximum of %1 stands below the minimum of %2.</source>
        <translation>Le maximum de %1 est au-dessous du minimum de %2.</translation>
    </message>
    <message>
        <source>Outside maximum and minimum</source>
        <translation>Hors du maximum et du minimum</translation>
    </message>
    <message>
        <source>The dry bulb of %1 stands above the maximum of %2.</source>
        <translation>Le sec de %1 est au-dessus du maximum de %2.</translation>
    </message>
    <message>
        <source>The dry bulb of %1 stands below the minimum of %2.</source>
        <translation>Le sec de %1 est au-dessous du minimum de %2.</translation>
    </message>
    <message>
        <source>Much colder than the last reading</source>
        <translation>Bien plus froid qu’au dernier relevé</translation>
    </message>
    <message>
        <source>Much warmer than the last reading</source>
        <translation>Bien plus chaud qu’au dernier relevé</translation>
    </message>
    <message>
        <source>The dry bulb went from %1 to %2 in %3 h.</source>
        <translation>Le sec est passé de %1 à %2 en %3&#xa0;h.</translation>
    </message>
    <message>
        <source>Read again. If the weather changed, keep it and say so in a note.</source>
        <translation>Relire. Si le temps a changé, garder et le dire dans une note.</translation>
    </message>
    <message>
        <source>Much drier than the last reading</source>
        <translation>Bien plus sec qu’au dernier relevé</translation>
    </message>
    <message>
        <source>Much moister than the last reading</source>
        <translation>Bien plus humide qu’au dernier relevé</translation>
    </message>
    <message>
        <source>The dew point went from %1 to %2 in %3 h.</source>
        <translation>Le point de rosée est passé de %1 à %2 en %3&#xa0;h.</translation>
    </message>
    <message>
        <source>Read the wet bulb again. If the air changed, keep it and say so in a note.</source>
        <translation>Relire le thermomètre mouillé. Si l’air a changé, garder et le dire dans une note.</translation>
    </message>
    <message>
        <source>The same pair again</source>
        <translation>De nouveau le même couple</translation>
    </message>
    <message>
        <source>The very same two numbers stand %1 times running.</source>
        <translation>Exactement les deux mêmes nombres se suivent %1 fois.</translation>
    </message>
    <message>
        <source>Read both once more. If the air stands so still, keep it; with fog in the weather column nothing is asked.</source>
        <translation>Relire les deux une fois. Si l’air est si calme, garder&#xa0;; avec du brouillard dans la colonne du temps, rien n’est demandé.</translation>
    </message>
    <message>
        <source>Two readings for one hour</source>
        <translation>Deux relevés pour une heure</translation>
    </message>
    <message>
        <source>This hour stands twice with the same numbers.</source>
        <translation>Cette heure est là deux fois avec les mêmes nombres.</translation>
    </message>
    <message>
        <source>This hour stands twice with different numbers.</source>
        <translation>Cette heure est là deux fois avec des nombres différents.</translation>
    </message>
    <message>
        <source>Choose one and withdraw the other; both stay in the history.</source>
        <translation>En choisir un et retirer l’autre&#xa0;; les deux restent dans l’histoire.</translation>
    </message>
    <message>
        <source>A day like another</source>
        <translation>Un jour comme un autre</translation>
    </message>
    <message>
        <source>All readings of this day are those of %1.</source>
        <translation>Tous les relevés de ce jour sont ceux du %1.</translation>
    </message>
    <message>
        <source>Look at the page: was one day&apos;s line written twice? If both days are right, judge them sound.</source>
        <translation>Regarder la page&#xa0;: la ligne d’un jour a-t-elle été écrite deux fois&#xa0;? Si les deux jours sont justes, les juger valables.</translation>
    </message>
    <message>
        <source>Not yet</source>
        <translation>Pas encore</translation>
    </message>
    <message>
        <source>The time of this reading has not come yet.</source>
        <translation>L’heure de ce relevé n’est pas encore venue.</translation>
    </message>
    <message>
        <source>Check date and hour, and the clock of this computer.</source>
        <translation>Vérifier la date, l’heure et l’horloge de cet ordinateur.</translation>
    </message>
    <message>
        <source>Early</source>
        <translation>Tôt</translation>
    </message>
    <message>
        <source>Read %1 min before the hour. The true time is kept.</source>
        <translation>Lu %1 min avant l’heure. Le moment vrai est gardé.</translation>
    </message>
    <message>
        <source>Nothing to do.</source>
        <translation>Rien à faire.</translation>
    </message>
    <message>
        <source>Late</source>
        <translation>Tard</translation>
    </message>
    <message>
        <source>Read %1 min after the hour. The true time is kept.</source>
        <translation>Lu %1 min après l’heure. Le moment vrai est gardé.</translation>
    </message>
    <message>
        <source>A favoured tenth</source>
        <translation>Un dixième préféré</translation>
    </message>
    <message>
        <source>Of %1 readings of the %2, %3 end in %4; about one in ten is to be expected.</source>
        <translation>Sur %1 lectures du %2, %3 finissent par %4&#xa0;; environ une sur dix est à attendre.</translation>
    </message>
    <message>
        <source>Read the tenths before the whole degrees, with the eye level with the column.</source>
        <translation>Lire les dixièmes avant les degrés entiers, l’œil au niveau de la colonne.</translation>
    </message>
    <message>
        <source>A slip in reading or writing would explain these numbers better than the weather does.</source>
        <translation>Une méprise de lecture ou d’écriture expliquerait ces nombres mieux que le temps.</translation>
    </message>
    <message>
        <source>From the readings round it one would expect a dry bulb near %1 and a dew point near %2.</source>
        <translation>D’après les relevés voisins on attendrait un sec près de %1 et un point de rosée près de %2.</translation>
    </message>
    <message>
        <source>Unlike the readings round it</source>
        <translation>Différent des relevés voisins</translation>
    </message>
    <message>
        <source>Read again. On an old page, compare with what is written there.</source>
        <translation>Relire. Sur une vieille page, comparer avec ce qui y est écrit.</translation>
    </message>
    <message>
        <source>Wet the wick, wait until the wet bulb has fallen and settled, and read again.</source>
        <translation>Humecter la mousseline, attendre que le mouillé ait baissé et se soit stabilisé, et relire.</translation>
    </message>
    <message>
        <source>The wick may be drying</source>
        <translation>La mousseline sèche peut-être</translation>
    </message>
    <message>
        <source>The wet bulb rose by %1 from whirl to whirl. It should only fall or stand.</source>
        <translation>Le mouillé a monté de %1 d’un passage à l’autre. Il ne devrait que baisser ou rester.</translation>
    </message>
    <message>
        <source>The wick may be dry</source>
        <translation>La mousseline est peut-être sèche</translation>
    </message>
    <message>
        <source>The bulbs stand only %1 apart. The air would hold far more moisture than in the last readings (%2 of vapour against %3), and no fog, rain or dew was noted to bring it.</source>
        <translation>Les thermomètres ne sont écartés que de %1. L’air contiendrait bien plus de vapeur qu’aux derniers relevés (%2 contre %3), et ni brouillard, ni pluie, ni rosée n’est noté qui l’apporterait.</translation>
    </message>
    <message>
        <source>The wet bulb stands at %1, and it is not said whether the wick is water or ice. The answer changes the humidity, so none is worked out.</source>
        <translation>Le mouillé est à %1, et il n’est pas dit si la mousseline est en eau ou en glace. L’humidité en dépend, donc aucune n’est calculée.</translation>
    </message>
    <message>
        <source>Water would give %1, ice %2.</source>
        <translation>L’eau donnerait %1, la glace %2.</translation>
    </message>
    <message>
        <source>Water or ice?</source>
        <translation>Eau ou glace&#xa0;?</translation>
    </message>
    <message>
        <source>Touch the wick with a splinter of wood: if it is soft, say water; if it is hard, say ice.</source>
        <translation>Toucher la mousseline avec un éclat de bois&#xa0;: si elle est molle, dire eau&#xa0;; si elle est dure, dire glace.</translation>
    </message>
    <message>
        <source>The wick may be thawing</source>
        <translation>La mousseline dégèle peut-être</translation>
    </message>
    <message>
        <source>The wet bulb stands at %1 while the air is at %2: melting ice holds it there, and the humidity is not yet true.</source>
        <translation>Le mouillé est à %1 et l’air à %2&#xa0;: la glace fondante l’y retient, et l’humidité n’est pas encore vraie.</translation>
    </message>
    <message>
        <source>Melt the ice with tepid water and wait until the wet bulb rises, then read again.</source>
        <translation>Fondre la glace à l’eau tiède, attendre que le mouillé monte, puis relire.</translation>
    </message>
    <message>
        <source>The wick may be freezing</source>
        <translation>La mousseline gèle peut-être</translation>
    </message>
    <message>
        <source>The wet bulb stands at %1 with the air at %2: while the water freezes it holds there, and the humidity comes out too high.</source>
        <translation>Le mouillé est à %1 et l’air à %2&#xa0;: tant que l’eau gèle il y reste, et l’humidité vient trop haute.</translation>
    </message>
    <message>
        <source>Wait until the wet bulb falls and settles, then read again and say ice.</source>
        <translation>Attendre que le mouillé baisse et se stabilise, puis relire et dire glace.</translation>
    </message>
    <message>
        <source>Is the wick ice?</source>
        <translation>La mousseline est-elle en glace&#xa0;?</translation>
    </message>
    <message>
        <source>Water was given at a wet bulb of %1. As ice the humidity would be %2 rather than %3.</source>
        <translation>Eau a été dit à un mouillé de %1. En glace, l’humidité serait %2 au lieu de %3.</translation>
    </message>
    <message>
        <source>Touch the wick with a piece of ice or a splinter of wood: if it is hard, say ice. If it is still wet, keep it.</source>
        <translation>Toucher la mousseline avec un bout de glace ou un éclat de bois&#xa0;: si elle est dure, dire glace. Si elle est encore humide, garder.</translation>
    </message>
</context>
<context>
    <name>HistoryText</name>
    <message>
        <source>wetted</source>
        <translation>humectée</translation>
    </message>
    <message>
        <source>changed</source>
        <translation>changée</translation>
    </message>
    <message>
        <source>dry</source>
        <translation>sec</translation>
    </message>
    <message>
        <source>wet</source>
        <translation>mouillé</translation>
    </message>
    <message>
        <source>wick</source>
        <translation>mousseline</translation>
    </message>
    <message>
        <source>pressure</source>
        <translation>pression</translation>
    </message>
    <message>
        <source>weather</source>
        <translation>temps</translation>
    </message>
    <message>
        <source>wind</source>
        <translation>vent</translation>
    </message>
    <message>
        <source>max</source>
        <translation>max</translation>
    </message>
    <message>
        <source>min</source>
        <translation>min</translation>
    </message>
    <message>
        <source>whirls, wet / dry</source>
        <translation>passages, mouillé / sec</translation>
    </message>
    <message>
        <source>note</source>
        <translation>remarque</translation>
    </message>
    <message>
        <source>observer</source>
        <translation>observateur</translation>
    </message>
    <message>
        <source>wick care</source>
        <translation>soin de la mousseline</translation>
    </message>
    <message>
        <source>read at</source>
        <translation>lu à</translation>
    </message>
    <message>
        <source>hour</source>
        <translation>heure</translation>
    </message>
    <message>
        <source>reason</source>
        <translation>raison</translation>
    </message>
    <message>
        <source>origin</source>
        <translation>origine</translation>
    </message>
    <message>
        <source>judged</source>
        <translation>jugé</translation>
    </message>
    <message>
        <source>paper</source>
        <translation>papier</translation>
    </message>
    <message>
        <source>missing: %1</source>
        <translation>manquant&#xa0;: %1</translation>
    </message>
    <message>
        <source>withdrawn</source>
        <translation>retiré</translation>
    </message>
    <message>
        <source>no longer withdrawn</source>
        <translation>n’est plus retiré</translation>
    </message>
    <message>
        <source>read back against the paper</source>
        <translation>collationné avec le papier</translation>
    </message>
    <message>
        <source>no longer read back</source>
        <translation>n’est plus collationné</translation>
    </message>
    <message>
        <source>empty</source>
        <translation>vide</translation>
    </message>
    <message>
        <source>%1 %2, was %3</source>
        <extracomment>%1 what, %2 new value, %3 old value</extracomment>
        <translation>%1&#xa0;%2, était %3</translation>
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
        <translation>%1&#xa0;: aucune tendance visible (%2).</translation>
    </message>
    <message>
        <source>%1: %2, which is more than chance.</source>
        <translation>%1&#xa0;: %2, ce qui dépasse le hasard.</translation>
    </message>
    <message>
        <source>%1 to %2 %3, read to %4</source>
        <translation>%1 à %2&#xa0;%3, lu à %4</translation>
    </message>
    <message>
        <source>at %1 add %2</source>
        <translation>à %1 ajouter %2</translation>
    </message>
    <message>
        <source>%1 × 10⁻⁴ per degree</source>
        <translation>%1 × 10⁻⁴ par degré</translation>
    </message>
    <message>
        <source> ± %1 %</source>
        <translation> ± %1&#xa0;%</translation>
    </message>
    <message>
        <source>, ice %1</source>
        <translation>, glace %1</translation>
    </message>
    <message>
        <source>a reference to compare with</source>
        <translation>une référence pour comparer</translation>
    </message>
    <message>
        <source>what will follow the station&apos;s</source>
        <translation>ce qui succédera à celui de la station</translation>
    </message>
    <message>
        <source>the register has no reading within five minutes</source>
        <translation>le registre n’a pas de relevé à moins de cinq minutes</translation>
    </message>
    <message>
        <source>the station&apos;s own reading gives no humidity</source>
        <translation>le relevé propre de la station ne donne pas d’humidité</translation>
    </message>
    <message>
        <source>the other instrument&apos;s humidity is missing</source>
        <translation>l’humidité de l’autre instrument manque</translation>
    </message>
    <message>
        <source>Nothing has been read yet.</source>
        <translation>Rien n’a encore été lu.</translation>
    </message>
    <message>
        <source>The two differ by more than %1 °C.</source>
        <translation>Les deux diffèrent de plus de %1&#xa0;°C.</translation>
    </message>
    <message>
        <source>They are a pair: no difference above %1 °C.</source>
        <translation>C’est un couple&#xa0;: pas d’écart supérieur à %1&#xa0;°C.</translation>
    </message>
    <message>
        <source>%1 at the ice point: %2 off ± %3.</source>
        <translation>%1 au point de glace&#xa0;: écart %2, ± %3.</translation>
    </message>
    <message>
        <source>Dry</source>
        <translation>Sec</translation>
    </message>
    <message>
        <source>Wet</source>
        <translation>Mouillé</translation>
    </message>
    <message>
        <source>%1: dry is %2 against wet ± %3.</source>
        <translation>%1&#xa0;: le sec est à %2 du mouillé, ± %3.</translation>
    </message>
    <message>
        <source>In the bath, as read</source>
        <translation>Dans le bain, comme lu</translation>
    </message>
    <message>
        <source>In the bath, both corrected by the ice point</source>
        <translation>Dans le bain, les deux corrigés par le point de glace</translation>
    </message>
    <message>
        <source>A difference does not say which of them errs; the ice point does.</source>
        <translation>Un écart ne dit pas lequel se trompe&#xa0;; le point de glace le dit.</translation>
    </message>
    <message>
        <source>The sensor agrees with every solution within ± 2 %.</source>
        <translation>Le capteur s’accorde avec chaque solution à ± 2&#xa0;%.</translation>
    </message>
    <message>
        <source>%1 of %2 solutions are read more than 2 % off.</source>
        <translation>%1 solutions sur %2 sont lues à plus de 2&#xa0;% près.</translation>
    </message>
    <message>
        <source>%1: published %2 %, read %3 %, %4</source>
        <translation>%1&#xa0;: publié %2&#xa0;%, lu %3&#xa0;%, %4</translation>
    </message>
    <message>
        <source>The published values are of 25 °C; at this temperature they do not hold.</source>
        <translation>Les valeurs publiées sont de 25&#xa0;°C&#xa0;; à cette température elles ne valent pas.</translation>
    </message>
    <message>
        <source>One solution says nothing of the rest of the range.</source>
        <translation>Une solution ne dit rien du reste de la plage.</translation>
    </message>
    <message>
        <source>Fewer than two readings stand beside one of the station&apos;s: nothing can be said yet.</source>
        <translation>Moins de deux relevés se trouvent à côté d’un de la station&#xa0;: on ne peut rien dire encore.</translation>
    </message>
    <message>
        <source>The station reads %1 % RH against the reference (95&#xa0;%), over %2 readings; one difference scatters by %3.</source>
        <translation>La station lit %1&#xa0;% HR contre la référence (95&#xa0;%), sur %2 relevés&#xa0;; un écart isolé se disperse de %3.</translation>
    </message>
    <message>
        <source>%1 to %2 %: %3, n %4</source>
        <translation>%1 à %2&#xa0;%&#xa0;: %3, n %4</translation>
    </message>
    <message>
        <source>, scatter %1</source>
        <translation>, dispersion %1</translation>
    </message>
    <message>
        <source>% RH for each degree of depression</source>
        <translation>% HR par degré d’écart</translation>
    </message>
    <message>
        <source>% RH for each step of wind</source>
        <translation>% HR par degré de vent</translation>
    </message>
    <message>
        <source>%1 readings gave no humidity and take no part.</source>
        <translation>%1 relevés n’ont pas donné d’humidité et ne comptent pas.</translation>
    </message>
    <message>
        <source>%1 pairs with a depression of 3 °C or more, and 30 are needed</source>
        <translation>%1 couples avec un écart de 3&#xa0;°C ou plus&#xa0;; il en faut 30</translation>
    </message>
    <message>
        <source>%1 of %2 pairs have a depression under 3 °C, where the coefficient hardly shows</source>
        <translation>%1 couples sur %2 ont un écart de moins de 3&#xa0;°C, où le coefficient se voit à peine</translation>
    </message>
    <message>
        <source>the depressions lie between %1 and %2 °C, and they must span 3 °C</source>
        <translation>les écarts vont de %1 à %2&#xa0;°C et doivent couvrir 3&#xa0;°C</translation>
    </message>
    <message>
        <source>no psychrometer has such a coefficient: look at units, wick and times</source>
        <translation>aucun psychromètre n’a un tel coefficient&#xa0;: regarder unités, mousseline et heures</translation>
    </message>
    <message>
        <source>Water</source>
        <translation>Eau</translation>
    </message>
    <message>
        <source>Ice</source>
        <translation>Glace</translation>
    </message>
    <message>
        <source>%1: coefficient %2 × 10⁻⁴ per degree, standard error %3, 95 % from %4 to %5, %6 pairs, depressions %7 to %8 °C.</source>
        <translation>%1&#xa0;: coefficient %2 × 10⁻⁴ par degré, erreur type %3, 95&#xa0;% de %4 à %5, %6 couples, écarts de %7 à %8&#xa0;°C.</translation>
    </message>
    <message>
        <source>The evidence is enough to use it, with ± %1 % (standard).</source>
        <translation>Les preuves suffisent pour l’employer, à ± %1&#xa0;% (type).</translation>
    </message>
    <message>
        <source>%1: not enough to use it: %2.</source>
        <translation>%1&#xa0;: pas assez pour l’employer&#xa0;: %2.</translation>
    </message>
    <message>
        <source>What is left over, hPa for each degree of depression</source>
        <translation>Ce qui reste, hPa par degré d’écart</translation>
    </message>
    <message>
        <source>What is left over, hPa for each step of wind</source>
        <translation>Ce qui reste, hPa par degré de vent</translation>
    </message>
    <message>
        <source>%1 common readings: with fewer than 30 nothing is decided. Go on side by side.</source>
        <translation>%1 relevés communs&#xa0;: sous 30, rien n’est décidé. Continuer côte à côte.</translation>
    </message>
    <message>
        <source>The two agree within 0.2 °C and 3 % RH: the records may be joined as they are.</source>
        <translation>Les deux s’accordent à 0,2&#xa0;°C et 3&#xa0;% HR&#xa0;: les séries peuvent être jointes telles quelles.</translation>
    </message>
    <message>
        <source>The two differ: the record breaks here, and averages must not be pooled across it.</source>
        <translation>Les deux diffèrent&#xa0;: la série se rompt ici, et les moyennes ne doivent pas l’enjamber.</translation>
    </message>
    <message>
        <source>The readings do not decide it yet. Go on side by side.</source>
        <translation>Les relevés ne décident pas encore. Continuer côte à côte.</translation>
    </message>
    <message>
        <source>%1, new against old: %2 %3 (95&#xa0;%)</source>
        <translation>%1, nouveau contre ancien&#xa0;: %2&#xa0;%3 (95&#xa0;%)</translation>
    </message>
    <message>
        <source>Dry bulb</source>
        <translation>Thermomètre sec</translation>
    </message>
    <message>
        <source>Wet bulb</source>
        <translation>Thermomètre mouillé</translation>
    </message>
    <message>
        <source>Relative humidity</source>
        <translation>Humidité relative</translation>
    </message>
    <message>
        <source>Dew point</source>
        <translation>Point de rosée</translation>
    </message>
    <message>
        <source>%1 common readings in %2 of the 12 months.</source>
        <translation>%1 relevés communs dans %2 des 12 mois.</translation>
    </message>
    <message>
        <source>A season that was not seen may differ: a whole year is better.</source>
        <translation>Une saison non vue peut différer&#xa0;: une année entière vaut mieux.</translation>
    </message>
</context>
<context>
    <name>InstrumentsPage</name>
    <message>
        <source>wetted</source>
        <translation>humectée</translation>
    </message>
</context>
<context>
    <name>LimitChangeTextContext</name>
    <message>
        <source>The rules with limits are %1.</source>
        <translation>Les règles à seuils sont %1.</translation>
    </message>
    <message>
        <source>That rule has %1.</source>
        <translation>Cette règle a %1.</translation>
    </message>
    <message>
        <source>1 reading</source>
        <translation>1 relevé</translation>
    </message>
    <message numerus="yes">
        <source>%n readings</source>
        <translation>
            <numerusform>%n relevé</numerusform>
            <numerusform>%n relevés</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 à %2</translation>
    </message>
    <message>
        <source>There is no limit %1. %2</source>
        <translation>Il n’y a pas de seuil %1. %2</translation>
    </message>
    <message>
        <source>%1 stays at %2: the humidity itself is worked out with it.</source>
        <translation>%1 reste à %2&#xa0;: l’humidité elle-même en est calculée.</translation>
    </message>
    <message>
        <source>%1 counts %2: give a whole number from %3 instead of %4.</source>
        <translation>%1 compte %2&#xa0;: donner un nombre entier à partir de %3 au lieu de %4.</translation>
    </message>
    <message>
        <source>%1 can&apos;t be %2, above %3 at %4: give %4 or less, or change both.</source>
        <translation>%1 ne peut être %2, au-dessus de %3 à %4&#xa0;: donner %4 ou moins, ou changer les deux.</translation>
    </message>
    <message>
        <source>%1 can&apos;t be %2, below %3 at %4: give %4 or more, or change both.</source>
        <translation>%1 ne peut être %2, au-dessous de %3 à %4&#xa0;: donner %4 ou plus, ou changer les deux.</translation>
    </message>
    <message>
        <source>%1 can&apos;t be %2: it may be %3.</source>
        <translation>%1 ne peut être %2&#xa0;: possible est %3.</translation>
    </message>
    <message>
        <source>that</source>
        <translation>cela</translation>
    </message>
    <message>
        <source>There are no readings yet that this could change.</source>
        <translation>Il n’y a encore aucun relevé que cela pourrait changer.</translation>
    </message>
    <message>
        <source>Of %1 in the book none would be judged otherwise.</source>
        <translation>Des %1 du livre, aucun ne serait jugé autrement.</translation>
    </message>
    <message>
        <source>%1 that are quiet now would be asked about</source>
        <translation>%1 aujourd’hui tranquilles feraient l’objet d’une question</translation>
    </message>
    <message>
        <source>%1 would be asked about no longer</source>
        <translation>%1 n’en feraient plus l’objet</translation>
    </message>
    <message>
        <source>%1 more would be left out of means until judged</source>
        <translation>%1 de plus resteraient hors des moyennes jusqu’au jugement</translation>
    </message>
    <message>
        <source>%1 would count in means again</source>
        <translation>%1 compteraient de nouveau dans les moyennes</translation>
    </message>
    <message>
        <source>Of %1 in the book %2 would be judged otherwise</source>
        <translation>Des %1 du livre, %2 seraient jugés autrement</translation>
    </message>
</context>
<context>
    <name>LimitText</name>
    <message>
        <source>Air too hot or too cold for the season</source>
        <translation>Air trop chaud ou trop froid pour la saison</translation>
    </message>
    <message>
        <source>Marks a bulb beyond what air does at this latitude and in this half of the year. The first pair is doubtful, the outer pair wrong.</source>
        <translation>Marque une température au-delà de ce que fait l’air à cette latitude et en cette moitié de l’année. La première paire est douteuse, la paire extérieure erronée.</translation>
    </message>
    <message>
        <source>Dew point too high or too low for the season</source>
        <translation>Point de rosée trop haut ou trop bas pour la saison</translation>
    </message>
    <message>
        <source>Marks a dew point that air hardly ever has. Used in summer poleward of the latitude above and in winter towards the equator; in the other half-years the temperature limits serve.</source>
        <translation>Marque un point de rosée que l’air n’a presque jamais. Sert en été vers le pôle au-delà de la latitude ci-dessus et en hiver vers l’équateur&#xa0;; dans les autres moitiés de l’année, les seuils de température servent.</translation>
    </message>
    <message>
        <source>Pressure that can&apos;t be</source>
        <translation>Pression impossible</translation>
    </message>
    <message>
        <source>Marks a pressure that no station has, or one far from what this elevation makes usual: often the sea-level value was written.</source>
        <translation>Marque une pression qu’aucune station n’a, ou loin de ce que cette altitude rend habituel&#xa0;: souvent c’est celle du niveau de la mer.</translation>
    </message>
    <message>
        <source>Wet bulb above dry bulb</source>
        <translation>Mouillé au-dessus du sec</translation>
    </message>
    <message>
        <source>A wet wick can only cool. A little above counts as reading error and is taken as saturated air; more is doubtful.</source>
        <translation>Une mousseline humide ne peut que refroidir. Un peu au-dessus compte comme erreur de lecture et air saturé&#xa0;; davantage est douteux.</translation>
    </message>
    <message>
        <source>Very dry air</source>
        <translation>Air très sec</translation>
    </message>
    <message>
        <source>Asks you to read again when the air seems drier than it usually gets. Lower it where the air really is that dry.</source>
        <translation>Prie de relire quand l’air paraît plus sec que d’habitude. L’abaisser là où l’air est vraiment si sec.</translation>
    </message>
    <message>
        <source>Wick run dry</source>
        <translation>Mousseline desséchée</translation>
    </message>
    <message>
        <source>A dry wick reads like a dry bulb: the bulbs stand close together, and the air seems to hold far more vapour than just before.</source>
        <translation>Une mousseline sèche lit comme un thermomètre sec&#xa0;: les deux sont proches, et l’air semble contenir bien plus de vapeur que juste avant.</translation>
    </message>
    <message>
        <source>Wick freezing or thawing</source>
        <translation>Mousseline qui gèle ou dégèle</translation>
    </message>
    <message>
        <source>While a wick freezes or thaws the wet bulb stands at 0.0 °C and tells nothing. Looks for frost in the last readings.</source>
        <translation>Tant qu’une mousseline gèle ou dégèle, le mouillé reste à 0,0&#xa0;°C et ne dit rien. Cherche le gel dans les derniers relevés.</translation>
    </message>
    <message>
        <source>Ice taken for water</source>
        <translation>Glace prise pour de l’eau</translation>
    </message>
    <message>
        <source>Asks whether the wick is ice where water was given well below zero and the answer changes the humidity.</source>
        <translation>Demande si la mousseline est en glace là où eau a été dit bien au-dessous de zéro et où la réponse change l’humidité.</translation>
    </message>
    <message>
        <source>Sudden change of temperature</source>
        <translation>Saut brusque de température</translation>
    </message>
    <message>
        <source>Asks you to confirm a jump since the last reading. Raise it where the days swing widely.</source>
        <translation>Prie de confirmer un saut depuis le dernier relevé. Le relever là où les jours varient beaucoup.</translation>
    </message>
    <message>
        <source>Sudden change of dew point</source>
        <translation>Saut brusque du point de rosée</translation>
    </message>
    <message>
        <source>Asks you to confirm a jump of the moisture since the last reading.</source>
        <translation>Prie de confirmer un saut de l’humidité depuis le dernier relevé.</translation>
    </message>
    <message>
        <source>The same pair again and again</source>
        <translation>Encore et encore le même couple</translation>
    </message>
    <message>
        <source>Asks whether a line was copied when the very same pair stands several times running. Quiet in fog.</source>
        <translation>Demande si une ligne a été recopiée quand exactement le même couple se suit plusieurs fois. Muet par brouillard.</translation>
    </message>
    <message>
        <source>A favoured last figure</source>
        <translation>Un dernier chiffre préféré</translation>
    </message>
    <message>
        <source>Tells, privately, when one tenth is written far oftener than the others.</source>
        <translation>Dit, en privé, quand un dixième est écrit bien plus souvent que les autres.</translation>
    </message>
    <message>
        <source>A day like another</source>
        <translation>Un jour comme un autre</translation>
    </message>
    <message>
        <source>Marks a day whose readings all equal those of an earlier day.</source>
        <translation>Marque un jour dont tous les relevés égalent ceux d’un jour antérieur.</translation>
    </message>
    <message>
        <source>Read early</source>
        <translation>Lu tôt</translation>
    </message>
    <message>
        <source>Notes a reading made well before its hour. The true time is kept.</source>
        <translation>Note un relevé fait bien avant son heure. Le moment vrai est gardé.</translation>
    </message>
    <message>
        <source>Read late</source>
        <translation>Lu tard</translation>
    </message>
    <message>
        <source>Notes a reading made well after its hour. The true time is kept.</source>
        <translation>Note un relevé fait bien après son heure. Le moment vrai est gardé.</translation>
    </message>
    <message>
        <source>Time not yet come</source>
        <translation>Heure pas encore venue</translation>
    </message>
    <message>
        <source>Marks a reading whose time lies ahead of this computer&apos;s clock.</source>
        <translation>Marque un relevé dont l’heure est en avance sur l’horloge de cet ordinateur.</translation>
    </message>
    <message>
        <source>Unusual for this month and hour</source>
        <translation>Inhabituel pour ce mois et cette heure</translation>
    </message>
    <message>
        <source>Compares a reading with the same month and hour of this station&apos;s other years and asks about what lies far outside.</source>
        <translation>Compare un relevé avec le même mois et la même heure des autres années de cette station et demande ce qui en est loin.</translation>
    </message>
    <message>
        <source>Fog, but dry air</source>
        <translation>Brouillard, mais air sec</translation>
    </message>
    <message>
        <source>Asks about the wick or the remark when fog was noted and the air seems too dry for it.</source>
        <translation>S’enquiert de la mousseline ou de la remarque quand du brouillard est noté et que l’air paraît trop sec.</translation>
    </message>
    <message>
        <source>Rain through dry air</source>
        <translation>Pluie à travers un air sec</translation>
    </message>
    <message>
        <source>Notes rain in dry air: it happens, but seldom.</source>
        <translation>Note la pluie dans un air sec&#xa0;: cela arrive, mais rarement.</translation>
    </message>
    <message>
        <source>Outside maximum and minimum</source>
        <translation>Hors du maximum et du minimum</translation>
    </message>
    <message>
        <source>Asks which was misread when the dry bulb stands outside the maximum and minimum that were read.</source>
        <translation>Demande ce qui a été mal lu quand le sec est hors du maximum et du minimum lus.</translation>
    </message>
    <message>
        <source>The month&apos;s numbers</source>
        <translation>Les nombres du mois</translation>
    </message>
    <message>
        <source>When a month has too few readings for a mean, and which days are counted as damp or dry. The stricter rule is 5 and 3 days. Holds for whole months.</source>
        <translation>Quand un mois a trop peu de relevés pour une moyenne, et quels jours comptent comme humides ou secs. La règle plus stricte est 5 et 3 jours. Vaut pour des mois entiers.</translation>
    </message>
    <message>
        <source>Saturated in fine weather</source>
        <translation>Saturé par beau temps</translation>
    </message>
    <message>
        <source>Asks about the wick when the air seems saturated and neither fog nor rain nor dew was noted.</source>
        <translation>S’enquiert de la mousseline quand l’air paraît saturé et que ni brouillard, ni pluie, ni rosée n’est noté.</translation>
    </message>
    <message>
        <source>Unlike the readings round it</source>
        <translation>Différent des relevés voisins</translation>
    </message>
    <message>
        <source>Marks a reading that a slip of the pen explains better than the weather does. Higher marks more readings.</source>
        <translation>Marque un relevé qu’une méprise explique mieux que le temps. Plus haut marque plus de relevés.</translation>
    </message>
    <message>
        <source>latitude that parts high from low</source>
        <translation>latitude qui sépare hautes et basses</translation>
    </message>
    <message>
        <source>high latitude, summer: doubtful below</source>
        <translation>haute latitude, été&#xa0;: douteux sous</translation>
    </message>
    <message>
        <source>high latitude, summer: doubtful above</source>
        <translation>haute latitude, été&#xa0;: douteux au-dessus de</translation>
    </message>
    <message>
        <source>high latitude, summer: wrong below</source>
        <translation>haute latitude, été&#xa0;: faux sous</translation>
    </message>
    <message>
        <source>high latitude, summer: wrong above</source>
        <translation>haute latitude, été&#xa0;: faux au-dessus de</translation>
    </message>
    <message>
        <source>high latitude, winter: doubtful below</source>
        <translation>haute latitude, hiver&#xa0;: douteux sous</translation>
    </message>
    <message>
        <source>high latitude, winter: doubtful above</source>
        <translation>haute latitude, hiver&#xa0;: douteux au-dessus de</translation>
    </message>
    <message>
        <source>high latitude, winter: wrong below</source>
        <translation>haute latitude, hiver&#xa0;: faux sous</translation>
    </message>
    <message>
        <source>high latitude, winter: wrong above</source>
        <translation>haute latitude, hiver&#xa0;: faux au-dessus de</translation>
    </message>
    <message>
        <source>low latitude, summer: doubtful below</source>
        <translation>basse latitude, été&#xa0;: douteux sous</translation>
    </message>
    <message>
        <source>low latitude, summer: doubtful above</source>
        <translation>basse latitude, été&#xa0;: douteux au-dessus de</translation>
    </message>
    <message>
        <source>low latitude, summer: wrong below</source>
        <translation>basse latitude, été&#xa0;: faux sous</translation>
    </message>
    <message>
        <source>low latitude, summer: wrong above</source>
        <translation>basse latitude, été&#xa0;: faux au-dessus de</translation>
    </message>
    <message>
        <source>low latitude, winter: doubtful below</source>
        <translation>basse latitude, hiver&#xa0;: douteux sous</translation>
    </message>
    <message>
        <source>low latitude, winter: doubtful above</source>
        <translation>basse latitude, hiver&#xa0;: douteux au-dessus de</translation>
    </message>
    <message>
        <source>low latitude, winter: wrong below</source>
        <translation>basse latitude, hiver&#xa0;: faux sous</translation>
    </message>
    <message>
        <source>low latitude, winter: wrong above</source>
        <translation>basse latitude, hiver&#xa0;: faux au-dessus de</translation>
    </message>
    <message>
        <source>doubtful below</source>
        <translation>douteux sous</translation>
    </message>
    <message>
        <source>doubtful above</source>
        <translation>douteux au-dessus de</translation>
    </message>
    <message>
        <source>wrong below</source>
        <translation>faux sous</translation>
    </message>
    <message>
        <source>wrong above</source>
        <translation>faux au-dessus de</translation>
    </message>
    <message>
        <source>doubtful farther from the usual than</source>
        <translation>douteux plus loin de l’habituel que</translation>
    </message>
    <message>
        <source>reading error up to</source>
        <translation>erreur de lecture jusqu’à</translation>
    </message>
    <message>
        <source>ask below a humidity of</source>
        <translation>demander sous une humidité de</translation>
    </message>
    <message>
        <source>bulbs closer together than</source>
        <translation>thermomètres plus proches que</translation>
    </message>
    <message>
        <source>vapour at least so many times that of before</source>
        <translation>vapeur au moins tant de fois celle d’avant</translation>
    </message>
    <message>
        <source>vapour more than before by</source>
        <translation>vapeur de plus qu’avant de</translation>
    </message>
    <message>
        <source>looks back</source>
        <translation>regarde en arrière</translation>
    </message>
    <message>
        <source>or wet bulb rising from whirl to whirl by</source>
        <translation>ou mouillé montant d’un passage à l’autre de</translation>
    </message>
    <message>
        <source>a thaw: air warmer than before by</source>
        <translation>un dégel&#xa0;: air plus chaud qu’avant de</translation>
    </message>
    <message>
        <source>ask with a wet bulb below</source>
        <translation>demander à un mouillé sous</translation>
    </message>
    <message>
        <source>where the humidity would differ by more than</source>
        <translation>là où l’humidité différerait de plus de</translation>
    </message>
    <message>
        <source>change within 3 hours</source>
        <translation>changement en 3 heures</translation>
    </message>
    <message>
        <source>change within 6 hours</source>
        <translation>changement en 6 heures</translation>
    </message>
    <message>
        <source>change within 12 hours</source>
        <translation>changement en 12 heures</translation>
    </message>
    <message>
        <source>times running, read to tenths</source>
        <translation>fois de suite, lu aux dixièmes</translation>
    </message>
    <message>
        <source>times running, read to half degrees</source>
        <translation>fois de suite, lu aux demi-degrés</translation>
    </message>
    <message>
        <source>times running, read to whole degrees</source>
        <translation>fois de suite, lu aux degrés entiers</translation>
    </message>
    <message>
        <source>a gap longer than this ends the run</source>
        <translation>une lacune plus longue met fin à la suite</translation>
    </message>
    <message>
        <source>only with at least</source>
        <translation>seulement avec au moins</translation>
    </message>
    <message>
        <source>how uneven the figures are (chi-square)</source>
        <translation>inégalité des chiffres (khi carré)</translation>
    </message>
    <message>
        <source>equal readings, read to tenths</source>
        <translation>relevés égaux, lus aux dixièmes</translation>
    </message>
    <message>
        <source>equal readings, read more coarsely</source>
        <translation>relevés égaux, lus plus grossièrement</translation>
    </message>
    <message>
        <source>by more than</source>
        <translation>de plus de</translation>
    </message>
    <message>
        <source>how far outside the middle half, in widths of it</source>
        <translation>combien hors de la moitié centrale, en largeurs</translation>
    </message>
    <message>
        <source>note below a humidity of</source>
        <translation>noter sous une humidité de</translation>
    </message>
    <message>
        <source>ask from a humidity of</source>
        <translation>demander à partir d’une humidité de</translation>
    </message>
    <message>
        <source>also the next maximum and minimum within</source>
        <translation>aussi les prochains maximum et minimum dans</translation>
    </message>
    <message>
        <source>no mean with so many days missing</source>
        <translation>pas de moyenne avec tant de jours manquants</translation>
    </message>
    <message>
        <source>no mean with so many missing in a row</source>
        <translation>pas de moyenne avec tant de jours manquants de suite</translation>
    </message>
    <message>
        <source>count days at or above a humidity of</source>
        <translation>compter les jours à une humidité d’au moins</translation>
    </message>
    <message>
        <source>count days at or below a humidity of</source>
        <translation>compter les jours à une humidité d’au plus</translation>
    </message>
    <message>
        <source>mark where belief in the reading falls below</source>
        <translation>marquer quand la confiance dans le relevé passe sous</translation>
    </message>
    <message>
        <source>readings</source>
        <translation>relevés</translation>
    </message>
    <message>
        <source>days</source>
        <translation>jours</translation>
    </message>
    <message>
        <source>years</source>
        <translation>ans</translation>
    </message>
    <message>
        <source>h</source>
        <translation>h</translation>
    </message>
    <message>
        <source>min</source>
        <translation>min</translation>
    </message>
    <message>
        <source>widths</source>
        <translation>largeurs</translation>
    </message>
    <message>
        <source>common practice, no source</source>
        <translation>usage courant, sans source</translation>
    </message>
    <message>
        <source>WMO-No. 1203, from memory</source>
        <translation>OMM-N° 1203, de mémoire</translation>
    </message>
    <message>
        <source>our judgement</source>
        <translation>notre jugement</translation>
    </message>
    <message>
        <source>computed</source>
        <translation>calculé</translation>
    </message>
</context>
<context>
    <name>PageCellText</name>
    <message>
        <source>Write the wind as a Beaufort force, a whole number from 0 to 12; “%1” is none.</source>
        <translation>Écrire le vent comme force Beaufort, un nombre entier de 0 à 12&#xa0;; « %1&#xa0;» n’en est pas une.</translation>
    </message>
    <message>
        <source>Write w for water or i for ice; “%1” is neither.</source>
        <translation>Écrire w pour eau ou i pour glace&#xa0;; « %1&#xa0;» n’est ni l’un ni l’autre.</translation>
    </message>
    <message>
        <source>Write the weather so that it can&apos;t be two things: %1, or 0 for none. “%2” is not clear; a remark in other words goes into the note.</source>
        <translation>Écrire le temps de sorte qu’il n’ait qu’un sens&#xa0;: %1, ou 0 pour rien. « %2&#xa0;» n’est pas clair&#xa0;; une remarque en d’autres mots va dans la note.</translation>
    </message>
    <message>
        <source>Say why nothing was read: %1; or m and your own words.</source>
        <translation>Dire pourquoi rien n’a été lu&#xa0;: %1&#xa0;; ou m et vos propres mots.</translation>
    </message>
    <message>
        <source>A bulb&apos;s reading is written out on every line; only a missing line is repeated so.</source>
        <translation>Un relevé s’écrit en entier sur chaque ligne&#xa0;; seule une ligne manquante se répète ainsi.</translation>
    </message>
    <message>
        <source>There is no line above to repeat: write the cell out.</source>
        <translation>Il n’y a pas de ligne au-dessus à répéter&#xa0;: écrire la cellule en entier.</translation>
    </message>
    <message>
        <source>illegible</source>
        <translation>illisible</translation>
    </message>
</context>
<context>
    <name>PairText</name>
    <message>
        <source>Dry and wet bulb, %1</source>
        <translation>Sec et mouillé, %1</translation>
    </message>
    <message>
        <source>dry bulb</source>
        <translation>thermomètre sec</translation>
    </message>
    <message>
        <source>wet bulb</source>
        <translation>thermomètre mouillé</translation>
    </message>
    <message>
        <source>depression</source>
        <translation>écart</translation>
    </message>
</context>
<context>
    <name>PaperText</name>
    <message>
        <source>station</source>
        <translation>station</translation>
    </message>
    <message>
        <source>height, m</source>
        <translation>hauteur, m</translation>
    </message>
    <message>
        <source>hour</source>
        <translation>heure</translation>
    </message>
    <message>
        <source>n of</source>
        <translation>n sur</translation>
    </message>
    <message>
        <source>mean RH</source>
        <translation>HR moy.</translation>
    </message>
    <message>
        <source>highest</source>
        <translation>maximale</translation>
    </message>
    <message>
        <source>lowest</source>
        <translation>minimale</translation>
    </message>
    <message>
        <source>mean e, hPa</source>
        <translation>e moy., hPa</translation>
    </message>
    <message>
        <source>its dew point</source>
        <translation>son p. de rosée</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 sur %2</translation>
    </message>
    <message>
        <source>The club&apos;s stations · %1</source>
        <translation>Les stations du club · %1</translation>
    </message>
    <message>
        <source>At observing hours; RH relative humidity, e vapour pressure, dew point in °C. n readings that count, of the days of the month.</source>
        <translation>Aux heures d’observation&#xa0;; HR humidité relative, e tension de vapeur, point de rosée en °C. n relevés qui comptent, sur les jours du mois.</translation>
    </message>
    <message>
        <source>Thermometers that hang differently read differently in the same air, and so do other hours and heights: the groups below are not for ranking one another, and stations stand in alphabetical order.</source>
        <translation>Des thermomètres exposés autrement lisent autre chose dans le même air, et de même d’autres heures et altitudes&#xa0;: les groupes ci-dessous ne sont pas à classer entre eux, et les stations suivent l’alphabet.</translation>
    </message>
    <message>
        <source>Reading %1 in my place</source>
        <translation>Lire %1 à ma place</translation>
    </message>
    <message>
        <source>In doubt ask</source>
        <translation>En cas de doute, demander à</translation>
    </message>
    <message>
        <source>Before you go out</source>
        <translation>Avant de sortir</translation>
    </message>
    <message>
        <source>Reading</source>
        <translation>Lecture</translation>
    </message>
    <message>
        <source>In frost</source>
        <translation>Par gel</translation>
    </message>
    <message>
        <source>Wick and water</source>
        <translation>Mousseline et eau</translation>
    </message>
    <message>
        <source>When something is not right</source>
        <translation>Quand quelque chose ne va pas</translation>
    </message>
    <message>
        <source>Take care</source>
        <translation>Prudence</translation>
    </message>
    <message>
        <source>when</source>
        <translation>quand</translation>
    </message>
    <message>
        <source>where</source>
        <translation>où</translation>
    </message>
    <message>
        <source>read to</source>
        <translation>lu à</translation>
    </message>
    <message>
        <source>away</source>
        <extracomment>%1 and %2 are dates, %3 a deputy&apos;s initials</extracomment>
        <translation>absent</translation>
    </message>
    <message>
        <source>%1 to %2; %3 reads</source>
        <translation>du %1 au %2&#xa0;; %3 lit</translation>
    </message>
    <message>
        <source>Half an hour ahead hang the instrument outdoors in the shade. Look at the wick: clean, wet, tight round the bulb. Look for a break in each column.</source>
        <translation>Une demi-heure avant, suspendre l’instrument dehors à l’ombre. Regarder la mousseline&#xa0;: propre, humide, serrée autour du réservoir. Chercher une coupure dans chaque colonne.</translation>
    </message>
    <message>
        <source>Check the cord and the swivel.</source>
        <translation>Vérifier le cordon et l’émerillon.</translation>
    </message>
    <message>
        <source>Look at the wick when you open the screen: clean, wet, tight round the bulb. Look for a break in each column.</source>
        <translation>En ouvrant l’abri, regarder la mousseline&#xa0;: propre, humide, serrée autour du réservoir. Chercher une coupure dans chaque colonne.</translation>
    </message>
    <message>
        <source>Stand in the shade and face the wind, arm out, nobody and nothing within 1.5 m. Whirl for about a minute at two turns a second, stop, and read the wet bulb first, at once, then the dry bulb. Whirl again until the wet bulb falls no further; the lowest counts, with the dry bulb beside it.</source>
        <translation>Se tenir à l’ombre face au vent, bras tendu, personne ni rien à moins de 1,5&#xa0;m. Tourner environ une minute à deux tours par seconde, arrêter, lire aussitôt le mouillé d’abord, puis le sec. Tourner encore jusqu’à ce que le mouillé ne baisse plus&#xa0;; le plus bas compte, avec le sec à côté.</translation>
    </message>
    <message>
        <source>Read the dry bulb first, then the wet bulb, quickly and without breathing on them.</source>
        <translation>Lire le sec d’abord, puis le mouillé, vite et sans souffler dessus.</translation>
    </message>
    <message>
        <source>Eye level with the top of the column. Tenths first, whole degrees after, then look once more whether you are ten off.</source>
        <translation>L’œil au niveau du bout de la colonne. Les dixièmes d’abord, les degrés ensuite, puis regarder encore si ce n’est pas dix à côté.</translation>
    </message>
    <message>
        <source>Write both down as read, with the time and your initials, before you do anything else.</source>
        <translation>Écrire les deux comme lus, avec l’heure et vos initiales, avant toute autre chose.</translation>
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
        <translation>Quand le mouillé est à %1 ou au-dessous, dire si la mousseline est en eau ou en glace&#xa0;: la toucher, ou voir si la colonne s’arrête à %1 en descendant.</translation>
    </message>
    <message>
        <source>Wet the wick a quarter of an hour ahead and let it freeze before you whirl.</source>
        <translation>Humecter la mousseline un quart d’heure avant et la laisser geler avant de tourner.</translation>
    </message>
    <message>
        <source>Take the reservoir away. A quarter of an hour ahead brush on a thin film of ice-cold water; melt thick ice off first.</source>
        <translation>Ôter le réservoir d’eau. Un quart d’heure avant, passer au pinceau un mince film d’eau glacée&#xa0;; fondre d’abord la glace épaisse.</translation>
    </message>
    <message>
        <source>After a thaw old ice holds the bulb at %1: melt it with tepid water and wait until the column has risen.</source>
        <translation>Après un dégel, la vieille glace retient le thermomètre à %1&#xa0;: la fondre à l’eau tiède et attendre que la colonne ait monté.</translation>
    </message>
    <message>
        <source>Distilled or rain water only, never from the tap. Do not touch the wick with your fingers. Put on a new one when it is yellow, frayed or beads the water; write that down too.</source>
        <translation>Eau distillée ou de pluie seulement, jamais du robinet. Ne pas toucher la mousseline des doigts. En mettre une neuve quand elle est jaune, effilochée ou que l’eau y perle&#xa0;; l’écrire aussi.</translation>
    </message>
    <message>
        <source>The wet bulb stands above the dry one, or both read the same in clear dry weather: read again, wet the wick, wait, read once more. Write down what you read even if it looks wrong, and say so beside it.</source>
        <translation>Le mouillé est au-dessus du sec, ou les deux lisent pareil par temps clair et sec&#xa0;: relire, humecter, attendre, relire. Écrire ce qui a été lu même si cela paraît faux, et le dire à côté.</translation>
    </message>
    <message>
        <source>Missed an hour? Leave it empty and say why. A reading made late is written with its true time. Nothing is made up.</source>
        <translation>Une heure manquée&#xa0;? La laisser vide et dire pourquoi. Un relevé tardif s’écrit avec son heure vraie. Rien ne s’invente.</translation>
    </message>
    <message>
        <source>Deputy&apos;s card · %1</source>
        <translation>Carte du remplaçant · %1</translation>
    </message>
    <message>
        <source>dry</source>
        <translation>sec</translation>
    </message>
    <message>
        <source>dry less wet, %1</source>
        <translation>sec moins mouillé, %1</translation>
    </message>
    <message>
        <source>Humidity table</source>
        <translation>Table psychrométrique</translation>
    </message>
    <message>
        <source>%1 hPa</source>
        <translation>%1&#xa0;hPa</translation>
    </message>
    <message>
        <source>fitted at this station</source>
        <translation>déterminé à cette station</translation>
    </message>
    <message>
        <source>coefficient %1 × 10⁻⁴ per K at 0 °C (%2)</source>
        <extracomment>%1 a number, %2 where it comes from</extracomment>
        <translation>coefficient %1 × 10⁻⁴ par K à 0&#xa0;°C (%2)</translation>
    </message>
    <message>
        <source>Relative humidity, %</source>
        <translation>Humidité relative,&#xa0;%</translation>
    </message>
    <message>
        <source>Dew point, %1</source>
        <translation>Point de rosée, %1</translation>
    </message>
    <message>
        <source>water on the wick</source>
        <translation>eau sur la mousseline</translation>
    </message>
    <message>
        <source>ICE on the wick</source>
        <translation>GLACE sur la mousseline</translation>
    </message>
    <message>
        <source>Find the dry bulb at the side, dry less wet at the top: the figure where they meet. Halfway between two figures take the middle. With ice on the wick use the pages that say so, also for a dry bulb above freezing.</source>
        <translation>Chercher le sec au bord, sec moins mouillé en haut&#xa0;: le nombre où ils se rencontrent. Entre deux nombres, prendre le milieu. Avec de la glace, prendre les pages qui le disent, même pour un sec au-dessus de zéro.</translation>
    </message>
    <message>
        <source>%1, %2, %3. Within 1 % from %4 to %5 hPa.</source>
        <translation>%1, %2, %3. À 1&#xa0;% près de %4 à %5&#xa0;hPa.</translation>
    </message>
    <message>
        <source>Only for thermometers exposed as named above: in stiller air the wet bulb reads too high, and so does the humidity. Relative humidity is over liquid water, also with ice on the wick. Not for aviation, heat stress, spraying, food or process safety, medical or legal decisions.</source>
        <translation>Seulement pour des thermomètres exposés comme dit ci-dessus&#xa0;: dans un air plus calme le mouillé lit trop haut, et l’humidité aussi. L’humidité relative vaut sur l’eau liquide, même avec de la glace. Non pour l’aviation, le stress thermique, les traitements, la sécurité des aliments ou des procédés, ni des décisions médicales ou légales.</translation>
    </message>
    <message>
        <source>Humidity table · %1</source>
        <translation>Table psychrométrique · %1</translation>
    </message>
    <message>
        <source>The station keeps no observing hour in this month.</source>
        <translation>La station n’a pas d’heure d’observation ce mois-ci.</translation>
    </message>
    <message>
        <source>Observer</source>
        <translation>Observateur</translation>
    </message>
    <message>
        <source>Book</source>
        <translation>Livre</translation>
    </message>
    <message>
        <source>Page</source>
        <translation>Page</translation>
    </message>
    <message>
        <source>day</source>
        <translation>jour</translation>
    </message>
    <message>
        <source>time</source>
        <translation>heure</translation>
    </message>
    <message>
        <source>dry %1</source>
        <translation>sec %1</translation>
    </message>
    <message>
        <source>wet %1</source>
        <translation>mouillé %1</translation>
    </message>
    <message>
        <source>water</source>
        <translation>eau</translation>
    </message>
    <message>
        <source>ice</source>
        <translation>glace</translation>
    </message>
    <message>
        <source>weather</source>
        <translation>temps</translation>
    </message>
    <message>
        <source>wind</source>
        <translation>vent</translation>
    </message>
    <message>
        <source>who</source>
        <translation>qui</translation>
    </message>
    <message>
        <source>note</source>
        <translation>remarque</translation>
    </message>
    <message>
        <source>Whirl in the shade, facing the wind, until the wet bulb falls no further. Read the wet bulb first, at once, then the dry bulb.</source>
        <translation>Tourner à l’ombre, face au vent, jusqu’à ce que le mouillé ne baisse plus. Lire aussitôt le mouillé d’abord, puis le sec.</translation>
    </message>
    <message>
        <source>Read the dry bulb first, then the wet bulb, without breathing on them.</source>
        <translation>Lire le sec d’abord, puis le mouillé, sans souffler dessus.</translation>
    </message>
    <message>
        <source>Tenths before whole degrees. Write what you read; corrections are made later.</source>
        <translation>Les dixièmes avant les degrés. Écrire ce qui est lu&#xa0;; les corrections viennent plus tard.</translation>
    </message>
    <message>
        <source>With the wet bulb at 0 °C (32 °F) or below tick water or ice.</source>
        <translation>Quand le mouillé est à 0&#xa0;°C (32&#xa0;°F) ou au-dessous, cocher eau ou glace.</translation>
    </message>
    <message>
        <source>A missed hour stays empty; say why in the note. Strike out a slip, so that it can still be read, and write the right figure beside it.</source>
        <translation>Une heure manquée reste vide&#xa0;; dire pourquoi dans la note. Barrer une méprise de sorte qu’elle reste lisible, et écrire le bon nombre à côté.</translation>
    </message>
    <message>
        <source>Keep clear of people and glass when whirling; mind ice underfoot, and stay in when there is thunder.</source>
        <translation>En tournant, rester loin des gens et du verre&#xa0;; attention à la glace au sol, et rester dedans par orage.</translation>
    </message>
    <message>
        <source>Form for %1 · %2</source>
        <translation>Formulaire pour %1 · %2</translation>
    </message>
    <message>
        <source>highest at observing hours</source>
        <translation>maximum aux heures d’observation</translation>
    </message>
    <message>
        <source>lowest at observing hours</source>
        <translation>minimum aux heures d’observation</translation>
    </message>
    <message>
        <source>mean relative humidity</source>
        <translation>humidité relative moyenne</translation>
    </message>
    <message>
        <source>mean dew point</source>
        <translation>point de rosée moyen</translation>
    </message>
    <message>
        <source>mean vapour pressure, hPa</source>
        <translation>tension de vapeur moyenne, hPa</translation>
    </message>
    <message>
        <source>dew point of the mean vapour pressure</source>
        <translation>point de rosée de la tension moyenne</translation>
    </message>
    <message>
        <source>mean depression</source>
        <translation>écart moyen</translation>
    </message>
    <message>
        <source>mean dry bulb</source>
        <translation>sec moyen</translation>
    </message>
    <message>
        <source>mean wet bulb</source>
        <translation>mouillé moyen</translation>
    </message>
    <message>
        <source>days at or above %1</source>
        <translation>jours à %1 ou plus</translation>
    </message>
    <message>
        <source>days at or below %1</source>
        <translation>jours à %1 ou moins</translation>
    </message>
    <message>
        <source>days with fog noted</source>
        <translation>jours de brouillard noté</translation>
    </message>
    <message>
        <source>expected</source>
        <translation>attendus</translation>
    </message>
    <message>
        <source>counted (n)</source>
        <translation>comptés (n)</translation>
    </message>
    <message>
        <source>missing</source>
        <translation>manquant</translation>
    </message>
    <message>
        <source>set aside</source>
        <translation>mis de côté</translation>
    </message>
    <message>
        <source>mean of observing hours</source>
        <translation>moyenne des heures d’observation</translation>
    </message>
    <message>
        <source>incomplete</source>
        <translation>incomplet</translation>
    </message>
    <message>
        <source>corrected</source>
        <translation>corrigé</translation>
    </message>
    <message>
        <source>T</source>
        <translation>T</translation>
    </message>
    <message>
        <source>Tw</source>
        <translation>Tw</translation>
    </message>
    <message>
        <source>RH</source>
        <translation>HR</translation>
    </message>
    <message>
        <source>Td</source>
        <translation>Td</translation>
    </message>
    <message>
        <source>wick</source>
        <translation>mousseline</translation>
    </message>
    <message>
        <source>weather, remark</source>
        <translation>temps, remarque</translation>
    </message>
    <message>
        <source>remark</source>
        <translation>remarque</translation>
    </message>
    <message>
        <source>No mean yet: the month is not over, and days without a reading, also those to come, count as missing (WMO-No. 1203).</source>
        <translation>Pas encore de moyenne&#xa0;: le mois n’est pas fini, et les jours sans relevé, même à venir, comptent comme manquants (OMM-N° 1203).</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <extracomment>%1 an observing hour, %2 a sentence why there is no mean
----------
%1 date and hour, %2 why a reading was revised</extracomment>
        <translation>%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>revised</source>
        <translation>révisé</translation>
    </message>
    <message>
        <source>%1 could not be painted because of an error in the program; nothing was written. Please report it.</source>
        <translation>%1 n’a pu être dessiné à cause d’une erreur du programme&#xa0;; rien n’a été écrit. Merci de la signaler.</translation>
    </message>
    <message>
        <source>Monthly return · %1 · %2</source>
        <translation>Relevé mensuel · %1 · %2</translation>
    </message>
    <message>
        <source>T dry bulb and Tw wet bulb as read, Td dew point, in %1; RH relative humidity in %. All at observing hours.</source>
        <translation>T sec et Tw mouillé comme lus, Td point de rosée, en %1&#xa0;; HR humidité relative en&#xa0;%. Tout aux heures d’observation.</translation>
    </message>
    <message>
        <source>Extra readings, outside the means</source>
        <translation>Relevés hors heure, hors des moyennes</translation>
    </message>
    <message>
        <source>The month&apos;s numbers, at observing hours</source>
        <translation>Les nombres du mois, aux heures d’observation</translation>
    </message>
    <message>
        <source>Queries still open, set aside until they are judged: %1.</source>
        <translation>Questions ouvertes, mises de côté jusqu’au jugement&#xa0;: %1.</translation>
    </message>
    <message>
        <source>Signed off</source>
        <translation>Visé</translation>
    </message>
    <message>
        <source>Corrections made</source>
        <translation>Corrections faites</translation>
    </message>
    <message>
        <source>The station</source>
        <translation>La station</translation>
    </message>
    <message>
        <source>How the numbers were made</source>
        <translation>Comment les nombres ont été faits</translation>
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
        <translation>E</translation>
    </message>
    <message>
        <source>W</source>
        <translation>O</translation>
    </message>
    <message>
        <source>%1 × 10⁻⁴ per K</source>
        <translation>%1 × 10⁻⁴ par K</translation>
    </message>
    <message>
        <source>own, not stated</source>
        <translation>propre, non donné</translation>
    </message>
    <message>
        <source>water %1</source>
        <translation>eau %1</translation>
    </message>
    <message>
        <source>, ice %1</source>
        <translation>, glace %1</translation>
    </message>
    <message>
        <source>; fitted at this station</source>
        <translation>&#xa0;; déterminé à cette station</translation>
    </message>
    <message>
        <source>water %1, ice %2; %3</source>
        <extracomment>%1 and %2 are coefficients, %3 where they come from</extracomment>
        <translation>eau %1, glace %2&#xa0;; %3</translation>
    </message>
    <message>
        <source>none on record</source>
        <translation>aucun inscrit</translation>
    </message>
    <message>
        <source>read to %1 %2</source>
        <translation>lu à %1&#xa0;%2</translation>
    </message>
    <message>
        <source>corrected (%1)</source>
        <translation>corrigé (%1)</translation>
    </message>
    <message>
        <source>no correction on record</source>
        <translation>aucune correction inscrite</translation>
    </message>
    <message>
        <source>%1 (%2 readings)</source>
        <extracomment>%1 &quot;read&quot; or &quot;from elevation&quot;, %2 how many readings</extracomment>
        <translation>%1 (%2 relevés)</translation>
    </message>
    <message>
        <source>valid from</source>
        <translation>valable depuis</translation>
    </message>
    <message>
        <source>position</source>
        <translation>position</translation>
    </message>
    <message>
        <source>elevation</source>
        <translation>altitude</translation>
    </message>
    <message>
        <source>%1 m above sea level</source>
        <translation>%1&#xa0;m au-dessus de la mer</translation>
    </message>
    <message>
        <source>time zone</source>
        <translation>fuseau horaire</translation>
    </message>
    <message>
        <source>observing hours</source>
        <translation>heures d’observation</translation>
    </message>
    <message>
        <source>exposure</source>
        <translation>exposition</translation>
    </message>
    <message>
        <source>psychrometer coefficient</source>
        <translation>coefficient psychrométrique</translation>
    </message>
    <message>
        <source>pressure</source>
        <translation>pression</translation>
    </message>
    <message>
        <source>dry thermometer</source>
        <translation>thermomètre sec</translation>
    </message>
    <message>
        <source>wet thermometer</source>
        <translation>thermomètre mouillé</translation>
    </message>
    <message>
        <source>surroundings</source>
        <translation>environs</translation>
    </message>
    <message>
        <source>T and Tw are given as read; corrections on record are applied before anything is worked out. Vapour pressure follows from the psychrometer equation with the coefficient above, saturation from Sonntag&apos;s formulae; relative humidity is always over liquid water, also below freezing.</source>
        <translation>T et Tw sont donnés comme lus&#xa0;; les corrections inscrites sont appliquées avant tout calcul. La tension de vapeur suit l’équation psychrométrique avec le coefficient ci-dessus, la saturation les formules de Sonntag&#xa0;; l’humidité relative vaut toujours sur l’eau liquide, même sous zéro.</translation>
    </message>
    <message>
        <source>Means are of observing hours, each hour weighted equally; they are not means over 24 hours. A mean is not given where %1 or more days are missing, or %2 or more in a row.</source>
        <translation>Les moyennes sont celles des heures d’observation, chaque heure à poids égal&#xa0;; ce ne sont pas des moyennes sur 24 heures. Pas de moyenne où %1 jours ou plus manquent, ou %2 de suite ou plus.</translation>
    </message>
    <message>
        <source>Set aside: readings judged doubtful or erroneous, readings marked so and not yet judged, and estimates. They stand above as read and stay out of means and extremes.</source>
        <translation>Mis de côté&#xa0;: relevés jugés douteux ou erronés, relevés ainsi marqués et non encore jugés, et estimations. Ils figurent ci-dessus comme lus et restent hors des moyennes et extrêmes.</translation>
    </message>
    <message>
        <source>How sure: a single relative humidity is good to %1 %</source>
        <translation>Précision&#xa0;: une humidité relative isolée est bonne à %1&#xa0;%</translation>
    </message>
    <message>
        <source>, a dew point to %1 %2</source>
        <translation>, un point de rosée à %1&#xa0;%2</translation>
    </message>
    <message>
        <source> (k = 2, the month&apos;s median).</source>
        <translation> (k = 2, médiane du mois).</translation>
    </message>
    <message>
        <source>The year in numbers</source>
        <translation>L’année en nombres</translation>
    </message>
    <message>
        <source>The year in charts</source>
        <translation>L’année en graphiques</translation>
    </message>
    <message>
        <source>This month is still to come.</source>
        <translation>Ce mois est encore à venir.</translation>
    </message>
    <message>
        <source>Nothing was written down in this month.</source>
        <translation>Rien n’a été noté ce mois-ci.</translation>
    </message>
    <message>
        <source>The hut&apos;s humidity table</source>
        <translation>La table psychrométrique de l’abri</translation>
    </message>
    <message>
        <source>Relative humidity and dew point from a dry and a wet bulb</source>
        <translation>Humidité relative et point de rosée d’un thermomètre sec et d’un mouillé</translation>
    </message>
    <message>
        <source>observers</source>
        <translation>observateurs</translation>
    </message>
    <message>
        <source>This station is invented, and so are its readings.</source>
        <translation>Cette station est fictive, ses relevés aussi.</translation>
    </message>
    <message>
        <source>Contents</source>
        <translation>Table des matières</translation>
    </message>
    <message>
        <source>page</source>
        <translation>page</translation>
    </message>
    <message>
        <source>mean e</source>
        <translation>e moyenne</translation>
    </message>
    <message>
        <source>Td of e</source>
        <translation>Td de e</translation>
    </message>
    <message>
        <source>mean Td</source>
        <translation>Td moyen</translation>
    </message>
    <message>
        <source>the month is not over</source>
        <translation>le mois n’est pas fini</translation>
    </message>
    <message>
        <source>n readings that count, of those expected; RH relative humidity; e vapour pressure in hPa; Td of e the dew point of its mean, Td dew point, in %1. At observing hours; a mean of observing hours weights them equally and is no mean over 24 hours. Where there is no mean the reason stands below.</source>
        <translation>n relevés qui comptent, sur ceux attendus&#xa0;; HR humidité relative&#xa0;; e tension de vapeur en hPa&#xa0;; Td de e le point de rosée de sa moyenne, Td point de rosée, en %1. Aux heures d’observation&#xa0;; une moyenne des heures leur donne un poids égal et n’est pas une moyenne sur 24 heures. Où il n’y a pas de moyenne, la raison est dessous.</translation>
    </message>
    <message>
        <source>Mean of observing hours</source>
        <translation>Moyenne des heures d’observation</translation>
    </message>
    <message>
        <source>No reading of this year is in the book.</source>
        <translation>Le livre n’a aucun relevé de cette année.</translation>
    </message>
    <message>
        <source>Year book · %1</source>
        <translation>Annuaire · %1</translation>
    </message>
</context>
<context>
    <name>ParagraphText</name>
    <message>
        <source>No humidity could be worked out at %1 in %2.</source>
        <translation>Aucune humidité n’a pu être calculée à %1 en %2.</translation>
    </message>
    <message>
        <source>%1 and %2</source>
        <extracomment>several observing hours, &quot;7 h, 14 h and 21 h&quot;</extracomment>
        <translation>%1 et %2</translation>
    </message>
    <message>
        <source>%1 at %2 is not over, so there is no mean yet.</source>
        <translation>%1 à %2 n’est pas fini, donc pas encore de moyenne.</translation>
    </message>
    <message>
        <source>%1 at %2:</source>
        <translation>%1 à %2&#xa0;:</translation>
    </message>
    <message>
        <source>In %1 the relative humidity at %2, read at %3, was %4 on average, and the dew point %5</source>
        <extracomment>%1 month, %2 station, %3 &quot;9 h and 21 h&quot;, %4 a humidity, %5 a temperature</extracomment>
        <translation>En %1, l’humidité relative à %2, lue à %3, a été de %4 en moyenne, et le point de rosée de %5</translation>
    </message>
    <message>
        <source>; a single reading is sure to about %1 %2 and %3 %4</source>
        <translation>&#xa0;; un relevé isolé est sûr à environ %1&#xa0;%2 et %3&#xa0;%4</translation>
    </message>
    <message>
        <source>The one reading that counts (%1) gave %2 and a dew point of %3.</source>
        <translation>Le seul relevé qui compte (%1) a donné %2 et un point de rosée de %3.</translation>
    </message>
    <message>
        <source>The driest reading, %1, came on %2, the dampest, %3, on %4.</source>
        <translation>Le relevé le plus sec, %1, est venu le %2, le plus humide, %3, le %4.</translation>
    </message>
    <message>
        <source>The dew point lay between %1 (%2) and %3 (%4).</source>
        <translation>Le point de rosée a été entre %1 (%2) et %3 (%4).</translation>
    </message>
    <message>
        <source>fog on one day</source>
        <translation>du brouillard un jour</translation>
    </message>
    <message numerus="yes">
        <source>fog on %n days</source>
        <translation>
            <numerusform>du brouillard %n jour</numerusform>
            <numerusform>du brouillard %n jours</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 or more on one day</source>
        <translation>%1 ou plus un jour</translation>
    </message>
    <message numerus="yes">
        <source>%1 or more on %n days</source>
        <translation>
            <numerusform>%1 ou plus %n jour</numerusform>
            <numerusform>%1 ou plus %n jours</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 or less on one day</source>
        <translation>%1 ou moins un jour</translation>
    </message>
    <message numerus="yes">
        <source>%1 or less on %n days</source>
        <translation>
            <numerusform>%1 ou moins %n jour</numerusform>
            <numerusform>%1 ou moins %n jours</numerusform>
        </translation>
    </message>
    <message>
        <source>At observing hours there was %1.</source>
        <translation>Aux heures d’observation il y a eu %1.</translation>
    </message>
    <message>
        <source>%1 missing</source>
        <translation>manquants&#xa0;: %1</translation>
    </message>
    <message>
        <source>%1 set aside</source>
        <translation>mis de côté&#xa0;: %1</translation>
    </message>
    <message>
        <source>%1 still to come</source>
        <translation>à venir&#xa0;: %1</translation>
    </message>
    <message>
        <source>None of the %1 readings is missing.</source>
        <translation>Aucun des %1 relevés ne manque.</translation>
    </message>
    <message>
        <source>Of %1 readings %2 count (%3).</source>
        <translation>Sur %1 relevés, %2 comptent (%3).</translation>
    </message>
    <message>
        <source>One reading was revised later; what was first written is kept.</source>
        <translation>Un relevé a été révisé plus tard&#xa0;; ce qui fut d’abord écrit est gardé.</translation>
    </message>
    <message numerus="yes">
        <source>%n readings were revised later; what was first written is kept.</source>
        <translation>
            <numerusform>%n relevé a été révisé plus tard&#xa0;; ce qui fut d’abord écrit est gardé.</numerusform>
            <numerusform>%n relevés ont été révisés plus tard&#xa0;; ce qui fut d’abord écrit est gardé.</numerusform>
        </translation>
    </message>
    <message>
        <source>One marked reading is not yet judged and is left out.</source>
        <translation>Un relevé marqué n’est pas encore jugé et reste de côté.</translation>
    </message>
    <message numerus="yes">
        <source>%n marked readings are not yet judged and are left out.</source>
        <translation>
            <numerusform>%n relevé marqué n’est pas encore jugé et reste de côté.</numerusform>
            <numerusform>%n relevés marqués ne sont pas encore jugés et restent de côté.</numerusform>
        </translation>
    </message>
    <message>
        <source>Worked out from a dry and a wet bulb read at fixed hours; these are not 24-hour means.</source>
        <translation>Calculé d’un thermomètre sec et d’un mouillé lus à heures fixes&#xa0;; ce ne sont pas des moyennes sur 24 heures.</translation>
    </message>
    <message>
        <source>Station and readings are invented.</source>
        <translation>Station et relevés sont fictifs.</translation>
    </message>
</context>
<context>
    <name>PromptText</name>
    <message>
        <source>Wickbook books (*.wickbook);;All files (*)</source>
        <translation>Livres Wickbook (*.wickbook);;Tous les fichiers (*)</translation>
    </message>
    <message>
        <source>Where the new book shall lie</source>
        <translation>Où placer le nouveau livre</translation>
    </message>
    <message>
        <source>Open a book</source>
        <translation>Ouvrir un livre</translation>
    </message>
</context>
<context>
    <name>QObject</name>
    <message>
        <source>undone: %1</source>
        <translation>annulé&#xa0;: %1</translation>
    </message>
    <message>
        <source>done again: %1</source>
        <translation>refait&#xa0;: %1</translation>
    </message>
    <message>
        <source>%1 is a folder: choose a file in it.</source>
        <translation>%1 est un dossier&#xa0;: y choisir un fichier.</translation>
    </message>
    <message>
        <source>%1 can&apos;t be read: %2. Check that you may read it, or choose another file.</source>
        <translation>%1 ne peut être lu&#xa0;: %2. Vérifier le droit de le lire, ou choisir un autre fichier.</translation>
    </message>
    <message>
        <source>Bring in one table at a time; several files together only where they are of the Station Exchange Format.</source>
        <translation>Reprendre un tableau à la fois&#xa0;; plusieurs fichiers ensemble seulement au Station Exchange Format.</translation>
    </message>
    <message>
        <source>Nothing was brought in. %1</source>
        <translation>Rien n’a été repris. %1</translation>
    </message>
    <message>
        <source>%1 could not be written: %2. Choose another folder or free some space, then try again.</source>
        <translation>%1 n’a pu être écrit&#xa0;: %2. Choisir un autre dossier ou libérer de la place, puis réessayer.</translation>
    </message>
    <message numerus="yes">
        <source>Writing %n readings…</source>
        <translation>
            <numerusform>Écriture de %n relevé…</numerusform>
            <numerusform>Écriture de %n relevés…</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>RestoreText</name>
    <message>
        <source>%1 does not verify: choose another copy. (%2)</source>
        <translation>%1 n’a pu être vérifié&#xa0;: choisir une autre copie. (%2)</translation>
    </message>
    <message>
        <source>%1 is sound: %2 in %3 revisions.</source>
        <translation>%1 est intact&#xa0;: %2 en %3 versions.</translation>
    </message>
    <message>
        <source>It could not be held against the other book. %1</source>
        <translation>La comparaison avec l’autre livre n’a pu se faire. %1</translation>
    </message>
    <message>
        <source>It was not held against the other book to the end.</source>
        <translation>La comparaison avec l’autre livre n’est pas allée au bout.</translation>
    </message>
    <message>
        <source>Restored and verified: %1, %2.</source>
        <translation>Restauré et vérifié&#xa0;: %1, %2.</translation>
    </message>
</context>
<context>
    <name>ReviewText</name>
    <message>
        <source>d MMM yyyy</source>
        <extracomment>day, short month and year, in Qt&apos;s date format</extracomment>
        <translation>d MMM yyyy</translation>
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
        <translation>1 relevé</translation>
    </message>
    <message numerus="yes">
        <source>%n readings</source>
        <translation>
            <numerusform>%n relevé</numerusform>
            <numerusform>%n relevés</numerusform>
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
        <translation>nom</translation>
    </message>
    <message>
        <source>place and hours</source>
        <translation>lieu et heures</translation>
    </message>
    <message>
        <source>thermometer</source>
        <translation>thermomètre</translation>
    </message>
    <message>
        <source>which thermometers hang</source>
        <translation>quels thermomètres sont suspendus</translation>
    </message>
    <message>
        <source>correction</source>
        <translation>correction</translation>
    </message>
    <message>
        <source>limit of the checks</source>
        <translation>seuil des contrôles</translation>
    </message>
    <message>
        <source>absence</source>
        <translation>absence</translation>
    </message>
    <message>
        <source>diary</source>
        <translation>journal</translation>
    </message>
    <message>
        <source>check of the pair</source>
        <translation>contrôle du couple</translation>
    </message>
    <message>
        <source>check over salts</source>
        <translation>contrôle sur sels</translation>
    </message>
    <message>
        <source>comparison with another instrument</source>
        <translation>comparaison avec un autre instrument</translation>
    </message>
    <message>
        <source>a fact of a later version</source>
        <translation>un fait d’une version plus récente</translation>
    </message>
    <message>
        <source>salvaged from a damaged book</source>
        <translation>sauvé d’un livre endommagé</translation>
    </message>
    <message>
        <source>salvage: bytes of this reading changed in the damaged book, so that it may not be what was read</source>
        <translation>sauvetage&#xa0;: des octets de ce relevé ont changé dans le livre endommagé, il peut n’être pas ce qui a été lu</translation>
    </message>
    <message>
        <source>salvage: a reading written later stands at this hour; what withdrew or moved this one is lost</source>
        <translation>sauvetage&#xa0;: un relevé écrit plus tard est à cette heure&#xa0;; ce qui a retiré ou déplacé celui-ci est perdu</translation>
    </message>
    <message>
        <source>Salvaged station, its facts lost</source>
        <translation>Station sauvée, ses faits perdus</translation>
    </message>
    <message>
        <source>%1 and %2 more</source>
        <translation>%1 et %2 autres</translation>
    </message>
    <message>
        <source>Stopped: there is no new book, and the damaged one is as it was.</source>
        <translation>Arrêté&#xa0;: il n’y a pas de nouveau livre, et l’endommagé est comme il était.</translation>
    </message>
    <message>
        <source>Everything came back: all %1 revisions are there and proved.</source>
        <translation>Tout est revenu&#xa0;: les %1 versions sont là et prouvées.</translation>
    </message>
    <message>
        <source>%1 of %2 revisions came back, %3 of them proved to be as they were written.</source>
        <translation>%1 versions sur %2 sont revenues, dont %3 prouvées comme écrites.</translation>
    </message>
    <message>
        <source>Revisions that can&apos;t be read and are lost: %1 (number %2). Look for them in the newest copy that verifies, or in the paper register.</source>
        <translation>Versions illisibles et perdues&#xa0;: %1 (numéro %2). Les chercher dans la copie vérifiée la plus récente ou dans le registre papier.</translation>
    </message>
    <message>
        <source>Revisions that came in altered, as they now read: %1 (number %2).</source>
        <translation>Versions revenues altérées, comme elles se lisent maintenant&#xa0;: %1 (numéro %2).</translation>
    </message>
    <message>
        <source>Altered readings that are judged doubtful: %1. Compare them with the paper register, correct them, or judge them sound.</source>
        <translation>Relevés altérés, jugés douteux&#xa0;: %1. Les comparer au registre papier, les corriger ou les juger valables.</translation>
    </message>
    <message>
        <source>Facts of the station are altered (%1): check them on the pages Station and Instruments.</source>
        <translation>Des faits de la station sont altérés (%1)&#xa0;: les vérifier sur les pages Station et Instruments.</translation>
    </message>
    <message>
        <source>Revisions that can&apos;t be proved, since the one before is hurt: %1 (number %2). Nothing says that they changed.</source>
        <translation>Versions qui ne peuvent être prouvées, la précédente étant abîmée&#xa0;: %1 (numéro %2). Rien ne dit qu’elles ont changé.</translation>
    </message>
    <message>
        <source>Readings that became extra ones, judged doubtful: %1. A reading written later stands at their hour, and what withdrew or moved them is lost: withdraw them or give them another hour.</source>
        <translation>Relevés devenus hors heure, jugés douteux&#xa0;: %1. Un relevé écrit plus tard est à leur heure, et ce qui les a retirés ou déplacés est perdu&#xa0;: les retirer ou leur donner une autre heure.</translation>
    </message>
    <message>
        <source>The station&apos;s name is lost: enter it, and what else is missing, on the pages Station and Instruments.</source>
        <translation>Le nom de la station est perdu&#xa0;: l’inscrire, avec ce qui manque encore, sur les pages Station et Instruments.</translation>
    </message>
    <message>
        <source>%1 of %2 pages of the file could not be read as what they should be.</source>
        <translation>%1 pages sur %2 du fichier n’ont pu être lues comme ce qu’elles devraient être.</translation>
    </message>
    <message>
        <source>A write that had been interrupted was taken back, as opening the book would have done.</source>
        <translation>Une écriture interrompue a été reprise, comme l’ouverture du livre l’aurait fait.</translation>
    </message>
</context>
<context>
    <name>SheetText</name>
    <message>
        <source>One bulb is missing.</source>
        <translation>Un thermomètre manque.</translation>
    </message>
    <message>
        <source>Number</source>
        <translation>Numéro</translation>
    </message>
    <message>
        <source>Dry %1</source>
        <translation>Sec %1</translation>
    </message>
    <message>
        <source>Wet %1</source>
        <translation>Mouillé %1</translation>
    </message>
    <message>
        <source>Dry less wet</source>
        <translation>Sec moins mouillé</translation>
    </message>
    <message>
        <source>Humidity</source>
        <translation>Humidité</translation>
    </message>
    <message>
        <source>What I notice</source>
        <translation>Ce que je remarque</translation>
    </message>
    <message>
        <source>Dry</source>
        <translation>Sec</translation>
    </message>
    <message>
        <source>Relative humidity in %, ice on the wick</source>
        <translation>Humidité relative en&#xa0;%, glace sur la mousseline</translation>
    </message>
    <message>
        <source>Relative humidity in %</source>
        <translation>Humidité relative en&#xa0;%</translation>
    </message>
    <message>
        <source>Down: the dry bulb in %1. Across: dry less wet in %1. Where your row and your column meet stands the humidity.</source>
        <translation>Vers le bas&#xa0;: le sec en %1. En travers&#xa0;: sec moins mouillé en %1. Où la ligne et la colonne se rencontrent se trouve l’humidité.</translation>
    </message>
    <message>
        <source>Answers</source>
        <translation>Réponses</translation>
    </message>
    <message>
        <source>Questions</source>
        <translation>Questions</translation>
    </message>
    <message>
        <source>The middle value stays where it is when a few go wrong; the mean would move with them. Pairs differ because thermometers, wicks, places and eyes do.</source>
        <translation>La valeur médiane reste où elle est quand quelques-unes sont fausses&#xa0;; la moyenne bougerait avec elles. Les couples diffèrent parce que thermomètres, mousselines, lieux et yeux diffèrent.</translation>
    </message>
    <message>
        <source>1. Write all humidities in order, lowest first. Which one stands in the middle?</source>
        <translation>1. Écrire toutes les humidités dans l’ordre, la plus basse d’abord. Laquelle est au milieu&#xa0;?</translation>
    </message>
    <message>
        <source>2. Between which two values does the middle half of the class lie?</source>
        <translation>2. Entre quelles deux valeurs se trouve la moitié centrale de la classe&#xa0;?</translation>
    </message>
    <message>
        <source>3. Whose pair is far from the others? What may have happened? How would you find out?</source>
        <translation>3. À qui est le couple loin des autres&#xa0;? Qu’a-t-il pu arriver&#xa0;? Comment le découvrir&#xa0;?</translation>
    </message>
    <message>
        <source>4. Compare the mean with the middle value. Which of them moves when one wick is dry?</source>
        <translation>4. Comparer la moyenne et la médiane. Laquelle bouge quand une mousseline est sèche&#xa0;?</translation>
    </message>
    <message>
        <source>How damp is the air? Answers</source>
        <translation>L’air est-il humide&#xa0;? Réponses</translation>
    </message>
    <message>
        <source>How damp is the air? Work sheet</source>
        <translation>L’air est-il humide&#xa0;? Feuille d’exercices</translation>
    </message>
    <message>
        <source>Date ____________   Time ____________   Place ______________________________</source>
        <translation>Date ____________   Heure ____________   Lieu ______________________________</translation>
    </message>
    <message>
        <source>All read the same air at the same time. Wet the wick, move air past the bulbs until the wet one falls no further, read the wet bulb first and tenths before whole degrees. Write down what you read, also when it looks odd. You are a number here, not a name.</source>
        <translation>Tous lisent le même air au même moment. Humecter la mousseline, faire passer l’air sur les thermomètres jusqu’à ce que le mouillé ne baisse plus, lire le mouillé d’abord et les dixièmes avant les degrés. Écrire ce qui est lu, même si cela paraît étrange. Ici on est un numéro, pas un nom.</translation>
    </message>
    <message>
        <source>Table and answers hold for this instrument (%1) and %2 hPa.</source>
        <translation>Table et réponses valent pour cet instrument (%1) et %2&#xa0;hPa.</translation>
    </message>
</context>
<context>
    <name>SheetWords</name>
    <message>
        <source>Before printing · %1</source>
        <translation>Avant l’impression · %1</translation>
    </message>
    <message>
        <source>Sent to the printer.</source>
        <translation>Envoyé à l’imprimante.</translation>
    </message>
    <message>
        <source>The printer took nothing: look whether it is on, and try again.</source>
        <translation>L’imprimante n’a rien pris&#xa0;: regarder si elle est allumée, et réessayer.</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>Written to %1.</source>
        <translation>Écrit dans %1.</translation>
    </message>
</context>
<context>
    <name>SigningText</name>
    <message>
        <source>expected</source>
        <translation>attendus</translation>
    </message>
    <message>
        <source>counted (n)</source>
        <translation>comptés (n)</translation>
    </message>
    <message>
        <source>missing</source>
        <translation>manquant</translation>
    </message>
    <message>
        <source>set aside</source>
        <translation>mis de côté</translation>
    </message>
    <message>
        <source>mean dry bulb, °C</source>
        <translation>sec moyen, °C</translation>
    </message>
    <message>
        <source>mean wet bulb, °C</source>
        <translation>mouillé moyen, °C</translation>
    </message>
    <message>
        <source>mean vapour pressure, hPa</source>
        <translation>tension de vapeur moyenne, hPa</translation>
    </message>
    <message>
        <source>dew point of the mean vapour pressure, °C</source>
        <translation>point de rosée de la tension moyenne, °C</translation>
    </message>
    <message>
        <source>mean dew point, °C</source>
        <translation>point de rosée moyen, °C</translation>
    </message>
    <message>
        <source>mean relative humidity, %</source>
        <translation>humidité relative moyenne,&#xa0;%</translation>
    </message>
    <message>
        <source>highest relative humidity, %</source>
        <translation>humidité relative maximale,&#xa0;%</translation>
    </message>
    <message>
        <source>lowest relative humidity, %</source>
        <translation>humidité relative minimale,&#xa0;%</translation>
    </message>
    <message>
        <source>highest dew point, °C</source>
        <translation>point de rosée maximal, °C</translation>
    </message>
    <message>
        <source>lowest dew point, °C</source>
        <translation>point de rosée minimal, °C</translation>
    </message>
    <message>
        <source>why there is no mean</source>
        <translation>pourquoi il n’y a pas de moyenne</translation>
    </message>
    <message>
        <source>none</source>
        <translation>aucune</translation>
    </message>
    <message>
        <source>one reading revised</source>
        <translation>un relevé révisé</translation>
    </message>
    <message numerus="yes">
        <source>%n readings revised</source>
        <translation>
            <numerusform>%n relevé révisé</numerusform>
            <numerusform>%n relevés révisés</numerusform>
        </translation>
    </message>
    <message>
        <source>one reading added</source>
        <translation>un relevé ajouté</translation>
    </message>
    <message numerus="yes">
        <source>%n readings added</source>
        <translation>
            <numerusform>%n relevé ajouté</numerusform>
            <numerusform>%n relevés ajoutés</numerusform>
        </translation>
    </message>
    <message>
        <source>one reading taken out</source>
        <translation>un relevé ôté</translation>
    </message>
    <message numerus="yes">
        <source>%n readings taken out</source>
        <translation>
            <numerusform>%n relevé ôté</numerusform>
            <numerusform>%n relevés ôtés</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 %2 → %3</source>
        <extracomment>%1 a number&apos;s name, %2 and %3 its value as signed and now</extracomment>
        <translation>%1&#xa0;%2 → %3</translation>
    </message>
    <message>
        <source>at %1 %2</source>
        <translation>à %1&#xa0;%2</translation>
    </message>
    <message>
        <source>%1 more</source>
        <translation>%1 autres</translation>
    </message>
    <message>
        <source>Signed off by %1 on %2.</source>
        <extracomment>%1 initials or a name, %2 a date</extracomment>
        <translation>Visé par %1 le %2.</translation>
    </message>
    <message>
        <source>Note: %1.</source>
        <translation>Note&#xa0;: %1.</translation>
    </message>
    <message>
        <source>Queries then open: %1.</source>
        <translation>Questions alors ouvertes&#xa0;: %1.</translation>
    </message>
    <message>
        <source>Nothing has changed since.</source>
        <translation>Rien n’a changé depuis.</translation>
    </message>
    <message>
        <source>Changed since it was signed: %1.</source>
        <translation>Changé depuis le visa&#xa0;: %1.</translation>
    </message>
</context>
<context>
    <name>TakeInText</name>
    <message>
        <source>date and time</source>
        <translation>date et heure</translation>
    </message>
    <message>
        <source>date</source>
        <translation>date</translation>
    </message>
    <message>
        <source>observing hour</source>
        <translation>heure d’observation</translation>
    </message>
    <message>
        <source>clock time</source>
        <translation>heure à l’horloge</translation>
    </message>
    <message>
        <source>dry bulb</source>
        <translation>thermomètre sec</translation>
    </message>
    <message>
        <source>wet bulb</source>
        <translation>thermomètre mouillé</translation>
    </message>
    <message>
        <source>wick</source>
        <translation>mousseline</translation>
    </message>
    <message>
        <source>pressure, hPa</source>
        <translation>pression, hPa</translation>
    </message>
    <message>
        <source>weather</source>
        <translation>temps</translation>
    </message>
    <message>
        <source>wind, Beaufort</source>
        <translation>vent, Beaufort</translation>
    </message>
    <message>
        <source>maximum</source>
        <translation>maximum</translation>
    </message>
    <message>
        <source>minimum</source>
        <translation>minimum</translation>
    </message>
    <message>
        <source>note</source>
        <translation>remarque</translation>
    </message>
    <message>
        <source>observer</source>
        <translation>observateur</translation>
    </message>
    <message>
        <source>origin</source>
        <translation>origine</translation>
    </message>
    <message>
        <source>quality</source>
        <translation>qualité</translation>
    </message>
    <message>
        <source>unit of the bulbs</source>
        <translation>unité des thermomètres</translation>
    </message>
    <message>
        <source>pressure source</source>
        <translation>source de la pression</translation>
    </message>
    <message>
        <source>unit of maximum and minimum</source>
        <translation>unité du maximum et du minimum</translation>
    </message>
    <message>
        <source>care of the wick</source>
        <translation>soin de la mousseline</translation>
    </message>
    <message>
        <source>whirls</source>
        <translation>passages</translation>
    </message>
    <message>
        <source>why missing</source>
        <translation>raison du manque</translation>
    </message>
    <message>
        <source>copied from paper</source>
        <translation>recopié du papier</translation>
    </message>
    <message>
        <source>paper book</source>
        <translation>livre papier</translation>
    </message>
    <message>
        <source>paper page</source>
        <translation>page papier</translation>
    </message>
    <message>
        <source>read back</source>
        <translation>collationné</translation>
    </message>
    <message>
        <source>time zone</source>
        <translation>fuseau horaire</translation>
    </message>
    <message>
        <source>offset from UTC</source>
        <translation>écart à l’UTC</translation>
    </message>
    <message>
        <source>Say above which column is the date and time, or which are the date and the hour.</source>
        <translation>Dire ci-dessus quelle colonne est la date et l’heure, ou lesquelles sont la date et l’heure d’observation.</translation>
    </message>
    <message>
        <source>Say above which column is the dry bulb and which the wet bulb.</source>
        <translation>Dire ci-dessus quelle colonne est le sec et laquelle le mouillé.</translation>
    </message>
    <message>
        <source>Two columns can&apos;t be the same: choose “left aside” for one of them.</source>
        <translation>Deux colonnes ne peuvent être la même&#xa0;: choisir «&#xa0;laissé de côté&#xa0;» pour l’une.</translation>
    </message>
    <message>
        <source>%1 has more than %2 lines, too many to be shown one by one: bring it in with the command wickbook import, or in parts.</source>
        <translation>%1 a plus de %2 lignes, trop pour les montrer une à une&#xa0;: le reprendre par la commande wickbook import, ou par parties.</translation>
    </message>
    <message>
        <source>new</source>
        <translation>nouveau</translation>
    </message>
    <message>
        <source>new, marked</source>
        <translation>nouveau, marqué</translation>
    </message>
    <message>
        <source>there already</source>
        <translation>déjà là</translation>
    </message>
    <message>
        <source>conflict: kept</source>
        <translation>conflit&#xa0;: gardé</translation>
    </message>
    <message>
        <source>conflict: revised</source>
        <translation>conflit&#xa0;: révisé</translation>
    </message>
    <message>
        <source>conflict: left out</source>
        <translation>conflit&#xa0;: laissé</translation>
    </message>
    <message>
        <source>left out</source>
        <translation>laissé</translation>
    </message>
    <message>
        <source>“%1” came twice that night, when the clocks went back: say above which is meant.</source>
        <translation>« %1&#xa0;» est venu deux fois cette nuit-là, quand les horloges ont été retardées&#xa0;: dire ci-dessus lequel vaut.</translation>
    </message>
    <message>
        <source>“%1” can be read as day and month or as month and day: say above which.</source>
        <translation>« %1&#xa0;» se lit comme jour et mois ou comme mois et jour&#xa0;: dire ci-dessus ce qui vaut.</translation>
    </message>
    <message>
        <source>The bulbs agree; the file differs in what stands beside them.</source>
        <translation>Les thermomètres s’accordent&#xa0;; le fichier diffère par ce qui est à côté.</translation>
    </message>
    <message>
        <source>The book has %1, the file %2.</source>
        <translation>Le livre a %1, le fichier %2.</translation>
    </message>
    <message>
        <source>The old one stays in the history.</source>
        <translation>L’ancien reste dans l’histoire.</translation>
    </message>
    <message>
        <source>%1 new</source>
        <translation>%1 nouveaux</translation>
    </message>
    <message>
        <source>(%1 marked)</source>
        <translation>(%1 marqués)</translation>
    </message>
    <message>
        <source>%1 there already</source>
        <translation>%1 déjà là</translation>
    </message>
    <message>
        <source>%1 in conflict with the book</source>
        <translation>%1 en conflit avec le livre</translation>
    </message>
    <message>
        <source>%1 that can&apos;t come in</source>
        <translation>%1 qui ne peuvent entrer</translation>
    </message>
    <message>
        <source>The first %1 lines of a long file</source>
        <translation>Les %1 premières lignes d’un long fichier</translation>
    </message>
    <message>
        <source>One line</source>
        <translation>Une ligne</translation>
    </message>
    <message numerus="yes">
        <source>%1 lines</source>
        <translation>
            <numerusform>%1 ligne</numerusform>
            <numerusform>%1 lignes</numerusform>
        </translation>
    </message>
    <message>
        <source>semicolon</source>
        <translation>point-virgule</translation>
    </message>
    <message>
        <source>tab</source>
        <translation>tabulation</translation>
    </message>
    <message>
        <source>comma</source>
        <translation>virgule</translation>
    </message>
</context>
<context>
    <name>TakenText</name>
    <message>
        <source>%1 is open in another window, which was brought forward: go on there.</source>
        <translation>%1 est ouvert dans une autre fenêtre, mise au premier plan&#xa0;: continuer là.</translation>
    </message>
    <message>
        <source>%1 is open in another window and can only be read here: close it there, then open it here again.</source>
        <translation>%1 est ouvert dans une autre fenêtre et ne peut qu’être lu ici&#xa0;: le fermer là, puis le rouvrir ici.</translation>
    </message>
    <message>
        <source>%1 is open on the computer %2 and can only be read here: close it there, then open it here again.</source>
        <translation>%1 est ouvert sur l’ordinateur %2 et ne peut qu’être lu ici&#xa0;: le fermer là, puis le rouvrir ici.</translation>
    </message>
</context>
<context>
    <name>TermText</name>
    <message>
        <source>drawn by a fan</source>
        <translation>ventilé</translation>
    </message>
    <message>
        <source>whirled by hand</source>
        <translation>tourné à la main (fronde)</translation>
    </message>
    <message>
        <source>sling, US practice</source>
        <translation>fronde, usage des États-Unis</translation>
    </message>
    <message>
        <source>in a louvred screen</source>
        <translation>dans un abri à persiennes</translation>
    </message>
    <message>
        <source>still air indoors</source>
        <translation>air calme, à l’intérieur</translation>
    </message>
    <message>
        <source>own coefficient</source>
        <translation>coefficient propre</translation>
    </message>
    <message>
        <source>A fan draws air past both bulbs at 2.5 m/s or more.</source>
        <translation>Un ventilateur fait passer l’air sur les deux thermomètres à 2,5&#xa0;m/s ou plus.</translation>
    </message>
    <message>
        <source>The frame is whirled by hand, 3 m/s or more at the bulbs.</source>
        <translation>Le cadre est tourné à la main, à 3&#xa0;m/s ou plus aux thermomètres.</translation>
    </message>
    <message>
        <source>A sling with the coefficient of the older US tables.</source>
        <translation>Une fronde avec le coefficient des anciennes tables américaines.</translation>
    </message>
    <message>
        <source>Both thermometers hang in a louvred screen, in natural air of about 1 m/s.</source>
        <translation>Les deux thermomètres sont dans un abri à persiennes, dans un air naturel d’environ 1&#xa0;m/s.</translation>
    </message>
    <message>
        <source>No ventilation. The humidity is only a rough guide.</source>
        <translation>Pas de ventilation. L’humidité n’est qu’une indication grossière.</translation>
    </message>
    <message>
        <source>A coefficient fitted by comparison at this station.</source>
        <translation>Un coefficient déterminé par comparaison à cette station.</translation>
    </message>
    <message>
        <source>water</source>
        <translation>eau</translation>
    </message>
    <message>
        <source>ice</source>
        <translation>glace</translation>
    </message>
    <message>
        <source>haze</source>
        <translation>brume sèche</translation>
    </message>
    <message>
        <source>mist</source>
        <translation>brume</translation>
    </message>
    <message>
        <source>fog</source>
        <translation>brouillard</translation>
    </message>
    <message>
        <source>drizzle</source>
        <translation>bruine</translation>
    </message>
    <message>
        <source>rain</source>
        <translation>pluie</translation>
    </message>
    <message>
        <source>snow</source>
        <translation>neige</translation>
    </message>
    <message>
        <source>sleet</source>
        <translation>pluie et neige mêlées</translation>
    </message>
    <message>
        <source>hail</source>
        <translation>grêle</translation>
    </message>
    <message>
        <source>thunder</source>
        <translation>orage</translation>
    </message>
    <message>
        <source>dew</source>
        <translation>rosée</translation>
    </message>
    <message>
        <source>hoar frost</source>
        <translation>gelée blanche</translation>
    </message>
    <message>
        <source>rime</source>
        <translation>givre</translation>
    </message>
    <message>
        <source>glaze</source>
        <translation>verglas</translation>
    </message>
    <message>
        <source>none</source>
        <translation>aucune</translation>
    </message>
    <message>
        <source>observed</source>
        <translation>observé</translation>
    </message>
    <message>
        <source>corrected</source>
        <translation>corrigé</translation>
    </message>
    <message>
        <source>estimated</source>
        <translation>estimé</translation>
    </message>
    <message>
        <source>missing</source>
        <translation>manquant</translation>
    </message>
    <message>
        <source>not judged</source>
        <translation>non jugé</translation>
    </message>
    <message>
        <source>sound</source>
        <translation>valable</translation>
    </message>
    <message>
        <source>doubtful</source>
        <translation>douteux</translation>
    </message>
    <message>
        <source>erroneous</source>
        <translation>erroné</translation>
    </message>
    <message>
        <source>UTC</source>
        <translation>UTC</translation>
    </message>
    <message>
        <source>standard time, all the year</source>
        <translation>l’heure normale, toute l’année</translation>
    </message>
    <message>
        <source>the clock, with summer time</source>
        <translation>l’horloge, avec l’heure d’été</translation>
    </message>
    <message>
        <source>read</source>
        <translation>lue</translation>
    </message>
    <message>
        <source>station mean</source>
        <translation>moyenne de la station</translation>
    </message>
    <message>
        <source>from elevation</source>
        <translation>d’après l’altitude</translation>
    </message>
    <message>
        <source>WMO-No. 1203</source>
        <translation>OMM-N° 1203</translation>
    </message>
    <message>
        <source>this station&apos;s rule</source>
        <translation>règle de cette station</translation>
    </message>
    <message>
        <source>No mean: %1 or more days are missing (%2).</source>
        <translation>Pas de moyenne&#xa0;: %1 jours ou plus manquent (%2).</translation>
    </message>
    <message>
        <source>No mean: %1 or more days in a row are missing (%2).</source>
        <translation>Pas de moyenne&#xa0;: %1 jours de suite ou plus manquent (%2).</translation>
    </message>
    <message>
        <source>No mean: nothing was read.</source>
        <translation>Pas de moyenne&#xa0;: rien n’a été lu.</translation>
    </message>
    <message>
        <source>invented station</source>
        <translation>station fictive</translation>
    </message>
    <message>
        <source>Whirl in clear space, away from people, walls and glasses: keep 1.5 m clear. Check the cord, the swivel and the binding first. Not in a thunderstorm, and mind the ground underfoot.</source>
        <translation>Tourner en espace dégagé, loin des gens, des murs et des verres&#xa0;: 1,5&#xa0;m de libre. Vérifier d’abord le cordon, l’émerillon et les ligatures. Pas par orage, et attention où l’on met les pieds.</translation>
    </message>
    <message>
        <source>Broken glass cuts. Spilled mercury is poisonous: leave the room, air it, use neither broom nor vacuum cleaner, and follow your local rules for disposal. Prefer spirit thermometers.</source>
        <translation>Le verre brisé coupe. Le mercure répandu est un poison&#xa0;: quitter la pièce, aérer, n’employer ni balai ni aspirateur, et suivre les règles locales pour l’éliminer. Préférer les thermomètres à alcool.</translation>
    </message>
    <message>
        <source>In frost look out for ice on the path, the ladder and the screen; in heat, for yourself.</source>
        <translation>Par gel, attention à la glace sur le chemin, l’échelle et l’abri&#xa0;; par chaleur, à vous-même.</translation>
    </message>
    <message>
        <source>These numbers serve a weather register. They are not for aviation, heat stress, spraying, burning, frost protection, food or process safety, medical or legal decisions, nor for claims of records: those need instruments and people licensed for them.</source>
        <translation>Ces nombres servent à un registre météorologique. Ils ne sont pas faits pour l’aviation, le stress thermique, les traitements, les brûlages, la protection contre le gel, la sécurité des aliments ou des procédés, des décisions médicales ou légales, ni pour attester des records&#xa0;: cela demande des instruments et des gens habilités.</translation>
    </message>
</context>
<context>
    <name>UsualText</name>
    <message>
        <source>normal of %1 years</source>
        <extracomment>%1 number of years</extracomment>
        <translation>normale de %1 ans</translation>
    </message>
    <message>
        <source>average of %1 other years</source>
        <translation>moyenne de %1 autres années</translation>
    </message>
    <message>
        <source>That is about as usual at this station (%1: %2).</source>
        <extracomment>%1 &quot;average of 12 other years&quot;, %2 a humidity</extracomment>
        <translation>C’est à peu près comme d’habitude à cette station (%1&#xa0;: %2).</translation>
    </message>
    <message>
        <source>It was drier than usual at this station (%1: %2).</source>
        <translation>C’était plus sec que d’habitude à cette station (%1&#xa0;: %2).</translation>
    </message>
    <message>
        <source>It was moister than usual at this station (%1: %2).</source>
        <translation>C’était plus humide que d’habitude à cette station (%1&#xa0;: %2).</translation>
    </message>
    <message>
        <source>It was the driest such month of this station&apos;s record (%1: %2; until now %3 with %4).</source>
        <extracomment>%1 and %2 as above, %3 a year, %4 its humidity</extracomment>
        <translation>C’était le mois le plus sec de ce nom dans la série de cette station (%1&#xa0;: %2&#xa0;; jusqu’ici %3 avec %4).</translation>
    </message>
    <message>
        <source>It was the moistest such month of this station&apos;s record (%1: %2; until now %3 with %4).</source>
        <translation>C’était le mois le plus humide de ce nom dans la série de cette station (%1&#xa0;: %2&#xa0;; jusqu’ici %3 avec %4).</translation>
    </message>
    <message>
        <source>The air held more vapour than usual: the dew point&apos;s average is %1.</source>
        <translation>L’air contenait plus de vapeur que d’habitude&#xa0;: la moyenne du point de rosée est %1.</translation>
    </message>
    <message>
        <source>The air held less vapour than usual: the dew point&apos;s average is %1.</source>
        <translation>L’air contenait moins de vapeur que d’habitude&#xa0;: la moyenne du point de rosée est %1.</translation>
    </message>
    <message>
        <source>No station average of this month yet: it takes %1 other years with a mean, at the same place and hours, and there are %2.</source>
        <translation>Pas encore de moyenne de la station pour ce mois&#xa0;: il faut %1 autres années avec une moyenne, au même lieu et aux mêmes heures, et il y en a %2.</translation>
    </message>
    <message>
        <source>RH %1</source>
        <translation>HR %1</translation>
    </message>
    <message>
        <source>dew point %1</source>
        <translation>point de rosée %1</translation>
    </message>
    <message>
        <source>vapour pressure %1 hPa</source>
        <translation>tension de vapeur %1&#xa0;hPa</translation>
    </message>
    <message>
        <source>%1 hPa</source>
        <translation>%1&#xa0;hPa</translation>
    </message>
    <message>
        <source>This month here, %1: %2.</source>
        <extracomment>%1 &quot;average of 12 other years&quot;, %2 its numbers</extracomment>
        <translation>Ce mois ici, %1&#xa0;: %2.</translation>
    </message>
    <message>
        <source>Departure: %1.</source>
        <translation>Écart&#xa0;: %1.</translation>
    </message>
</context>
<context>
    <name>WorkingTextContext</name>
    <message>
        <source>dry bulb, scale and correction</source>
        <translation>sec, échelle et correction</translation>
    </message>
    <message>
        <source>wet bulb, scale and correction</source>
        <translation>mouillé, échelle et correction</translation>
    </message>
    <message>
        <source>what the two corrections share</source>
        <translation>ce que les deux corrections ont en commun</translation>
    </message>
    <message>
        <source>coefficient of the exposure</source>
        <translation>coefficient de l’exposition</translation>
    </message>
    <message>
        <source>pressure</source>
        <translation>pression</translation>
    </message>
    <message>
        <source>%1 °C</source>
        <translation>%1&#xa0;°C</translation>
    </message>
    <message>
        <source>%1 °F, that is %2</source>
        <translation>%1&#xa0;°F, soit %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>%1: read %2 %3, correction %4 %3, so %5</source>
        <translation>%1&#xa0;: lu %2&#xa0;%3, correction %4&#xa0;%3, donc %5</translation>
    </message>
    <message>
        <source>The wet bulb stands above the dry bulb within the reading&apos;s error: the air is taken as saturated, and e is what it can hold at the dry bulb.</source>
        <translation>Le mouillé est au-dessus du sec dans l’erreur de lecture&#xa0;: l’air compte comme saturé, et e est ce qu’il peut contenir au thermomètre sec.</translation>
    </message>
    <message>
        <source>e = f·e&lt;sub&gt;w&lt;/sub&gt;(t) = %1 × %2 = &lt;b&gt;%3 hPa&lt;/b&gt;</source>
        <translation>e = f·e&lt;sub&gt;w&lt;/sub&gt;(t) = %1 × %2 = &lt;b&gt;%3 hPa&lt;/b&gt;</translation>
    </message>
    <message>
        <source>Over the wet bulb, %1 °C, %2: e&lt;sub&gt;s&lt;/sub&gt; = %3 hPa</source>
        <translation>Sur le mouillé, %1&#xa0;°C, %2&#xa0;: e&lt;sub&gt;s&lt;/sub&gt; = %3&#xa0;hPa</translation>
    </message>
    <message>
        <source>ice</source>
        <translation>glace</translation>
    </message>
    <message>
        <source>water</source>
        <translation>eau</translation>
    </message>
    <message>
        <source>e = f·e&lt;sub&gt;s&lt;/sub&gt;(t&lt;sub&gt;w&lt;/sub&gt;) − A·p·(t − t&lt;sub&gt;w&lt;/sub&gt;)</source>
        <translation>e = f·e&lt;sub&gt;s&lt;/sub&gt;(t&lt;sub&gt;m&lt;/sub&gt;) − A·p·(t − t&lt;sub&gt;m&lt;/sub&gt;)</translation>
    </message>
    <message>
        <source>e = %1 × %2 − %3 × 10⁻⁴ × %4 × (%5 − %6) = &lt;b&gt;%7 hPa&lt;/b&gt;</source>
        <translation>e = %1 × %2 − %3 × 10⁻⁴ × %4 × (%5 − %6) = &lt;b&gt;%7 hPa&lt;/b&gt;</translation>
    </message>
    <message>
        <source>Dew point: where %1 hPa would be saturation over water: %2</source>
        <translation>Point de rosée&#xa0;: où %1&#xa0;hPa seraient la saturation sur l’eau&#xa0;: %2</translation>
    </message>
    <message>
        <source>Frost point: where it would be saturation over ice: %1</source>
        <translation>Point de gelée&#xa0;: où ce serait la saturation sur la glace&#xa0;: %1</translation>
    </message>
    <message>
        <source>Dry bulb</source>
        <translation>Thermomètre sec</translation>
    </message>
    <message>
        <source>Wet bulb</source>
        <translation>Thermomètre mouillé</translation>
    </message>
    <message>
        <source>Saturated at the dry bulb, %1 °C, over water: e&lt;sub&gt;w&lt;/sub&gt; = %2 hPa</source>
        <translation>Saturé au sec, %1&#xa0;°C, sur l’eau&#xa0;: e&lt;sub&gt;w&lt;/sub&gt; = %2&#xa0;hPa</translation>
    </message>
    <message>
        <source>Relative humidity = 100 × %1 ÷ (%2 × %3) = &lt;b&gt;%4 %&lt;/b&gt;</source>
        <translation>Humidité relative = 100 × %1 ÷ (%2 × %3) = &lt;b&gt;%4&#xa0;%&lt;/b&gt;</translation>
    </message>
    <message>
        <source>each by itself (one standard uncertainty)</source>
        <translation>chacun à part (une incertitude type)</translation>
    </message>
    <message>
        <source>together, twice the root of the squares: ±</source>
        <translation>ensemble, deux fois la racine des carrés&#xa0;: ±</translation>
    </message>
    <message>
        <source>dry ↓ depression →</source>
        <translation>sec ↓ écart →</translation>
    </message>
    <message>
        <source>The same from this station&apos;s table</source>
        <translation>La même chose par la table de cette station</translation>
    </message>
    <message>
        <source>Relative humidity in %, wick as ice, at %1 hPa, degrees in %2.</source>
        <translation>Humidité relative en&#xa0;%, mousseline en glace, à %1&#xa0;hPa, degrés en %2.</translation>
    </message>
    <message>
        <source>Relative humidity in %, wick as water, at %1 hPa, degrees in %2.</source>
        <translation>Humidité relative en&#xa0;%, mousseline en eau, à %1&#xa0;hPa, degrés en %2.</translation>
    </message>
    <message>
        <source>The cell is empty: there is no air with this depression.</source>
        <translation>La cellule est vide&#xa0;: il n’y a pas d’air avec cet écart.</translation>
    </message>
    <message>
        <source>The reading&apos;s own row and column stand between the printed ones.</source>
        <translation>La ligne et la colonne du relevé sont entre celles imprimées.</translation>
    </message>
    <message>
        <source>Both bulbs are needed for the working.</source>
        <translation>Il faut les deux thermomètres pour le calcul.</translation>
    </message>
    <message>
        <source>How sure</source>
        <translation>Combien sûr</translation>
    </message>
    <message>
        <source>The working</source>
        <translation>Le calcul</translation>
    </message>
    <message>
        <source>The working: %1</source>
        <translation>Le calcul&#xa0;: %1</translation>
    </message>
</context>
<context>
    <name>YearsText</name>
    <message>
        <source>Relative humidity, %</source>
        <translation>Humidité relative,&#xa0;%</translation>
    </message>
    <message>
        <source>Dew point, %1</source>
        <translation>Point de rosée, %1</translation>
    </message>
    <message>
        <source>%1 to %2, other years: %3</source>
        <translation>%1 à %2, autres années&#xa0;: %3</translation>
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
        <translation>Humidité relative,&#xa0;%</translation>
    </message>
    <message>
        <source>Dew point, %1</source>
        <translation>Point de rosée, %1</translation>
    </message>
</context>
<context>
    <name>missing</name>
    <message>
        <source>away</source>
        <translation>absent</translation>
    </message>
    <message>
        <source>ill</source>
        <translation>malade</translation>
    </message>
    <message>
        <source>wick dry</source>
        <translation>mousseline sèche</translation>
    </message>
    <message>
        <source>broken</source>
        <translation>cassé</translation>
    </message>
    <message>
        <source>forgotten</source>
        <translation>oublié</translation>
    </message>
</context>
<context>
    <name>oldpage</name>
    <message>
        <source>Dry</source>
        <translation>Sec</translation>
    </message>
    <message>
        <source>Dry bulb as read</source>
        <translation>Sec comme lu</translation>
    </message>
    <message>
        <source>dry bulb</source>
        <translation>thermomètre sec</translation>
    </message>
    <message>
        <source>Wet</source>
        <translation>Mouillé</translation>
    </message>
    <message>
        <source>Wet bulb as read</source>
        <translation>Mouillé comme lu</translation>
    </message>
    <message>
        <source>wet bulb</source>
        <translation>thermomètre mouillé</translation>
    </message>
    <message>
        <source>Wick</source>
        <translation>Mousseline</translation>
    </message>
    <message>
        <source>Water or ice on the wick</source>
        <translation>Eau ou glace sur la mousseline</translation>
    </message>
    <message>
        <source>wick</source>
        <translation>mousseline</translation>
    </message>
    <message>
        <source>Weather</source>
        <translation>Temps</translation>
    </message>
    <message>
        <source>weather</source>
        <translation>temps</translation>
    </message>
    <message>
        <source>Wind</source>
        <translation>Vent</translation>
    </message>
    <message>
        <source>Wind, Beaufort force</source>
        <translation>Vent, force Beaufort</translation>
    </message>
    <message>
        <source>wind</source>
        <translation>vent</translation>
    </message>
    <message>
        <source>hPa</source>
        <translation>hPa</translation>
    </message>
    <message>
        <source>Pressure, hPa</source>
        <translation>Pression, hPa</translation>
    </message>
    <message>
        <source>pressure</source>
        <translation>pression</translation>
    </message>
    <message>
        <source>Max</source>
        <translation>Max</translation>
    </message>
    <message>
        <source>Maximum as read</source>
        <translation>Maximum comme lu</translation>
    </message>
    <message>
        <source>maximum</source>
        <translation>maximum</translation>
    </message>
    <message>
        <source>Min</source>
        <translation>Min</translation>
    </message>
    <message>
        <source>Minimum as read</source>
        <translation>Minimum comme lu</translation>
    </message>
    <message>
        <source>minimum</source>
        <translation>minimum</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Note</translation>
    </message>
    <message>
        <source>note</source>
        <translation>remarque</translation>
    </message>
</context>
<context>
    <name>paper</name>
    <message>
        <source>p. %1</source>
        <extracomment>page of a paper register</extracomment>
        <translation>p. %1</translation>
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
        <translation>Humidité relative et point de rosée aux heures d’observation</translation>
    </message>
</context>
<context>
    <name>settings</name>
    <message>
        <source>What the window remembers (%1) can&apos;t be read, nor put aside: books are not concerned, but the window begins with its usual settings. Delete the file.</source>
        <translation>Ce dont la fenêtre se souvient (%1) ne peut être ni lu ni mis de côté&#xa0;: les livres ne sont pas concernés, mais la fenêtre commence avec les réglages habituels. Supprimer le fichier.</translation>
    </message>
    <message>
        <source>What the window remembers (%1) could not be read and was put aside: books are not concerned. The window begins with its usual settings; open the book again.</source>
        <translation>Ce dont la fenêtre se souvient (%1) n’a pu être lu et a été mis de côté&#xa0;: les livres ne sont pas concernés. La fenêtre commence avec les réglages habituels&#xa0;; rouvrir le livre.</translation>
    </message>
</context>
<context>
    <name>text</name>
    <message>
        <source>below scale</source>
        <translation>sous l’échelle</translation>
    </message>
    <message>
        <source>%1 h</source>
        <extracomment>%1 is an hour of the day, 9 or 9:30; &quot;h&quot; as in a register&apos;s column head</extracomment>
        <translation>%1&#xa0;h</translation>
    </message>
    <message>
        <source>dddd d MMMM yyyy</source>
        <extracomment>day of the week, day, month and year, in Qt&apos;s date format</extracomment>
        <translation>dddd d MMMM yyyy</translation>
    </message>
    <message>
        <source>d MMM</source>
        <extracomment>day and short month, in Qt&apos;s date format</extracomment>
        <translation>d MMM</translation>
    </message>
    <message>
        <source>d MMM yyyy</source>
        <extracomment>day, short month and year, in Qt&apos;s date format</extracomment>
        <translation>d MMM yyyy</translation>
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
        <translation>Absence</translation>
    </message>
    <message>
        <source>Change an absence</source>
        <translation>Changer une absence</translation>
    </message>
    <message>
        <source>An absence ahead</source>
        <translation>Une absence à venir</translation>
    </message>
    <message>
        <source>Without a deputy, hours missed on these days have their reason by themselves. A reading made all the same counts as always.</source>
        <translation>Sans remplaçant, les heures manquées ces jours-là ont d’elles-mêmes leur raison. Un relevé fait tout de même compte comme toujours.</translation>
    </message>
    <message>
        <source>First day, year-month-day</source>
        <translation>Premier jour, année-mois-jour</translation>
    </message>
    <message>
        <source>Last day</source>
        <translation>Dernier jour</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Pourquoi</translation>
    </message>
    <message>
        <source>nobody</source>
        <translation>personne</translation>
    </message>
    <message>
        <source>Who reads meanwhile, initials</source>
        <translation>Qui lit pendant ce temps, initiales</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Note</translation>
    </message>
    <message>
        <source>Keep it</source>
        <translation>Garder</translation>
    </message>
    <message>
        <source>Put the last day on or after the first; it lies before it.</source>
        <translation>Placer le dernier jour au premier ou après&#xa0;; il est avant.</translation>
    </message>
    <message>
        <source>Choose a reason or write one in your own words.</source>
        <translation>Choisir une raison ou en écrire une avec vos mots.</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::AbsenceSection</name>
    <message>
        <source>&amp;Absences and deputies</source>
        <translation>&amp;Absences et remplaçants</translation>
    </message>
    <message>
        <source>An absence a&amp;head…</source>
        <translation>Une a&amp;bsence à venir…</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 à %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>nobody reads</source>
        <translation>personne ne lit</translation>
    </message>
    <message>
        <source>%1 reads</source>
        <translation>%1 lit</translation>
    </message>
    <message>
        <source>No absence is written down. Enter one ahead, with whoever reads meanwhile: then the gap has its reason.</source>
        <translation>Aucune absence n’est inscrite. En inscrire une d’avance, avec qui lit pendant ce temps&#xa0;: la lacune a alors sa raison.</translation>
    </message>
    <message>
        <source>absence changed: %1</source>
        <translation>absence changée&#xa0;: %1</translation>
    </message>
    <message>
        <source>absence: %1</source>
        <translation>absence&#xa0;: %1</translation>
    </message>
    <message>
        <source>Kept. Undo takes it back.</source>
        <translation>Gardé. Annuler le reprend.</translation>
    </message>
    <message>
        <source>absence taken back: %1</source>
        <translation>absence reprise&#xa0;: %1</translation>
    </message>
    <message>
        <source>Taken back. Undo brings it again.</source>
        <translation>Repris. Annuler le ramène.</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::AnswerPanel</name>
    <message>
        <source>frost point %1 %2</source>
        <translation>point de gelée %1&#xa0;%2</translation>
    </message>
    <message>
        <source>vapour pressure %1 hPa</source>
        <translation>tension de vapeur %1&#xa0;hPa</translation>
    </message>
    <message>
        <source>depression %1 %2</source>
        <translation>écart %1&#xa0;%2</translation>
    </message>
    <message>
        <source>deficit %1 hPa</source>
        <translation>déficit %1&#xa0;hPa</translation>
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
        <translation>, coefficient %1</translation>
    </message>
    <message>
        <source>pressure %1 hPa as read</source>
        <translation>pression %1&#xa0;hPa comme lue</translation>
    </message>
    <message>
        <source>pressure %1 hPa, the station&apos;s mean</source>
        <translation>pression %1&#xa0;hPa, moyenne de la station</translation>
    </message>
    <message>
        <source>pressure %1 hPa worked out from %2 m</source>
        <translation>pression %1&#xa0;hPa calculée de %2&#xa0;m</translation>
    </message>
    <message>
        <source>Relative humidity</source>
        <translation>Humidité relative</translation>
    </message>
    <message>
        <source>Dew point</source>
        <translation>Point de rosée</translation>
    </message>
    <message>
        <source>Show the working</source>
        <translation>Montrer le calcul</translation>
    </message>
    <message>
        <source>Relative humidity %1 %2</source>
        <translation>Humidité relative %1&#xa0;%2</translation>
    </message>
    <message>
        <source>Dew point %1 %2 %3</source>
        <translation>Point de rosée %1&#xa0;%2&#xa0;%3</translation>
    </message>
    <message>
        <source>Relative humidity: none yet</source>
        <translation>Humidité relative&#xa0;: pas encore</translation>
    </message>
    <message>
        <source>Dew point: none yet</source>
        <translation>Point de rosée&#xa0;: pas encore</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::BesideDialog</name>
    <message>
        <source>The clock never showed that time: it was put forward. Look at “%1”.</source>
        <translation>L’horloge n’a jamais montré cette heure&#xa0;: elle a été avancée. Regarder « %1&#xa0;».</translation>
    </message>
    <message>
        <source>That time is still to come. Look at date and time.</source>
        <translation>Cette heure est encore à venir. Regarder la date et l’heure.</translation>
    </message>
    <message>
        <source>%1 is not a relative humidity in per cent.</source>
        <translation>%1 n’est pas une humidité relative en pour cent.</translation>
    </message>
    <message>
        <source>Write what the other instrument showed: its humidity, or both its bulbs.</source>
        <translation>Écrire ce que montrait l’autre instrument&#xa0;: son humidité, ou ses deux thermomètres.</translation>
    </message>
    <message>
        <source>Write both bulbs of the station&apos;s pair, or neither: then the register&apos;s reading counts.</source>
        <translation>Écrire les deux thermomètres de la station, ou aucun&#xa0;: le relevé du registre compte alors.</translation>
    </message>
    <message>
        <source>Wind is a whole number from 0 to 12, as Beaufort has it.</source>
        <translation>Le vent est un nombre entier de 0 à 12, selon Beaufort.</translation>
    </message>
    <message>
        <source>reading of another instrument</source>
        <translation>relevé d’un autre instrument</translation>
    </message>
    <message>
        <source>Kept.</source>
        <translation>Gardé.</translation>
    </message>
    <message>
        <source>Kept, but it takes no part yet: %1.</source>
        <translation>Gardé, mais ne compte pas encore&#xa0;: %1.</translation>
    </message>
    <message>
        <source>reading of another instrument taken back</source>
        <translation>relevé d’un autre instrument repris</translation>
    </message>
    <message>
        <source>Taken back. Undo brings it again.</source>
        <translation>Repris. Annuler le ramène.</translation>
    </message>
    <message>
        <source>Readings of the other instrument</source>
        <translation>Relevés de l’autre instrument</translation>
    </message>
    <message>
        <source>CSV files (*.csv *.txt);;All files (*)</source>
        <translation>Fichiers CSV (*.csv *.txt);;Tous les fichiers (*)</translation>
    </message>
    <message>
        <source>%1 can&apos;t be opened. Choose another file.</source>
        <translation>%1 ne peut être ouvert. Choisir un autre fichier.</translation>
    </message>
    <message>
        <source>One reading of another instrument</source>
        <translation>Un relevé d’un autre instrument</translation>
    </message>
    <message numerus="yes">
        <source>%n readings of another instrument</source>
        <translation>
            <numerusform>%n relevé d’un autre instrument</numerusform>
            <numerusform>%n relevés d’un autre instrument</numerusform>
        </translation>
    </message>
    <message>
        <source>One reading came in.</source>
        <translation>Un relevé est entré.</translation>
    </message>
    <message numerus="yes">
        <source>%n readings came in.</source>
        <translation>
            <numerusform>%n relevé est entré.</numerusform>
            <numerusform>%n relevés sont entrés.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 have no reading of the station within five minutes and were left aside.</source>
        <translation>%1 n’ont pas de relevé de la station à moins de cinq minutes et ont été laissés de côté.</translation>
    </message>
    <message>
        <source>%1 were there already.</source>
        <translation>%1 étaient déjà là.</translation>
    </message>
    <message>
        <source>%1 lines could not be read, the first: %2</source>
        <translation>%1 lignes n’ont pu être lues, la première&#xa0;: %2</translation>
    </message>
    <message>
        <source>own coefficient out of the comparison with %1</source>
        <translation>coefficient propre tiré de la comparaison avec %1</translation>
    </message>
    <message>
        <source>Kept. Readings are worked out afresh; undo takes it back.</source>
        <translation>Gardé. Les relevés sont recalculés&#xa0;; annuler le reprend.</translation>
    </message>
    <message>
        <source>There is no change of place or exposure yet. Write it down on the Station page, with its date, and join then.</source>
        <translation>Il n’y a encore aucun changement de lieu ou d’exposition. L’inscrire avec sa date sur la page Station, puis joindre.</translation>
    </message>
    <message>
        <source>The records are joined already.</source>
        <translation>Les séries sont déjà jointes.</translation>
    </message>
    <message>
        <source>joined</source>
        <translation>jointes</translation>
    </message>
    <message>
        <source>records joined after the overlap with %1</source>
        <translation>séries jointes après le parallèle avec %1</translation>
    </message>
    <message>
        <source>Joined: charts and averages go on across the change. Undo takes it back.</source>
        <translation>Joint&#xa0;: graphiques et moyennes passent par-dessus le changement. Annuler le reprend.</translation>
    </message>
    <message>
        <source>Beside another instrument</source>
        <translation>À côté d’un autre instrument</translation>
    </message>
    <message>
        <source>readings of the other instrument</source>
        <translation>relevés de l’autre instrument</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Quand</translation>
    </message>
    <message>
        <source>Other, RH %</source>
        <translation>Autre, HR&#xa0;%</translation>
    </message>
    <message>
        <source>Station, RH %</source>
        <translation>Station, HR&#xa0;%</translation>
    </message>
    <message>
        <source>Difference</source>
        <translation>Différence</translation>
    </message>
    <message>
        <source>Remark</source>
        <translation>Remarque</translation>
    </message>
    <message>
        <source>&amp;Bring in a file…</source>
        <translation>&amp;Lire un fichier…</translation>
    </message>
    <message>
        <source>&amp;Take back</source>
        <translation>A&amp;nnuler</translation>
    </message>
    <message>
        <source>Delete, in the table. Undo brings it again.</source>
        <translation>Suppr, dans le tableau. Annuler le ramène.</translation>
    </message>
    <message>
        <source>&amp;Use this coefficient…</source>
        <translation>Employer ce &amp;coefficient…</translation>
    </message>
    <message>
        <source>&amp;Join the records</source>
        <translation>&amp;Joindre les séries</translation>
    </message>
    <message>
        <source>The record goes on across the change of place or exposure</source>
        <translation>La série passe par-dessus le changement de lieu ou d’exposition</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Date</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Heure</translation>
    </message>
    <message>
        <source>Other: RH %</source>
        <translation>Autre&#xa0;: HR&#xa0;%</translation>
    </message>
    <message>
        <source>humidity of the other instrument</source>
        <translation>humidité de l’autre instrument</translation>
    </message>
    <message>
        <source>its air temperature</source>
        <translation>sa température de l’air</translation>
    </message>
    <message>
        <source>air temperature of the other instrument</source>
        <translation>température de l’air de l’autre instrument</translation>
    </message>
    <message>
        <source>or its dry bulb</source>
        <translation>ou son sec</translation>
    </message>
    <message>
        <source>dry bulb of the other instrument</source>
        <translation>thermomètre sec de l’autre instrument</translation>
    </message>
    <message>
        <source>its wet bulb</source>
        <translation>son mouillé</translation>
    </message>
    <message>
        <source>wet bulb of the other instrument</source>
        <translation>thermomètre mouillé de l’autre instrument</translation>
    </message>
    <message>
        <source>its wick</source>
        <translation>sa mousseline</translation>
    </message>
    <message>
        <source>Wind, Beaufort</source>
        <translation>Vent, Beaufort</translation>
    </message>
    <message>
        <source>wind</source>
        <translation>vent</translation>
    </message>
    <message>
        <source>Station: dry</source>
        <translation>Station&#xa0;: sec</translation>
    </message>
    <message>
        <source>dry bulb of the station</source>
        <translation>thermomètre sec de la station</translation>
    </message>
    <message>
        <source>wet</source>
        <translation>mouillé</translation>
    </message>
    <message>
        <source>wet bulb of the station</source>
        <translation>thermomètre mouillé de la station</translation>
    </message>
    <message>
        <source>wick</source>
        <translation>mousseline</translation>
    </message>
    <message>
        <source>Enter keeps it. Empty: the register&apos;s reading within five minutes.</source>
        <translation>Entrée le garde. Vide&#xa0;: le relevé du registre à moins de cinq minutes.</translation>
    </message>
    <message>
        <source>what the readings say</source>
        <translation>ce que disent les relevés</translation>
    </message>
    <message>
        <source>other, RH %</source>
        <translation>autre, HR&#xa0;%</translation>
    </message>
    <message>
        <source>station, RH %</source>
        <translation>station, HR&#xa0;%</translation>
    </message>
    <message>
        <source>depression, °C</source>
        <translation>écart, °C</translation>
    </message>
    <message>
        <source>station − other, RH %</source>
        <translation>station − autre, HR&#xa0;%</translation>
    </message>
    <message>
        <source>wind, Beaufort</source>
        <translation>vent, Beaufort</translation>
    </message>
    <message>
        <source>d MMM yyyy</source>
        <translation>d MMM yyyy</translation>
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
        <translation>%1 contre %2</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::ChangesPreview</name>
    <message>
        <source>what would change, month by month</source>
        <translation>ce qui changerait, mois par mois</translation>
    </message>
    <message>
        <source>Month</source>
        <translation>Mois</translation>
    </message>
    <message>
        <source>Readings</source>
        <translation>Relevés</translation>
    </message>
    <message>
        <source>RH % now</source>
        <translation>HR&#xa0;% actuelle</translation>
    </message>
    <message>
        <source>then</source>
        <translation>ensuite</translation>
    </message>
    <message>
        <source>Dew point now</source>
        <translation>P. de rosée actuel</translation>
    </message>
    <message>
        <source>Largest, % RH</source>
        <translation>Plus grand,&#xa0;% HR</translation>
    </message>
    <message>
        <source>how far the register has been looked through</source>
        <translation>où en est l’examen du registre</translation>
    </message>
    <message>
        <source>Stop looking</source>
        <translation>Cesser d’examiner</translation>
    </message>
    <message>
        <source>Stopped before the end; nothing is known of what would change.</source>
        <translation>Arrêté avant la fin&#xa0;; on ne sait rien de ce qui changerait.</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::ChartPanel</name>
    <message>
        <source>Chart of humidity and dew point</source>
        <translation>Graphique de l’humidité et du point de rosée</translation>
    </message>
    <message>
        <source>How long a time the chart shows</source>
        <translation>Quelle durée montre le graphique</translation>
    </message>
    <message>
        <source>two weeks</source>
        <translation>deux semaines</translation>
    </message>
    <message>
        <source>a month</source>
        <translation>un mois</translation>
    </message>
    <message>
        <source>a season</source>
        <translation>une saison</translation>
    </message>
    <message>
        <source>a year</source>
        <translation>une année</translation>
    </message>
    <message>
        <source>all</source>
        <translation>tout</translation>
    </message>
    <message>
        <source>as zoomed</source>
        <translation>comme agrandi</translation>
    </message>
    <message>
        <source>What the chart shows</source>
        <translation>Ce que montre le graphique</translation>
    </message>
    <message>
        <source>over time</source>
        <translation>dans le temps</translation>
    </message>
    <message>
        <source>years over one another</source>
        <translation>années superposées</translation>
    </message>
    <message>
        <source>vapour and warmth</source>
        <translation>vapeur et chaleur</translation>
    </message>
    <message>
        <source>dry and wet bulb</source>
        <translation>sec et mouillé</translation>
    </message>
    <message>
        <source>At which observing hour</source>
        <translation>À quelle heure d’observation</translation>
    </message>
    <message>
        <source>Pict&amp;ure…</source>
        <translation>I&amp;mage…</translation>
    </message>
    <message>
        <source>Save the chart as a picture, PNG or SVG (Ctrl+C copies it)</source>
        <translation>Enregistrer le graphique en image, PNG ou SVG (Ctrl+C le copie)</translation>
    </message>
    <message>
        <source>Reading the register beside the window… %1</source>
        <translation>Lecture du registre à côté de la fenêtre… %1</translation>
    </message>
    <message>
        <source>Reading the register beside the window…</source>
        <translation>Lecture du registre à côté de la fenêtre…</translation>
    </message>
    <message>
        <source>No readings here yet. They appear as they are written down.</source>
        <translation>Pas encore de relevés ici. Ils paraissent à mesure qu’ils sont notés.</translation>
    </message>
    <message>
        <source>No readings in this span. + and − zoom, Ctrl+← and Ctrl+→ move.</source>
        <translation>Pas de relevés dans cette durée. + et − agrandissent, Ctrl+← et Ctrl+→ déplacent.</translation>
    </message>
    <message>
        <source>RH %1</source>
        <translation>HR %1</translation>
    </message>
    <message>
        <source>dew point %1</source>
        <translation>point de rosée %1</translation>
    </message>
    <message>
        <source>dry %1, wet %2</source>
        <translation>sec %1, mouillé %2</translation>
    </message>
    <message>
        <source>doubtful</source>
        <translation>douteux</translation>
    </message>
    <message>
        <source>erroneous</source>
        <translation>erroné</translation>
    </message>
    <message>
        <source>%1 singled out</source>
        <translation>%1 mis en avant</translation>
    </message>
    <message>
        <source>↑ and ↓ single out a year</source>
        <translation>↑ et ↓ mettent une année en avant</translation>
    </message>
    <message>
        <source>← and → walk the readings</source>
        <translation>← et → parcourent les relevés</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <extracomment>%1 the first and %2 the last day of a chart</extracomment>
        <translation>%1 à %2</translation>
    </message>
    <message>
        <source>A picture is PNG or SVG: let the name end in .png or .svg.</source>
        <translation>Une image est PNG ou SVG&#xa0;: terminer le nom par .png ou .svg.</translation>
    </message>
    <message>
        <source>The picture could not be drawn; make the window smaller or close other programs, then try again.</source>
        <translation>L’image n’a pu être dessinée&#xa0;; réduire la fenêtre ou fermer d’autres programmes, puis réessayer.</translation>
    </message>
    <message>
        <source>The chart was written to %1.</source>
        <translation>Le graphique a été écrit dans %1.</translation>
    </message>
    <message>
        <source>The chart is on the clipboard as a picture.</source>
        <translation>Le graphique est dans le presse-papiers comme image.</translation>
    </message>
    <message>
        <source>The chart as a picture</source>
        <translation>Le graphique en image</translation>
    </message>
    <message>
        <source>PNG at print size (*.png);;SVG (*.svg)</source>
        <translation>PNG à la taille d’impression (*.png);;SVG (*.svg)</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::ClassWindow</name>
    <message>
        <source>Class round</source>
        <translation>Séance de classe</translation>
    </message>
    <message>
        <source>Many pairs of the same air, side by side. Pupils are numbers; nothing of this comes into the station&apos;s register, and it is gone when the window has been started again.</source>
        <translation>Beaucoup de couples du même air, côte à côte. Les élèves sont des numéros&#xa0;; rien de cela n’entre dans le registre de la station, et c’est parti au prochain démarrage de la fenêtre.</translation>
    </message>
    <message>
        <source>Pairs of the class</source>
        <translation>Couples de la classe</translation>
    </message>
    <message>
        <source>What the class found</source>
        <translation>Ce que la classe a trouvé</translation>
    </message>
    <message>
        <source>pressure</source>
        <translation>pression</translation>
    </message>
    <message>
        <source>&amp;Instrument</source>
        <translation>&amp;Instrument</translation>
    </message>
    <message>
        <source>&amp;Scale</source>
        <translation>É&amp;chelle</translation>
    </message>
    <message>
        <source>Rea&amp;d to</source>
        <translation>&amp;Lu à</translation>
    </message>
    <message>
        <source>&amp;Pressure</source>
        <translation>&amp;Pression</translation>
    </message>
    <message>
        <source>&amp;Print…</source>
        <translation>I&amp;mprimer…</translation>
    </message>
    <message>
        <source>&amp;Save as PDF…</source>
        <translation>&amp;Enregistrer en PDF…</translation>
    </message>
    <message>
        <source>&amp;Work sheet</source>
        <translation>&amp;Feuille d’exercices</translation>
    </message>
    <message>
        <source>Sheet with &amp;answers</source>
        <translation>Feuille avec &amp;réponses</translation>
    </message>
    <message>
        <source>&amp;Copy as table</source>
        <translation>&amp;Copier le tableau</translation>
    </message>
    <message>
        <source>Copied.</source>
        <translation>Copié.</translation>
    </message>
    <message>
        <source>Start a &amp;new round</source>
        <translation>&amp;Nouvelle séance</translation>
    </message>
    <message>
        <source>The pressure where the class stands lies between %1 and %2 hPa: read it again.</source>
        <translation>La pression là où est la classe se trouve entre %1 et %2&#xa0;hPa&#xa0;: la relire.</translation>
    </message>
    <message>
        <source>Type the first pair: dry, Enter, wet, Enter.</source>
        <translation>Taper le premier couple&#xa0;: sec, Entrée, mouillé, Entrée.</translation>
    </message>
    <message>
        <source>Save the sheet</source>
        <translation>Enregistrer la feuille</translation>
    </message>
    <message>
        <source>class-answers.pdf</source>
        <translation>classe-reponses.pdf</translation>
    </message>
    <message>
        <source>class-sheet.pdf</source>
        <translation>classe-feuille.pdf</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>The sheet could not be painted because of an error in the program: nothing was written. Please report it.</source>
        <translation>La feuille n’a pu être dessinée à cause d’une erreur du programme&#xa0;: rien n’a été écrit. Merci de la signaler.</translation>
    </message>
    <message>
        <source>Saved.</source>
        <translation>Enregistré.</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::CoefficientForm</name>
    <message>
        <source>Exposure and coefficient</source>
        <translation>Exposition et coefficient</translation>
    </message>
    <message>
        <source>How the pair is exposed from this date on</source>
        <translation>Comment le couple est exposé à partir de cette date</translation>
    </message>
    <message>
        <source>The coefficient decides what humidity a depression means. An own one comes out of a comparison at this station.</source>
        <translation>Le coefficient décide quelle humidité signifie un écart. Un coefficient propre vient d’une comparaison à cette station.</translation>
    </message>
    <message>
        <source>From, year-month-day</source>
        <translation>Depuis, année-mois-jour</translation>
    </message>
    <message>
        <source>from the beginning</source>
        <translation>depuis le début</translation>
    </message>
    <message>
        <source>The thermometers are</source>
        <translation>Les thermomètres sont</translation>
    </message>
    <message>
        <source>Own coefficient, water</source>
        <translation>Coefficient propre, eau</translation>
    </message>
    <message>
        <source>own coefficient over water</source>
        <translation>coefficient propre sur l’eau</translation>
    </message>
    <message>
        <source>× 10⁻⁴ per degree</source>
        <translation>× 10⁻⁴ par degré</translation>
    </message>
    <message>
        <source>Own coefficient, ice</source>
        <translation>Coefficient propre, glace</translation>
    </message>
    <message>
        <source>own coefficient over ice</source>
        <translation>coefficient propre sur la glace</translation>
    </message>
    <message>
        <source>× 10⁻⁴ per degree; empty: as water</source>
        <translation>× 10⁻⁴ par degré&#xa0;; vide&#xa0;: comme l’eau</translation>
    </message>
    <message>
        <source>Its uncertainty</source>
        <translation>Son incertitude</translation>
    </message>
    <message>
        <source>uncertainty of the coefficient</source>
        <translation>incertitude du coefficient</translation>
    </message>
    <message>
        <source>%, standard</source>
        <translation>%, type</translation>
    </message>
    <message>
        <source>Mean pressure</source>
        <translation>Pression moyenne</translation>
    </message>
    <message>
        <source>mean pressure</source>
        <translation>pression moyenne</translation>
    </message>
    <message>
        <source>hPa at the station; empty: from elevation</source>
        <translation>hPa à la station&#xa0;; vide&#xa0;: d’après l’altitude</translation>
    </message>
    <message>
        <source>Write the own coefficient, as in 7.99 for 7.99 × 10⁻⁴, or choose another exposure.</source>
        <translation>Écrire le coefficient propre, par exemple 7,99 pour 7,99 × 10⁻⁴, ou choisir une autre exposition.</translation>
    </message>
    <message>
        <source>A coefficient lies between 0 and 50 × 10⁻⁴ per degree; 6 to 12 is usual.</source>
        <translation>Un coefficient se trouve entre 0 et 50 × 10⁻⁴ par degré&#xa0;; 6 à 12 est habituel.</translation>
    </message>
    <message>
        <source>The uncertainty of the coefficient lies between 0 and 100 %.</source>
        <translation>L’incertitude du coefficient se trouve entre 0 et 100&#xa0;%.</translation>
    </message>
    <message>
        <source>Write the date from which it holds.</source>
        <translation>Écrire la date à partir de laquelle il vaut.</translation>
    </message>
    <message>
        <source>The mean pressure at the station lies between 500 and 1080 hPa.</source>
        <translation>La pression moyenne à la station se trouve entre 500 et 1080&#xa0;hPa.</translation>
    </message>
    <message>
        <source>Nothing differs yet from what is in force. Change a field, or close this.</source>
        <translation>Rien ne diffère encore de ce qui est en vigueur. Changer un champ, ou fermer.</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::CoefficientSection</name>
    <message>
        <source>E&amp;xposure and coefficient</source>
        <translation>E&amp;xposition et coefficient</translation>
    </message>
    <message>
        <source>From a date on…</source>
        <translation>À partir d’une date…</translation>
    </message>
    <message>
        <source>mean pressure %1 hPa</source>
        <translation>pression moyenne %1&#xa0;hPa</translation>
    </message>
    <message>
        <source>pressure from elevation again</source>
        <translation>pression de nouveau d’après l’altitude</translation>
    </message>
    <message>
        <source>From %1</source>
        <translation>Depuis %1</translation>
    </message>
    <message>
        <source>From the beginning</source>
        <translation>Depuis le début</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>How the pair is exposed is not written down.</source>
        <translation>L’exposition du couple n’est pas inscrite.</translation>
    </message>
    <message>
        <source>exposure and coefficient</source>
        <translation>exposition et coefficient</translation>
    </message>
    <message>
        <source>Kept. Readings are worked out afresh; undo takes it back.</source>
        <translation>Gardé. Les relevés sont recalculés&#xa0;; annuler le reprend.</translation>
    </message>
    <message>
        <source>The beginning can&apos;t be taken back, for the pair must hang somehow. Change it instead.</source>
        <translation>Le début ne peut être repris, car le couple doit bien être exposé d’une façon. Le changer plutôt.</translation>
    </message>
    <message>
        <source>exposure and coefficient taken back</source>
        <translation>exposition et coefficient repris</translation>
    </message>
    <message>
        <source>Taken back. Undo brings it again.</source>
        <translation>Repris. Annuler le ramène.</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::ColumnsDialog</name>
    <message>
        <source>Columns of the page</source>
        <translation>Colonnes de la page</translation>
    </message>
    <message>
        <source>Put the columns as the page in hand has them. Space switches a column on or off, Ctrl+↑ and Ctrl+↓ move it.</source>
        <translation>Mettre les colonnes comme les a la page en main. Espace met ou ôte une colonne, Ctrl+↑ et Ctrl+↓ la déplacent.</translation>
    </message>
    <message>
        <source>Columns, in the page&apos;s order</source>
        <translation>Colonnes, dans l’ordre de la page</translation>
    </message>
    <message>
        <source>&amp;Enter stops at this column</source>
        <translation>&amp;Entrée s’arrête à cette colonne</translation>
    </message>
    <message>
        <source>Move &amp;up</source>
        <translation>&amp;Monter</translation>
    </message>
    <message>
        <source>Move &amp;down</source>
        <translation>&amp;Descendre</translation>
    </message>
    <message>
        <source>Use these</source>
        <translation>Les employer</translation>
    </message>
    <message>
        <source>Leave as it was</source>
        <translation>Laisser comme avant</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::ColumnsView</name>
    <message>
        <source>the first rows of the file</source>
        <translation>les premières lignes du fichier</translation>
    </message>
    <message>
        <source>left aside</source>
        <translation>laissé de côté</translation>
    </message>
    <message>
        <source>what column %1, “%2”, is</source>
        <translation>ce qu’est la colonne %1, « %2&#xa0;»</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::CopiesSection</name>
    <message>
        <source>Chan&amp;ge…</source>
        <translation>Chan&amp;ger…</translation>
    </message>
    <message>
        <source>change where copies go</source>
        <translation>changer où vont les copies</translation>
    </message>
    <message>
        <source>&amp;Keep one every day the book has changed</source>
        <translation>&amp;En garder une chaque jour où le livre a changé</translation>
    </message>
    <message>
        <source>Without, nothing keeps a copy but you, and bringing in a register.</source>
        <translation>Sans cela, rien ne garde de copie que vous et la reprise d’un registre.</translation>
    </message>
    <message>
        <source>copies of the book</source>
        <translation>copies du livre</translation>
    </message>
    <message>
        <source>how far it is</source>
        <translation>où cela en est</translation>
    </message>
    <message>
        <source>A copy is kept every day the book has changed.</source>
        <translation>Une copie est gardée chaque jour où le livre a changé.</translation>
    </message>
    <message>
        <source>No copy is kept by itself any more: make one now and then.</source>
        <translation>Aucune copie n’est plus gardée d’elle-même&#xa0;: en faire une de temps en temps.</translation>
    </message>
    <message>
        <source>&amp;Make one now</source>
        <translation>En &amp;faire une</translation>
    </message>
    <message>
        <source>&amp;Verify it</source>
        <translation>&amp;Vérifier</translation>
    </message>
    <message>
        <source>Reads every page and the whole chain of revisions of the chosen copy.</source>
        <translation>Lit chaque page et toute la chaîne des versions de la copie choisie.</translation>
    </message>
    <message>
        <source>Verif&amp;y all</source>
        <translation>Vérifier &amp;toutes</translation>
    </message>
    <message>
        <source>Rest&amp;ore into a new book…</source>
        <translation>&amp;Restaurer dans un nouveau livre…</translation>
    </message>
    <message>
        <source>A copy to hand o&amp;n…</source>
        <translation>Une copie à d&amp;onner…</translation>
    </message>
    <message>
        <source>A verified copy for somebody else, set to be read only.</source>
        <translation>Une copie vérifiée pour quelqu’un d’autre, en lecture seule.</translation>
    </message>
    <message>
        <source>Kept and verified: “%1”.</source>
        <translation>Gardée et vérifiée&#xa0;: « %1&#xa0;».</translation>
    </message>
    <message>
        <source>One old copy gave way to newer ones.</source>
        <translation>Une ancienne copie a cédé à de plus récentes.</translation>
    </message>
    <message>
        <source>%1 old copies gave way to newer ones.</source>
        <translation>%1 anciennes copies ont cédé à de plus récentes.</translation>
    </message>
    <message>
        <source>&amp;Copies of the book: fold away</source>
        <translation>&amp;Copies du livre&#xa0;: replier</translation>
    </message>
    <message>
        <source>&amp;Copies of the book</source>
        <translation>&amp;Copies du livre</translation>
    </message>
    <message>
        <source>the last one failed</source>
        <translation>la dernière a échoué</translation>
    </message>
    <message>
        <source>last %1</source>
        <translation>dernière %1</translation>
    </message>
    <message>
        <source>holds what this book does not</source>
        <translation>contient ce que ce livre n’a pas</translation>
    </message>
    <message>
        <source>verified</source>
        <translation>vérifiée</translation>
    </message>
    <message>
        <source>does not verify: %1</source>
        <translation>non vérifiée&#xa0;: %1</translation>
    </message>
    <message>
        <source>The sample station keeps no copies: it is gone when the window closes.</source>
        <translation>La station d’exemple ne garde pas de copies&#xa0;: elle disparaît à la fermeture de la fenêtre.</translation>
    </message>
    <message>
        <source>Looking for copies…</source>
        <translation>Recherche des copies…</translation>
    </message>
    <message>
        <source>There is no copy yet.</source>
        <translation>Il n’y a pas encore de copie.</translation>
    </message>
    <message>
        <source>Last copy: %1. %2 in all. The newest of each of 7 days, 8 weeks and 24 months stay.</source>
        <translation>Dernière copie&#xa0;: %1. %2 en tout. Restent les plus récentes de 7 jours, 8 semaines et 24 mois.</translation>
    </message>
    <message>
        <source>Where: the folder “%1” beside the book</source>
        <translation>Où&#xa0;: le dossier « %1&#xa0;» à côté du livre</translation>
    </message>
    <message>
        <source>Where: %1</source>
        <translation>Où&#xa0;: %1</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Arrêter</translation>
    </message>
    <message>
        <source>Verified: %1, every page and the whole chain of revisions.</source>
        <translation>Vérifiées&#xa0;: %1, chaque page et toute la chaîne des versions.</translation>
    </message>
    <message>
        <source>%1 verified, %2 did not: keep using the others, and make one now.</source>
        <translation>%1 vérifiées, %2 non&#xa0;: continuer avec les autres, et en faire une maintenant.</translation>
    </message>
    <message>
        <source>Where copies of the book shall lie</source>
        <translation>Où placer les copies du livre</translation>
    </message>
    <message>
        <source>From now on copies go there; those made before stay where they are.</source>
        <translation>Dorénavant les copies vont là&#xa0;; celles d’avant restent où elles sont.</translation>
    </message>
    <message>
        <source>Where the copy to hand on shall lie</source>
        <translation>Où placer la copie à donner</translation>
    </message>
    <message>
        <source>%1 to read.wickbook</source>
        <translation>%1 à lire.wickbook</translation>
    </message>
    <message>
        <source>Wickbook books (*.wickbook)</source>
        <translation>Livres Wickbook (*.wickbook)</translation>
    </message>
    <message>
        <source>Making the copy…</source>
        <translation>Copie en cours…</translation>
    </message>
    <message>
        <source>“%1” is written, verified, and set to be read only.</source>
        <translation>« %1&#xa0;» est écrite, vérifiée et en lecture seule.</translation>
    </message>
    <message>
        <source>“%1” is written and verified. The disk it lies on knows no files to be read only.</source>
        <translation>« %1&#xa0;» est écrite et vérifiée. Son disque ne connaît pas la lecture seule.</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::CorrectionCurve</name>
    <message>
        <source>the correction over the scale</source>
        <translation>la correction le long de l’échelle</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::CorrectionForm</name>
    <message>
        <source>Correction</source>
        <translation>Correction</translation>
    </message>
    <message>
        <source>A thermometer&apos;s correction</source>
        <translation>La correction d’un thermomètre</translation>
    </message>
    <message>
        <source>From a certificate or the ice point: what to add at which reading. Between the points it is taken as a straight line, beyond them as the nearest. It holds until the thermometer&apos;s next one.</source>
        <translation>D’un certificat ou du point de glace&#xa0;: ce qu’il faut ajouter à quelle lecture. Entre les points, une droite&#xa0;; au-delà, le plus proche. Elle vaut jusqu’à la suivante du thermomètre.</translation>
    </message>
    <message>
        <source>Thermometer</source>
        <translation>Thermomètre</translation>
    </message>
    <message>
        <source>From, year-month-day</source>
        <translation>Depuis, année-mois-jour</translation>
    </message>
    <message>
        <source>empty: from the beginning</source>
        <translation>vide&#xa0;: depuis le début</translation>
    </message>
    <message>
        <source>At a reading of</source>
        <translation>À une lecture de</translation>
    </message>
    <message>
        <source>add</source>
        <translation>ajouter</translation>
    </message>
    <message>
        <source>Points</source>
        <translation>Points</translation>
    </message>
    <message>
        <source>Drawn</source>
        <translation>Dessin</translation>
    </message>
    <message>
        <source>standard uncertainty</source>
        <translation>incertitude type</translation>
    </message>
    <message>
        <source>degrees, standard (half of a ± for 95 %)</source>
        <translation>degrés, type (la moitié d’un ± à 95&#xa0;%)</translation>
    </message>
    <message>
        <source>Uncertainty</source>
        <translation>Incertitude</translation>
    </message>
    <message>
        <source>Where it comes from</source>
        <translation>D’où elle vient</translation>
    </message>
    <message>
        <source>certificate and number, ice point, …</source>
        <translation>certificat et numéro, point de glace, …</translation>
    </message>
    <message>
        <source>reading in line %1</source>
        <translation>lecture de la ligne %1</translation>
    </message>
    <message>
        <source>correction in line %1</source>
        <translation>correction de la ligne %1</translation>
    </message>
    <message>
        <source>A correction of %1 is that of a broken thermometer. Look at line %2.</source>
        <translation>Une correction de %1 est celle d’un thermomètre cassé. Regarder la ligne %2.</translation>
    </message>
    <message>
        <source>Two points stand at the reading %1. Leave one of them out.</source>
        <translation>Deux points sont à la lecture %1. Laisser l’un des deux.</translation>
    </message>
    <message>
        <source>Write down the thermometer first, under “Thermometers”.</source>
        <translation>Inscrire d’abord le thermomètre, sous «&#xa0;Thermomètres&#xa0;».</translation>
    </message>
    <message>
        <source>Write at least one point: a reading, and what to add to it.</source>
        <translation>Écrire au moins un point&#xa0;: une lecture, et ce qu’il faut y ajouter.</translation>
    </message>
    <message>
        <source>An uncertainty is not below zero.</source>
        <translation>Une incertitude n’est pas négative.</translation>
    </message>
    <message>
        <source>Write where the correction comes from: a certificate, an ice point.</source>
        <translation>Écrire d’où vient la correction&#xa0;: un certificat, un point de glace.</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::CorrectionSection</name>
    <message>
        <source>&amp;Corrections</source>
        <translation>&amp;Corrections</translation>
    </message>
    <message>
        <source>New correction…</source>
        <translation>Nouvelle correction…</translation>
    </message>
    <message>
        <source>from %1</source>
        <translation>depuis %1</translation>
    </message>
    <message>
        <source>from the beginning</source>
        <translation>depuis le début</translation>
    </message>
    <message>
        <source>%1, %2: %3</source>
        <translation>%1, %2&#xa0;: %3</translation>
    </message>
    <message>
        <source>, uncertainty %1</source>
        <translation>, incertitude %1</translation>
    </message>
    <message>
        <source>No correction is known; readings are used as they are read. A certificate, or the ice point, gives one.</source>
        <translation>Aucune correction connue&#xa0;; les relevés valent comme lus. Un certificat, ou le point de glace, en donne une.</translation>
    </message>
    <message>
        <source>correction of %1: %2</source>
        <translation>correction de %1&#xa0;: %2</translation>
    </message>
    <message>
        <source>Kept. What was read stays; what follows from it is worked out afresh. Undo takes it back.</source>
        <translation>Gardé. Ce qui a été lu reste&#xa0;; ce qui en découle est recalculé. Annuler le reprend.</translation>
    </message>
    <message>
        <source>correction taken back: %1</source>
        <translation>correction reprise&#xa0;: %1</translation>
    </message>
    <message>
        <source>Taken back. Undo brings it again.</source>
        <translation>Repris. Annuler le ramène.</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::DatedSection</name>
    <message>
        <source>Insert, in the list</source>
        <translation>Inser, dans la liste</translation>
    </message>
    <message>
        <source>Change…</source>
        <translation>Changer…</translation>
    </message>
    <message>
        <source>Enter, in the list</source>
        <translation>Entrée, dans la liste</translation>
    </message>
    <message>
        <source>Take back</source>
        <translation>Reprendre</translation>
    </message>
    <message>
        <source>Delete, in the list. Undo brings it again.</source>
        <translation>Suppr, dans la liste. Annuler le ramène.</translation>
    </message>
    <message>
        <source>%1: fold away</source>
        <translation>%1&#xa0;: replier</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::DiaryForm</name>
    <message>
        <source>Exposure diary</source>
        <translation>Journal du site</translation>
    </message>
    <message>
        <source>Change an entry of the diary</source>
        <translation>Changer une note du journal</translation>
    </message>
    <message>
        <source>What happened</source>
        <translation>Ce qui s’est passé</translation>
    </message>
    <message>
        <source>Nothing is worked out from it. It is for whoever asks later why the readings changed. A new place is a period: “From a date on the station differs”.</source>
        <translation>Rien n’en est calculé. C’est pour qui demandera pourquoi les relevés ont changé. Un nouveau lieu est une période&#xa0;: «&#xa0;À partir d’une date la station diffère&#xa0;».</translation>
    </message>
    <message>
        <source>Date, year-month-day</source>
        <translation>Date, année-mois-jour</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Quoi</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Note</translation>
    </message>
    <message>
        <source>Keep it</source>
        <translation>Garder</translation>
    </message>
    <message>
        <source>Write it down once it has happened; this date is still to come.</source>
        <translation>L’inscrire quand c’est arrivé&#xa0;; cette date est encore à venir.</translation>
    </message>
    <message>
        <source>Write in the note what it was.</source>
        <translation>Écrire dans la note ce que c’était.</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::DiarySection</name>
    <message>
        <source>&amp;Exposure diary</source>
        <translation>&amp;Journal du site</translation>
    </message>
    <message>
        <source>&amp;Write down…</source>
        <translation>&amp;Inscrire…</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>The diary is empty. Write down when the screen is washed or painted, snow chokes the louvres, or a hedge grows or is cut.</source>
        <translation>Le journal est vide. Y inscrire quand l’abri est lavé ou repeint, que la neige bouche les persiennes, qu’une haie pousse ou est taillée.</translation>
    </message>
    <message>
        <source>diary changed: %1, %2</source>
        <translation>journal changé&#xa0;: %1, %2</translation>
    </message>
    <message>
        <source>diary: %1, %2</source>
        <translation>journal&#xa0;: %1, %2</translation>
    </message>
    <message>
        <source>Kept. Undo takes it back.</source>
        <translation>Gardé. Annuler le reprend.</translation>
    </message>
    <message>
        <source>taken back from the diary: %1, %2</source>
        <translation>repris du journal&#xa0;: %1, %2</translation>
    </message>
    <message>
        <source>Taken back. Undo brings it again.</source>
        <translation>Repris. Annuler le ramène.</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::EndPanel</name>
    <message>
        <source>Queries of this page</source>
        <translation>Questions de cette page</translation>
    </message>
    <message>
        <source>The page&apos;s end: no queries</source>
        <translation>Fin de la page&#xa0;: aucune question</translation>
    </message>
    <message>
        <source>The page&apos;s end: one query</source>
        <translation>Fin de la page&#xa0;: une question</translation>
    </message>
    <message numerus="yes">
        <source>The page&apos;s end: %n queries</source>
        <translation>
            <numerusform>Fin de la page&#xa0;: %n question</numerusform>
            <numerusform>Fin de la page&#xa0;: %n questions</numerusform>
        </translation>
    </message>
    <message>
        <source>Esc goes back to the page.</source>
        <translation>Échap revient à la page.</translation>
    </message>
    <message>
        <source>What does the paper say?</source>
        <translation>Que dit le papier&#xa0;?</translation>
    </message>
    <message>
        <source>the paper says so: a slip of these keys</source>
        <translation>le papier dit cela&#xa0;: une méprise aux touches</translation>
    </message>
    <message>
        <source>the paper says what was typed: a slip at the time, corrected now</source>
        <translation>le papier dit ce qui a été tapé&#xa0;: une méprise d’alors, corrigée maintenant</translation>
    </message>
    <message>
        <source>neither: back to the note</source>
        <translation>ni l’un ni l’autre&#xa0;: retour à la note</translation>
    </message>
    <message>
        <source>1 to %1 answer. </source>
        <translation>1 à %1 répondent. </translation>
    </message>
    <message>
        <source>S sound, D doubtful, E erroneous. Enter goes to the line, Esc back to the page.</source>
        <translation>S valable, D douteux, E erroné. Entrée va à la ligne, Échap revient à la page.</translation>
    </message>
    <message>
        <source>Enter goes to the line, Esc back to the page.</source>
        <translation>Entrée va à la ligne, Échap revient à la page.</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::EntryForm</name>
    <message>
        <source>Whirl by whirl</source>
        <translation>Passage par passage</translation>
    </message>
    <message>
        <source>Repeats</source>
        <translation>Passages</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>Is the wick wet or frozen? W for water, I for ice.</source>
        <translation>La mousseline est-elle humide ou gelée&#xa0;? W pour eau, I pour glace.</translation>
    </message>
    <message>
        <source>As read off the scale. &lt; stands for a column that has gone into the bulb.</source>
        <translation>Comme lu sur l’échelle. &lt; vaut pour une colonne entrée dans le réservoir.</translation>
    </message>
    <message>
        <source>dry bulb</source>
        <translation>thermomètre sec</translation>
    </message>
    <message>
        <source>wet bulb</source>
        <translation>thermomètre mouillé</translation>
    </message>
    <message>
        <source>Dry bulb</source>
        <translation>Thermomètre sec</translation>
    </message>
    <message>
        <source>Wet bulb</source>
        <translation>Thermomètre mouillé</translation>
    </message>
    <message>
        <source>The beat  B</source>
        <translation>La cadence  B</translation>
    </message>
    <message>
        <source>wick</source>
        <translation>mousseline</translation>
    </message>
    <message>
        <source>water</source>
        <translation>eau</translation>
    </message>
    <message>
        <source>ice</source>
        <translation>glace</translation>
    </message>
    <message>
        <source>wick care</source>
        <translation>soin de la mousseline</translation>
    </message>
    <message>
        <source>wetted</source>
        <translation>humectée</translation>
    </message>
    <message>
        <source>new</source>
        <translation>neuve</translation>
    </message>
    <message>
        <source>Wick</source>
        <translation>Mousseline</translation>
    </message>
    <message>
        <source>Wick care</source>
        <translation>Soin de la mousseline</translation>
    </message>
    <message>
        <source>How to tell  ?</source>
        <translation>Comment savoir &#xa0;?</translation>
    </message>
    <message>
        <source>pressure</source>
        <translation>pression</translation>
    </message>
    <message>
        <source>wind, Beaufort force</source>
        <translation>vent, force Beaufort</translation>
    </message>
    <message>
        <source>observer, initials</source>
        <translation>observateur, initiales</translation>
    </message>
    <message>
        <source>maximum</source>
        <translation>maximum</translation>
    </message>
    <message>
        <source>minimum</source>
        <translation>minimum</translation>
    </message>
    <message>
        <source>note</source>
        <translation>remarque</translation>
    </message>
    <message>
        <source>Weather</source>
        <translation>Temps</translation>
    </message>
    <message>
        <source>Wind</source>
        <translation>Vent</translation>
    </message>
    <message>
        <source>Observer</source>
        <translation>Observateur</translation>
    </message>
    <message>
        <source>Pressure, hPa</source>
        <translation>Pression, hPa</translation>
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
        <translation>Note</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::EntryPanel</name>
    <message>
        <source>&amp;Dry bulb</source>
        <translation>&amp;Sec</translation>
    </message>
    <message>
        <source>&amp;Wet bulb</source>
        <translation>&amp;Mouillé</translation>
    </message>
    <message>
        <source>Wick</source>
        <translation>Mousseline</translation>
    </message>
    <message>
        <source>not given</source>
        <translation>non donné</translation>
    </message>
    <message>
        <source>Wic&amp;k</source>
        <translation>Mo&amp;usseline</translation>
    </message>
    <message>
        <source>&amp;Pressure, hPa</source>
        <translation>&amp;Pression, hPa</translation>
    </message>
    <message>
        <source>from elevation</source>
        <translation>d’après l’altitude</translation>
    </message>
    <message>
        <source>Weat&amp;her</source>
        <translation>&amp;Temps</translation>
    </message>
    <message>
        <source>fog, rime</source>
        <translation>brouillard, givre</translation>
    </message>
    <message>
        <source>W&amp;ind force</source>
        <translation>Force du &amp;vent</translation>
    </message>
    <message>
        <source>&amp;Note</source>
        <translation>&amp;Note</translation>
    </message>
    <message>
        <source>&amp;Observer</source>
        <translation>&amp;Observateur</translation>
    </message>
    <message>
        <source>es&amp;timated, not read</source>
        <translation>es&amp;timé, non lu</translation>
    </message>
    <message>
        <source>An estimate is marked, and stays out of means and extremes.</source>
        <translation>Une estimation est marquée et reste hors des moyennes et extrêmes.</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Pourquoi</translation>
    </message>
    <message>
        <source>Wh&amp;y?</source>
        <translation>Pou&amp;rquoi&#xa0;?</translation>
    </message>
    <message>
        <source>Write down</source>
        <translation>Inscrire</translation>
    </message>
    <message>
        <source>Leave as it is</source>
        <translation>Laisser tel quel</translation>
    </message>
    <message>
        <source>not needed for a first entry</source>
        <translation>inutile pour une première inscription</translation>
    </message>
    <message>
        <source>found in the pocket-book</source>
        <translation>trouvé dans le carnet</translation>
    </message>
    <message>
        <source>misread, read again on paper …</source>
        <translation>mal lu, relu sur le papier …</translation>
    </message>
    <message>
        <source>pressure</source>
        <translation>pression</translation>
    </message>
    <message>
        <source>“%1” is not a weather word. Write one of: %2.</source>
        <translation>« %1&#xa0;» n’est pas un mot du temps. Écrire l’un de&#xa0;: %2.</translation>
    </message>
    <message>
        <source>Write the wind as a Beaufort force from 0 to 12; “%1” is none.</source>
        <translation>Écrire le vent comme force Beaufort de 0 à 12&#xa0;; « %1&#xa0;» n’en est pas une.</translation>
    </message>
    <message>
        <source>dry bulb</source>
        <translation>thermomètre sec</translation>
    </message>
    <message>
        <source>wet bulb</source>
        <translation>thermomètre mouillé</translation>
    </message>
    <message>
        <source>Write at least one of the two readings. An hour without any is given a reason with M.</source>
        <translation>Écrire au moins une des deux lectures. Une heure sans aucune reçoit une raison par M.</translation>
    </message>
    <message>
        <source>Say why: what stood here first is kept, and so is the reason.</source>
        <translation>Dire pourquoi&#xa0;: ce qui était d’abord ici est gardé, la raison aussi.</translation>
    </message>
    <message>
        <source>Say why, and from what it is estimated: the reason is kept.</source>
        <translation>Dire pourquoi, et d’après quoi c’est estimé&#xa0;: la raison est gardée.</translation>
    </message>
    <message>
        <source>RH %1, dew point %2 %3</source>
        <translation>HR %1, point de rosée %2&#xa0;%3</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::FactForm</name>
    <message>
        <source>Keep it</source>
        <translation>Garder</translation>
    </message>
    <message>
        <source>See what changes</source>
        <translation>Voir ce qui change</translation>
    </message>
    <message>
        <source>Looking…</source>
        <translation>Examen…</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::FindBar</name>
    <message>
        <source>Find in the whole register</source>
        <translation>Chercher dans tout le registre</translation>
    </message>
    <message>
        <source>a word, a number, a date</source>
        <translation>un mot, un nombre, une date</translation>
    </message>
    <message>
        <source>Find in the whole re&amp;gister</source>
        <translation>Chercher dans tout le re&amp;gistre</translation>
    </message>
    <message>
        <source>Before</source>
        <translation>Avant</translation>
    </message>
    <message>
        <source>Find the one before (Shift+F3)</source>
        <translation>Chercher le précédent (Maj+F3)</translation>
    </message>
    <message>
        <source>Next</source>
        <translation>Suivant</translation>
    </message>
    <message>
        <source>Find the next one (F3)</source>
        <translation>Chercher le suivant (F3)</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Arrêter</translation>
    </message>
    <message>
        <source>Stop looking (Esc)</source>
        <translation>Cesser de chercher (Échap)</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Fermer</translation>
    </message>
    <message>
        <source>Close the search (Esc)</source>
        <translation>Fermer la recherche (Échap)</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::FirstStartPage</name>
    <message>
        <source>A register for a dry and a wet bulb</source>
        <translation>Un registre pour un thermomètre sec et un mouillé</translation>
    </message>
    <message>
        <source>Write down what the two thermometers say; relative humidity and dew point are worked out, with how sure they are.</source>
        <translation>Noter ce que disent les deux thermomètres&#xa0;; l’humidité relative et le point de rosée sont calculés, avec leur incertitude.</translation>
    </message>
    <message>
        <source>Save &amp;what can be read…</source>
        <translation>Sauver ce qui est &amp;lisible…</translation>
    </message>
    <message>
        <source>&amp;Start a station</source>
        <translation>&amp;Commencer une station</translation>
    </message>
    <message>
        <source>A new book: name, place, observing hours, thermometers. One page.</source>
        <translation>Un nouveau livre&#xa0;: nom, lieu, heures, thermomètres. Une page.</translation>
    </message>
    <message>
        <source>&amp;Open a book</source>
        <translation>&amp;Ouvrir un livre</translation>
    </message>
    <message>
        <source>A register kept with this program before.</source>
        <translation>Un registre tenu avec ce programme.</translation>
    </message>
    <message>
        <source>&amp;Look around in the sample station</source>
        <translation>&amp;Regarder la station d’exemple</translation>
    </message>
    <message>
        <source>A copy of an invented station with two years of readings. Nothing there can be spoilt.</source>
        <translation>Une copie d’une station fictive avec deux ans de relevés. Rien ne peut s’y gâter.</translation>
    </message>
    <message>
        <source>Opened before</source>
        <translation>Ouverts auparavant</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::FittingForm</name>
    <message>
        <source>The pair in use</source>
        <translation>Le couple en service</translation>
    </message>
    <message>
        <source>Which thermometers hang from this date on</source>
        <translation>Quels thermomètres sont suspendus à partir de cette date</translation>
    </message>
    <message>
        <source>Write down every exchange, also when the two swap their places.</source>
        <translation>Inscrire chaque échange, même quand les deux changent de place.</translation>
    </message>
    <message>
        <source>From, year-month-day</source>
        <translation>Depuis, année-mois-jour</translation>
    </message>
    <message>
        <source>from the beginning</source>
        <translation>depuis le début</translation>
    </message>
    <message>
        <source>Dry bulb</source>
        <translation>Thermomètre sec</translation>
    </message>
    <message>
        <source>Wet bulb</source>
        <translation>Thermomètre mouillé</translation>
    </message>
    <message>
        <source>Write the date from which they hang there.</source>
        <translation>Écrire la date à partir de laquelle ils y sont.</translation>
    </message>
    <message>
        <source>Write down the thermometers first, under “Thermometers”.</source>
        <translation>Inscrire d’abord les thermomètres, sous «&#xa0;Thermomètres&#xa0;».</translation>
    </message>
    <message>
        <source>One thermometer can&apos;t be both bulbs. Choose another for one of them.</source>
        <translation>Un thermomètre ne peut être les deux. En choisir un autre pour l’un d’eux.</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::FittingSection</name>
    <message>
        <source>The pair &amp;in use</source>
        <translation>Le couple en &amp;service</translation>
    </message>
    <message>
        <source>From a date on…</source>
        <translation>À partir d’une date…</translation>
    </message>
    <message>
        <source>From %1</source>
        <translation>Depuis %1</translation>
    </message>
    <message>
        <source>From the beginning</source>
        <translation>Depuis le début</translation>
    </message>
    <message>
        <source>%1: dry %2, wet %3</source>
        <translation>%1&#xa0;: sec %2, mouillé %3</translation>
    </message>
    <message>
        <source>It is not written down which thermometer hangs where.</source>
        <translation>Il n’est pas inscrit quel thermomètre est où.</translation>
    </message>
    <message>
        <source>pair in use: dry %1, wet %2</source>
        <translation>couple en service&#xa0;: sec %1, mouillé %2</translation>
    </message>
    <message>
        <source>Kept. Readings are worked out afresh; undo takes it back.</source>
        <translation>Gardé. Les relevés sont recalculés&#xa0;; annuler le reprend.</translation>
    </message>
    <message>
        <source>pair in use taken back</source>
        <translation>couple en service repris</translation>
    </message>
    <message>
        <source>This pair, as if it had never hung there</source>
        <translation>Ce couple, comme s’il n’y avait jamais été</translation>
    </message>
    <message>
        <source>Taken back. Undo brings it again.</source>
        <translation>Repris. Annuler le ramène.</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::FortnightChart</name>
    <message>
        <source>Relative humidity of the last two weeks</source>
        <translation>Humidité relative des deux dernières semaines</translation>
    </message>
    <message>
        <source>readings shown: %1</source>
        <translation>relevés montrés&#xa0;: %1</translation>
    </message>
    <message>
        <source>Nothing written down in these two weeks yet.</source>
        <translation>Rien n’a encore été noté dans ces deux semaines.</translation>
    </message>
    <message>
        <source>% RH, hollow: doubtful</source>
        <translation>% HR, creux&#xa0;: douteux</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::HelpReader</name>
    <message>
        <source>Help page</source>
        <translation>Page d’aide</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::HelpWindow</name>
    <message>
        <source>Help</source>
        <translation>Aide</translation>
    </message>
    <message>
        <source>Look for a word</source>
        <translation>Chercher un mot</translation>
    </message>
    <message>
        <source>Contents</source>
        <translation>Table des matières</translation>
    </message>
    <message>
        <source>&amp;Back</source>
        <translation>&amp;Retour</translation>
    </message>
    <message>
        <source>&amp;Close</source>
        <translation>&amp;Fermer</translation>
    </message>
    <message>
        <source>No page has these words. Try fewer or shorter ones.</source>
        <translation>Aucune page n’a ces mots. En essayer moins ou de plus courts.</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::HistoryPanel</name>
    <message>
        <source>Every revision of this line</source>
        <translation>Chaque version de cette ligne</translation>
    </message>
    <message>
        <source>written again as it was</source>
        <translation>récrit tel quel</translation>
    </message>
    <message>
        <source>why: %1</source>
        <translation>pourquoi&#xa0;: %1</translation>
    </message>
    <message>
        <source>Choose a line to see what it has been through.</source>
        <translation>Choisir une ligne pour voir ce qui lui est arrivé.</translation>
    </message>
    <message>
        <source>This hour is still to come.</source>
        <translation>Cette heure est encore à venir.</translation>
    </message>
    <message>
        <source>Nothing was written down for this hour. Enter writes down a forgotten reading, M says why there is none.</source>
        <translation>Rien n’a été noté pour cette heure. Entrée inscrit un relevé oublié, M dit pourquoi il n’y en a pas.</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::HourChooser</name>
    <message>
        <source>frost is likely: wet the wick now and touch it with ice; hang the frame out in the shade, look at the columns</source>
        <translation>gel probable&#xa0;: humecter la mousseline maintenant et la toucher avec de la glace&#xa0;; suspendre le cadre dehors à l’ombre, regarder les colonnes</translation>
    </message>
    <message>
        <source>hang the frame out in the shade, look at the wick and the columns</source>
        <translation>suspendre le cadre dehors à l’ombre, regarder la mousseline et les colonnes</translation>
    </message>
    <message>
        <source>frost is likely: take the reservoir away and brush a little ice-cold water on the wick now; look at the columns</source>
        <translation>gel probable&#xa0;: ôter le réservoir d’eau et passer maintenant un peu d’eau glacée sur la mousseline&#xa0;; regarder les colonnes</translation>
    </message>
    <message>
        <source>frost is likely: wet the wick now; look at the wick and the columns</source>
        <translation>gel probable&#xa0;: humecter la mousseline maintenant&#xa0;; regarder mousseline et colonnes</translation>
    </message>
    <message>
        <source>look at the wick and the columns</source>
        <translation>regarder la mousseline et les colonnes</translation>
    </message>
    <message>
        <source>now %1</source>
        <translation>il est %1</translation>
    </message>
    <message>
        <source>the wick is %1 days old</source>
        <translation>la mousseline a %1 jours</translation>
    </message>
    <message>
        <source>whirl until the wet bulb falls no further, read the wet bulb first</source>
        <translation>tourner jusqu’à ce que le mouillé ne baisse plus, lire le mouillé d’abord</translation>
    </message>
    <message>
        <source>read the dry bulb first, tenths before whole degrees</source>
        <translation>lire le sec d’abord, les dixièmes avant les degrés</translation>
    </message>
    <message>
        <source>the hour before</source>
        <translation>l’heure d’avant</translation>
    </message>
    <message>
        <source>the hour after</source>
        <translation>l’heure d’après</translation>
    </message>
    <message>
        <source>date</source>
        <translation>date</translation>
    </message>
    <message>
        <source>observing hour</source>
        <translation>heure d’observation</translation>
    </message>
    <message>
        <source>read at, by the clock</source>
        <translation>lu à, selon l’horloge</translation>
    </message>
    <message>
        <source>Left empty: now, or for an older reading the hour itself.</source>
        <translation>Laissé vide&#xa0;: maintenant, ou pour un relevé plus ancien l’heure même.</translation>
    </message>
    <message>
        <source>which of the two</source>
        <translation>laquelle des deux</translation>
    </message>
    <message>
        <source>the first time</source>
        <translation>la première fois</translation>
    </message>
    <message>
        <source>the second time</source>
        <translation>la seconde fois</translation>
    </message>
    <message>
        <source>read at</source>
        <translation>lu à</translation>
    </message>
    <message>
        <source>an extra reading</source>
        <translation>un relevé hors heure</translation>
    </message>
    <message>
        <source>There is no such date. Write it as day, month and year.</source>
        <translation>Cette date n’existe pas. Écrire jour, mois et année.</translation>
    </message>
    <message>
        <source>Choose a date</source>
        <translation>Choisir une date</translation>
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
        <translation>Points de glace</translation>
    </message>
    <message>
        <source>Take the ice points over as corrections</source>
        <translation>Prendre les points de glace comme corrections</translation>
    </message>
    <message>
        <source>They hold from the day of the check on. A correction known before is moved as a whole, so that the ice point reads right.</source>
        <translation>Elles valent à partir du jour du contrôle. Une correction déjà connue est déplacée en bloc, de sorte que le point de glace soit juste.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1&#xa0;: %2</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::IndexTabs</name>
    <message>
        <source>Pages</source>
        <translation>Pages</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::InstrumentsPage</name>
    <message>
        <source>none written down within a year. Note it with a reading, or under “Wick and water”.</source>
        <translation>aucune notée depuis un an. La noter avec un relevé, ou sous «&#xa0;Mousseline et eau&#xa0;».</translation>
    </message>
    <message>
        <source>today</source>
        <translation>aujourd’hui</translation>
    </message>
    <message>
        <source>yesterday</source>
        <translation>hier</translation>
    </message>
    <message numerus="yes">
        <source>%n days ago</source>
        <translation>
            <numerusform>il y a %n jour</numerusform>
            <numerusform>il y a %n jours</numerusform>
        </translation>
    </message>
    <message>
        <source>Look whether it is yellow, frayed or beading.</source>
        <translation>Regarder si elle est jaune, effilochée ou si l’eau y perle.</translation>
    </message>
    <message>
        <source>Instruments</source>
        <translation>Instruments</translation>
    </message>
    <message>
        <source>the instruments</source>
        <translation>les instruments</translation>
    </message>
    <message>
        <source>Dry bulb now</source>
        <translation>Le sec actuel</translation>
    </message>
    <message>
        <source>Wet bulb now</source>
        <translation>Le mouillé actuel</translation>
    </message>
    <message>
        <source>Thermometer</source>
        <translation>Thermomètre</translation>
    </message>
    <message>
        <source>not written down; readings are used as they are read</source>
        <translation>non inscrit&#xa0;; les relevés valent comme lus</translation>
    </message>
    <message>
        <source>Correction</source>
        <translation>Correction</translation>
    </message>
    <message>
        <source>none known; readings are used as they are read</source>
        <translation>aucune connue&#xa0;; les relevés valent comme lus</translation>
    </message>
    <message>
        <source>, coefficient %1 × 10⁻⁴ per degree ± %2 %, ice %3</source>
        <translation>, coefficient %1 × 10⁻⁴ par degré ± %2&#xa0;%, glace %3</translation>
    </message>
    <message>
        <source>Exposure</source>
        <translation>Exposition</translation>
    </message>
    <message>
        <source>Pressure</source>
        <translation>Pression</translation>
    </message>
    <message>
        <source>as read; else the station&apos;s mean, %1 hPa</source>
        <translation>comme lue&#xa0;; sinon la moyenne de la station, %1&#xa0;hPa</translation>
    </message>
    <message>
        <source>as read; else from the elevation</source>
        <translation>comme lue&#xa0;; sinon d’après l’altitude</translation>
    </message>
    <message>
        <source>Last new wick</source>
        <translation>Dernière mousseline neuve</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::LetterChoice</name>
    <message>
        <source>%1: %2, key %3</source>
        <translation>%1&#xa0;: %2, touche %3</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::LimitForm</name>
    <message>
        <source>A limit of the checks</source>
        <translation>Un seuil des contrôles</translation>
    </message>
    <message>
        <source>Built in: %1 (%2). A station may have %3.</source>
        <translation>D’origine&#xa0;: %1 (%2). Une station peut avoir %3.</translation>
    </message>
    <message>
        <source>for all readings</source>
        <translation>pour tous les relevés</translation>
    </message>
    <message>
        <source>from the beginning</source>
        <translation>depuis le début</translation>
    </message>
    <message>
        <source>From, year-month-day, or empty</source>
        <translation>Depuis, année-mois-jour, ou vide</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Pourquoi</translation>
    </message>
    <message>
        <source>Each reading is judged by the limits that hold for its own date.</source>
        <translation>Chaque relevé est jugé par les seuils qui valent à sa propre date.</translation>
    </message>
    <message>
        <source>readings judged</source>
        <translation>relevés jugés</translation>
    </message>
    <message>
        <source>S&amp;top counting</source>
        <translation>Cesser de c&amp;ompter</translation>
    </message>
    <message>
        <source>Write the limit.</source>
        <translation>Écrire le seuil.</translation>
    </message>
    <message>
        <source>See what changes</source>
        <translation>Voir ce qui change</translation>
    </message>
    <message>
        <source>Judging the whole register once as it is and once as it would be.</source>
        <translation>Tout le registre est jugé une fois tel quel et une fois comme il serait.</translation>
    </message>
    <message>
        <source>Keep it</source>
        <translation>Garder</translation>
    </message>
    <message>
        <source>Not counted to the end. It can be kept all the same.</source>
        <translation>Non compté jusqu’au bout. On peut le garder quand même.</translation>
    </message>
    <message>
        <source>The limit is so already.</source>
        <translation>Le seuil est déjà ainsi.</translation>
    </message>
    <message>
        <source>Write why: the reason is kept with the limit.</source>
        <translation>Écrire pourquoi&#xa0;: la raison est gardée avec le seuil.</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::LimitsModel</name>
    <message>
        <source>the beginning</source>
        <translation>le début</translation>
    </message>
    <message>
        <source>fixed</source>
        <translation>fixe</translation>
    </message>
    <message>
        <source>as built in</source>
        <translation>d’origine</translation>
    </message>
    <message>
        <source>Source of the built-in value: %1</source>
        <translation>Source de la valeur d’origine&#xa0;: %1</translation>
    </message>
    <message>
        <source>Rule and limit</source>
        <translation>Règle et seuil</translation>
    </message>
    <message>
        <source>Built in</source>
        <translation>D’origine</translation>
    </message>
    <message>
        <source>At this station</source>
        <translation>À cette station</translation>
    </message>
    <message>
        <source>From</source>
        <translation>Depuis</translation>
    </message>
    <message>
        <source>Why (who)</source>
        <translation>Pourquoi (qui)</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::LimitsSection</name>
    <message>
        <source>limits of the checks</source>
        <translation>seuils des contrôles</translation>
    </message>
    <message>
        <source>&amp;Change this limit…</source>
        <translation>&amp;Changer ce seuil…</translation>
    </message>
    <message>
        <source>Back to the &amp;built-in value…</source>
        <translation>Revenir à la &amp;valeur d’origine…</translation>
    </message>
    <message>
        <source>history of this limit</source>
        <translation>histoire de ce seuil</translation>
    </message>
    <message>
        <source>&amp;Limits of the checks: fold away</source>
        <translation>&amp;Seuils des contrôles&#xa0;: replier</translation>
    </message>
    <message>
        <source>&amp;Limits of the checks</source>
        <translation>&amp;Seuils des contrôles</translation>
    </message>
    <message>
        <source>1 of this station&apos;s own</source>
        <translation>1 propre à cette station</translation>
    </message>
    <message numerus="yes">
        <source>%n of this station&apos;s own</source>
        <translation>
            <numerusform>%n propre à cette station</numerusform>
            <numerusform>%n propres à cette station</numerusform>
        </translation>
    </message>
    <message>
        <source>taken back</source>
        <translation>repris</translation>
    </message>
    <message>
        <source>as built in</source>
        <translation>d’origine</translation>
    </message>
    <message>
        <source>from %1 on</source>
        <translation>depuis %1</translation>
    </message>
    <message>
        <source>from the beginning</source>
        <translation>depuis le début</translation>
    </message>
    <message>
        <source>limit back to built in: %1</source>
        <translation>seuil revenu à l’origine&#xa0;: %1</translation>
    </message>
    <message>
        <source>limit changed: %1</source>
        <translation>seuil changé&#xa0;: %1</translation>
    </message>
    <message>
        <source>Kept. The readings are judged afresh; undo takes it back.</source>
        <translation>Gardé. Les relevés sont jugés à nouveau&#xa0;; annuler le reprend.</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::LinesModel</name>
    <message>
        <source>for comparison</source>
        <translation>pour comparer</translation>
    </message>
    <message>
        <source>changed</source>
        <translation>changée</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Date</translation>
    </message>
    <message>
        <source>Hour</source>
        <translation>Heure</translation>
    </message>
    <message>
        <source>Dry</source>
        <translation>Sec</translation>
    </message>
    <message>
        <source>Wet</source>
        <translation>Mouillé</translation>
    </message>
    <message>
        <source>RH</source>
        <translation>HR</translation>
    </message>
    <message>
        <source>Weather</source>
        <translation>Temps</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Note</translation>
    </message>
    <message>
        <source>Mark</source>
        <translation>Marque</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::LogDialog</name>
    <message>
        <source>Log</source>
        <translation>Journal</translation>
    </message>
    <message>
        <source>Starts and troubles, for somebody who helps you. There are no readings, names or folders in it; read it before you send it.</source>
        <translation>Démarrages et ennuis, pour qui vous aide. Il ne contient ni relevés, ni noms, ni dossiers ; le lire avant de l’envoyer.</translation>
    </message>
    <message>
        <source>Nothing is written down yet.</source>
        <translation>Rien n’est encore noté.</translation>
    </message>
    <message>
        <source>&amp;Copy</source>
        <translation>&amp;Copier</translation>
    </message>
    <message>
        <source>&amp;Save as a file…</source>
        <translation>&amp;Enregistrer en fichier…</translation>
    </message>
    <message>
        <source>C&amp;lose</source>
        <translation>&amp;Fermer</translation>
    </message>
    <message>
        <source>The log is on the clipboard.</source>
        <translation>Le journal est au presse-papiers.</translation>
    </message>
    <message>
        <source>Save the log</source>
        <translation>Enregistrer le journal</translation>
    </message>
    <message>
        <source>Text (*.txt)</source>
        <translation>Texte (*.txt)</translation>
    </message>
    <message>
        <source>The log was saved as %1.</source>
        <translation>Le journal a été enregistré sous %1.</translation>
    </message>
    <message>
        <source>The log could not be saved (%1): choose another folder.</source>
        <translation>Le journal n’a pu être enregistré (%1) : choisir un autre dossier.</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::MainWindow</name>
    <message>
        <source>Make a cop&amp;y now</source>
        <translation>Faire une cop&amp;ie</translation>
    </message>
    <message>
        <source>Res&amp;tore from a copy…</source>
        <translation>Res&amp;taurer d’une copie…</translation>
    </message>
    <message>
        <source>&amp;Book</source>
        <translation>&amp;Livre</translation>
    </message>
    <message>
        <source>&amp;New station…</source>
        <translation>&amp;Nouvelle station…</translation>
    </message>
    <message>
        <source>&amp;Open a book…</source>
        <translation>&amp;Ouvrir un livre…</translation>
    </message>
    <message>
        <source>&amp;Recent</source>
        <translation>&amp;Récents</translation>
    </message>
    <message>
        <source>&amp;Sample station</source>
        <translation>Station d’e&amp;xemple</translation>
    </message>
    <message>
        <source>&amp;Bring in a register…</source>
        <translation>Re&amp;prendre un registre…</translation>
    </message>
    <message>
        <source>Save what can be read of a &amp;damaged book…</source>
        <translation>Sauver ce qui est lisible d’un livre en&amp;dommagé…</translation>
    </message>
    <message>
        <source>On &amp;paper</source>
        <translation>Sur papie&amp;r</translation>
    </message>
    <message>
        <source>Class &amp;round…</source>
        <translation>Séance de &amp;classe…</translation>
    </message>
    <message>
        <source>&amp;Close the book</source>
        <translation>&amp;Fermer le livre</translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation>&amp;Quitter</translation>
    </message>
    <message>
        <source>&amp;Edit</source>
        <translation>É&amp;dition</translation>
    </message>
    <message>
        <source>&amp;Undo</source>
        <translation>&amp;Annuler</translation>
    </message>
    <message>
        <source>&amp;Redo</source>
        <translation>&amp;Refaire</translation>
    </message>
    <message>
        <source>&amp;Register</source>
        <translation>&amp;Registre</translation>
    </message>
    <message>
        <source>&amp;Page</source>
        <translation>&amp;Page</translation>
    </message>
    <message>
        <source>&amp;Look through the whole register…</source>
        <translation>E&amp;xaminer tout le registre…</translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation>&amp;Aide</translation>
    </message>
    <message>
        <source>&amp;Help on this page</source>
        <translation>&amp;Aide sur cette page</translation>
    </message>
    <message>
        <source>&amp;About Wickbook</source>
        <translation>À &amp;propos de Wickbook</translation>
    </message>
    <message>
        <source>&amp;Humidity table…</source>
        <translation>&amp;Table psychrométrique…</translation>
    </message>
    <message>
        <source>&amp;Month form…</source>
        <translation>&amp;Formulaire du mois…</translation>
    </message>
    <message>
        <source>&amp;Deputy&apos;s card…</source>
        <translation>&amp;Carte du remplaçant…</translation>
    </message>
    <message>
        <source>&amp;Year book…</source>
        <translation>A&amp;nnuaire…</translation>
    </message>
    <message>
        <source>From an &amp;old page…</source>
        <translation>&amp;D’une vieille page…</translation>
    </message>
    <message>
        <source>no books opened yet</source>
        <translation>aucun livre ouvert encore</translation>
    </message>
    <message>
        <source>About Wickbook</source>
        <translation>À propos de Wickbook</translation>
    </message>
    <message>
        <source>Wickbook %1

A register for a station with a dry and a wet bulb.
Free software under the GNU General Public License, version 3 or later.</source>
        <translation>Wickbook %1

Un registre pour une station à thermomètres sec et mouillé.
Logiciel libre sous la GNU General Public License, version 3 ou ultérieure.</translation>
    </message>
    <message>
        <source>Save &amp;what can be read…</source>
        <translation>Sauver ce qui est &amp;lisible…</translation>
    </message>
    <message>
        <source>Open the book first that the register is to be brought into.</source>
        <translation>Ouvrir d’abord le livre où reprendre le registre.</translation>
    </message>
    <message>
        <source>Wickbook</source>
        <translation>Wickbook</translation>
    </message>
    <message>
        <source>Help  F1</source>
        <translation>Aide  F1</translation>
    </message>
    <message>
        <source>&amp;Undo: %1</source>
        <translation>&amp;Annuler&#xa0;: %1</translation>
    </message>
    <message>
        <source>&amp;Redo: %1</source>
        <translation>&amp;Refaire&#xa0;: %1</translation>
    </message>
    <message>
        <source>The sample station needs a little room for temporary files, and there is none: %1.</source>
        <translation>La station d’exemple a besoin d’un peu de place pour des fichiers temporaires, et il n’y en a pas&#xa0;: %1.</translation>
    </message>
    <message>
        <source>invented</source>
        <translation>fictive</translation>
    </message>
    <message>
        <source>read only</source>
        <translation>lecture seule</translation>
    </message>
    <message>
        <source>&amp;First steps</source>
        <translation>&amp;Premiers pas</translation>
    </message>
    <message>
        <source>All &amp;keys</source>
        <translation>Toutes les &amp;touches</translation>
    </message>
    <message>
        <source>&amp;Cautions</source>
        <translation>Pr&amp;udence</translation>
    </message>
    <message>
        <source>&amp;Log…</source>
        <translation>&amp;Journal…</translation>
    </message>
    <message>
        <source>&amp;Settings…</source>
        <translation>Ré&amp;glages…</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::MarginStrip</name>
    <message>
        <source>kept</source>
        <translation>présent</translation>
    </message>
    <message>
        <source>doubtful</source>
        <translation>douteux</translation>
    </message>
    <message>
        <source>erroneous</source>
        <translation>erroné</translation>
    </message>
    <message>
        <source>missing, with its reason</source>
        <translation>manquant, avec sa raison</translation>
    </message>
    <message>
        <source>not written down</source>
        <translation>non noté</translation>
    </message>
    <message>
        <source>due now</source>
        <translation>dû maintenant</translation>
    </message>
    <message>
        <source>still to come</source>
        <translation>à venir</translation>
    </message>
    <message>
        <source>The last eight weeks</source>
        <translation>Les huit dernières semaines</translation>
    </message>
    <message>
        <source>%1, %2: %3</source>
        <translation>%1, %2&#xa0;: %3</translation>
    </message>
    <message>
        <source>missing: %1</source>
        <translation>manquant&#xa0;: %1</translation>
    </message>
    <message>
        <source>This station has no observing hours.</source>
        <translation>Cette station n’a pas d’heures d’observation.</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::MarginalNote</name>
    <message>
        <source>Likely causes</source>
        <translation>Causes probables</translation>
    </message>
    <message>
        <source>Enter</source>
        <translation>Entrée</translation>
    </message>
    <message>
        <source>%1, then the humidity is %2</source>
        <translation>%1, alors l’humidité est %2</translation>
    </message>
    <message>
        <source>RH %1</source>
        <translation>HR %1</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::MissingPanel</name>
    <message>
        <source>Why nothing was read</source>
        <translation>Pourquoi rien n’a été lu</translation>
    </message>
    <message>
        <source>Why was &amp;nothing read? Choose with ↓ or write your own words.</source>
        <translation>Pourquoi rien &amp;n’a-t-il été lu&#xa0;? Choisir par ↓ ou écrire vos mots.</translation>
    </message>
    <message>
        <source>Write down</source>
        <translation>Inscrire</translation>
    </message>
    <message>
        <source>Leave as it is</source>
        <translation>Laisser tel quel</translation>
    </message>
    <message>
        <source>for &amp;all %1 hours in a row, in this month</source>
        <translation>pour &amp;les %1 heures de suite, dans ce mois</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::MonthPage</name>
    <message>
        <source>Open the &amp;folder</source>
        <translation>Ouvrir le &amp;dossier</translation>
    </message>
    <message>
        <source>Open the folder of the monthly return</source>
        <translation>Ouvrir le dossier du relevé mensuel</translation>
    </message>
    <message>
        <source>The month before (Alt+←)</source>
        <translation>Le mois d’avant (Alt+←)</translation>
    </message>
    <message>
        <source>The month after (Alt+→)</source>
        <translation>Le mois d’après (Alt+→)</translation>
    </message>
    <message>
        <source>Paper of the monthly return</source>
        <translation>Papier du relevé mensuel</translation>
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
        <translation>&amp;Viser…</translation>
    </message>
    <message>
        <source>Say that the month has been looked at and stands as it is</source>
        <translation>Dire que le mois a été regardé et vaut tel quel</translation>
    </message>
    <message>
        <source>Monthly re&amp;turn…</source>
        <translation>Relevé &amp;mensuel…</translation>
    </message>
    <message>
        <source>Write the month&apos;s report, charts, tables and paragraph into a folder</source>
        <translation>Écrire le rapport, les graphiques, les tableaux et le paragraphe du mois dans un dossier</translation>
    </message>
    <message>
        <source>Pr&amp;int…</source>
        <translation>&amp;Imprimer…</translation>
    </message>
    <message>
        <source>Look at the month&apos;s pages as they will be printed</source>
        <translation>Regarder les pages du mois comme elles seront imprimées</translation>
    </message>
    <message>
        <source>All readings as CS&amp;V…</source>
        <translation>Tous les relevés en &amp;CSV…</translation>
    </message>
    <message>
        <source>Write every observation of the book into one CSV file</source>
        <translation>Écrire chaque observation du livre dans un fichier CSV</translation>
    </message>
    <message>
        <source>The month&apos;s numbers, at observing hours</source>
        <translation>Les nombres du mois, aux heures d’observation</translation>
    </message>
    <message>
        <source>Nothing has been written down in %1.</source>
        <translation>Rien n’a été noté en %1.</translation>
    </message>
    <message>
        <source>Take &amp;signing back</source>
        <translation>Reprendre le &amp;visa</translation>
    </message>
    <message>
        <source>Take the month&apos;s signing back</source>
        <translation>Reprendre le visa du mois</translation>
    </message>
    <message>
        <source>%1 signed off</source>
        <translation>%1 visé</translation>
    </message>
    <message>
        <source>%1 is signed off (Ctrl+Z undoes it).</source>
        <translation>%1 est visé (Ctrl+Z l’annule).</translation>
    </message>
    <message>
        <source>signing of %1 taken back</source>
        <translation>visa de %1 repris</translation>
    </message>
    <message>
        <source>%1 is no longer signed off (Ctrl+Z undoes it).</source>
        <translation>%1 n’est plus visé (Ctrl+Z l’annule).</translation>
    </message>
    <message>
        <source>%1 is not over: sign it off once its last hour has passed.</source>
        <translation>%1 n’est pas fini&#xa0;: le viser après sa dernière heure.</translation>
    </message>
    <message>
        <source>%1 of %2 readings at observing hours count; missing %3, set aside %4.</source>
        <translation>%1 relevés sur %2 aux heures d’observation comptent&#xa0;; manquants %3, mis de côté %4.</translation>
    </message>
    <message>
        <source>One hour is still to come.</source>
        <translation>Une heure est encore à venir.</translation>
    </message>
    <message numerus="yes">
        <source>%n hours are still to come.</source>
        <translation>
            <numerusform>%n heure est encore à venir.</numerusform>
            <numerusform>%n heures sont encore à venir.</numerusform>
        </translation>
    </message>
    <message>
        <source>The month could not be read, so nothing was written. Turn to another month and back, then try again.</source>
        <translation>Le mois n’a pu être lu, donc rien n’a été écrit. Passer à un autre mois et revenir, puis réessayer.</translation>
    </message>
    <message numerus="yes">
        <source>%n files were written into %1.</source>
        <translation>
            <numerusform>%n fichier a été écrit dans %1.</numerusform>
            <numerusform>%n fichiers ont été écrits dans %1.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 observations were written to %2.</source>
        <translation>%1 observations ont été écrites dans %2.</translation>
    </message>
    <message>
        <source>Folder for the monthly return</source>
        <translation>Dossier du relevé mensuel</translation>
    </message>
    <message>
        <source>All readings as CSV</source>
        <translation>Tous les relevés en CSV</translation>
    </message>
    <message>
        <source>CSV files (*.csv)</source>
        <translation>Fichiers CSV (*.csv)</translation>
    </message>
    <message>
        <source>The month&apos;s numbers are on the clipboard as a table.</source>
        <translation>Les nombres du mois sont au presse-papiers comme tableau.</translation>
    </message>
    <message>
        <source>Writing all readings…</source>
        <translation>Écriture de toutes les lectures…</translation>
    </message>
    <message>
        <source>&amp;Cancel</source>
        <translation>&amp;Annuler</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::MoveDialog</name>
    <message>
        <source>that month has no such day</source>
        <translation>ce mois n’a pas ce jour</translation>
    </message>
    <message>
        <source>on %1 no reading was due at that hour</source>
        <translation>le %1, aucun relevé n’était dû à cette heure</translation>
    </message>
    <message>
        <source>%1 has a reading at that hour already</source>
        <translation>%1 a déjà un relevé à cette heure</translation>
    </message>
    <message>
        <source>%1 is still to come</source>
        <translation>%1 est encore à venir</translation>
    </message>
    <message>
        <source>one line to %1</source>
        <translation>une ligne vers %1</translation>
    </message>
    <message numerus="yes">
        <source>%n lines to %1 … %2</source>
        <translation>
            <numerusform>%n ligne vers %1 … %2</numerusform>
            <numerusform>%n lignes vers %1 … %2</numerusform>
        </translation>
    </message>
    <message>
        <source>These belong to another month</source>
        <translation>Elles appartiennent à un autre mois</translation>
    </message>
    <message>
        <source>These belong elsewhere</source>
        <translation>Elles vont ailleurs</translation>
    </message>
    <message>
        <source>Lines that stay where they are</source>
        <translation>Lignes qui restent où elles sont</translation>
    </message>
    <message>
        <source>Mo&amp;ve them</source>
        <translation>&amp;Déplacer</translation>
    </message>
    <message>
        <source>Leave them here</source>
        <translation>Les laisser ici</translation>
    </message>
    <message>
        <source>&amp;Which lines</source>
        <translation>&amp;Quelles lignes</translation>
    </message>
    <message>
        <source>Which lines</source>
        <translation>Quelles lignes</translation>
    </message>
    <message>
        <source>the same days of another month</source>
        <translation>les mêmes jours d’un autre mois</translation>
    </message>
    <message>
        <source>another date</source>
        <translation>une autre date</translation>
    </message>
    <message>
        <source>another hour</source>
        <translation>une autre heure</translation>
    </message>
    <message>
        <source>Where &amp;to</source>
        <translation>&amp;Vers où</translation>
    </message>
    <message>
        <source>Where to</source>
        <translation>Vers où</translation>
    </message>
    <message>
        <source>The &amp;month they belong to (↑ ↓ change it)</source>
        <translation>Le &amp;mois où elles vont (↑ ↓ le changent)</translation>
    </message>
    <message>
        <source>The month they belong to</source>
        <translation>Le mois où elles vont</translation>
    </message>
    <message>
        <source>The &amp;date of the first line (↑ ↓ change it)</source>
        <translation>La da&amp;te de la première ligne (↑ ↓ la changent)</translation>
    </message>
    <message>
        <source>The date of the first line; the others keep their distance</source>
        <translation>La date de la première ligne&#xa0;; les autres gardent leur distance</translation>
    </message>
    <message>
        <source>the hour each line has</source>
        <translation>l’heure qu’a chaque ligne</translation>
    </message>
    <message>
        <source>&amp;Hour</source>
        <translation>&amp;Heure</translation>
    </message>
    <message>
        <source>Hour</source>
        <translation>Heure</translation>
    </message>
    <message>
        <source>written in the wrong place</source>
        <translation>écrit au mauvais endroit</translation>
    </message>
    <message>
        <source>Wh&amp;y?</source>
        <translation>Pou&amp;rquoi&#xa0;?</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Pourquoi</translation>
    </message>
    <message>
        <source>There are no such lines on this page. Choose others.</source>
        <translation>Il n’y a pas de telles lignes sur cette page. En choisir d’autres.</translation>
    </message>
    <message>
        <source>They are in this month already. Choose the month they belong to.</source>
        <translation>Elles sont déjà dans ce mois. Choisir le mois où elles vont.</translation>
    </message>
    <message>
        <source>They stand there already. Choose another date or hour.</source>
        <translation>Elles y sont déjà. Choisir une autre date ou heure.</translation>
    </message>
    <message>
        <source>No line can go to %1.</source>
        <translation>Aucune ligne ne peut aller en %1.</translation>
    </message>
    <message>
        <source>No line can go there.</source>
        <translation>Aucune ligne ne peut y aller.</translation>
    </message>
    <message>
        <source>One line goes to the same day and hour of %1.</source>
        <translation>Une ligne va au même jour et à la même heure de %1.</translation>
    </message>
    <message numerus="yes">
        <source>%n lines go to the same days and hours of %1.</source>
        <translation>
            <numerusform>%n ligne va au même jour et à la même heure de %1.</numerusform>
            <numerusform>%n lignes vont aux mêmes jours et heures de %1.</numerusform>
        </translation>
    </message>
    <message>
        <source>What would go: %1.</source>
        <extracomment>%1 &quot;14 lines to 1 Apr 2025, 9 h … 7 Apr 2025, 21 h&quot;</extracomment>
        <translation>Iraient&#xa0;: %1.</translation>
    </message>
    <message>
        <source>One stays here:</source>
        <translation>Une reste ici&#xa0;:</translation>
    </message>
    <message numerus="yes">
        <source>%n stay here:</source>
        <translation>
            <numerusform>%n reste ici&#xa0;:</numerusform>
            <numerusform>%n restent ici&#xa0;:</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 (%2 / %3) stays: %4</source>
        <translation>%1 (%2 / %3) reste&#xa0;: %4</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::NotesPanel</name>
    <message>
        <source>read right: keep it as read</source>
        <translation>bien lu&#xa0;: le garder comme lu</translation>
    </message>
    <message>
        <source>What does the paper say?</source>
        <translation>Que dit le papier&#xa0;?</translation>
    </message>
    <message>
        <source>the paper says so: it was a slip of the keys</source>
        <translation>le papier dit cela&#xa0;: c’était une méprise aux touches</translation>
    </message>
    <message>
        <source>the paper says what was typed: it was a slip at the thermometer</source>
        <translation>le papier dit ce qui a été tapé&#xa0;: c’était une méprise au thermomètre</translation>
    </message>
    <message>
        <source>neither: back to the notes</source>
        <translation>ni l’un ni l’autre&#xa0;: retour aux notes</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::ObservePage</name>
    <message>
        <source>Dry bulb</source>
        <translation>Thermomètre sec</translation>
    </message>
    <message>
        <source>Wet bulb</source>
        <translation>Thermomètre mouillé</translation>
    </message>
    <message>
        <source>&amp;Save  ⏎</source>
        <translation>&amp;Enregistrer  ⏎</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Annuler</translation>
    </message>
    <message>
        <source>Open it in the register</source>
        <translation>L’ouvrir dans le registre</translation>
    </message>
    <message>
        <source>Last two weeks</source>
        <translation>Les deux dernières semaines</translation>
    </message>
    <message>
        <source>Taken back. Ctrl+Shift+Z keeps it again.</source>
        <translation>Repris. Ctrl+Maj+Z le garde de nouveau.</translation>
    </message>
    <message>
        <source>Your unfinished entry is here again.</source>
        <translation>Votre inscription inachevée est de nouveau là.</translation>
    </message>
    <message>
        <source>as read</source>
        <translation>comme lu</translation>
    </message>
    <message>
        <source>from %1 m</source>
        <translation>pour %1 m</translation>
    </message>
    <message>
        <source>Below the scale there is no number to work with; it is kept as below scale.</source>
        <translation>Sous l’échelle il n’y a pas de nombre pour calculer&#xa0;; c’est gardé comme «&#xa0;sous l’échelle&#xa0;».</translation>
    </message>
    <message>
        <source>Saved %1: %2 / %3%4.</source>
        <translation>Enregistré %1&#xa0;: %2 / %3%4.</translation>
    </message>
    <message>
        <source>Type the dry bulb and the wet bulb first.</source>
        <translation>Taper d’abord le sec et le mouillé.</translation>
    </message>
    <message>
        <source>%1 is off the thermometer&apos;s scale, which runs from %2 to %3 %4. Read it again.</source>
        <translation>%1 est hors de l’échelle du thermomètre, qui va de %2 à %3&#xa0;%4. Relire.</translation>
    </message>
    <message>
        <source>Say first whether the wick is wet or frozen: W for water, I for ice.</source>
        <translation>Dire d’abord si la mousseline est humide ou gelée&#xa0;: W pour eau, I pour glace.</translation>
    </message>
    <message>
        <source>The dry bulb is empty. Enter again keeps the wet bulb alone, as incomplete.</source>
        <translation>Le sec est vide. Entrée encore une fois garde le mouillé seul, comme incomplet.</translation>
    </message>
    <message>
        <source>The wet bulb is empty. Enter again keeps the dry bulb alone, as incomplete.</source>
        <translation>Le mouillé est vide. Entrée encore une fois garde le sec seul, comme incomplet.</translation>
    </message>
    <message>
        <source>Enter again keeps what stands in the two bulbs.</source>
        <translation>Entrée encore une fois garde ce qui est dans les deux.</translation>
    </message>
    <message>
        <source>The margin has a note on this reading. Enter keeps it as read, Esc goes back to the field.</source>
        <translation>La marge a une note sur ce relevé. Entrée le garde comme lu, Échap revient au champ.</translation>
    </message>
    <message>
        <source>Ctrl+Z takes it back.</source>
        <translation>Ctrl+Z le reprend.</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 sur %2</translation>
    </message>
    <message>
        <source>extra reading</source>
        <translation>relevé hors heure</translation>
    </message>
    <message>
        <source>typed first: %1 / %2</source>
        <translation>tapé d’abord&#xa0;: %1 / %2</translation>
    </message>
    <message>
        <source>This hour is written down already: %1 / %2. Changes are made in the register.</source>
        <translation>Cette heure est déjà notée&#xa0;: %1 / %2. Les changements se font dans le registre.</translation>
    </message>
    <message>
        <source>The entry is still here; press Enter to try again.</source>
        <translation>L’inscription est encore là&#xa0;; Entrée essaie de nouveau.</translation>
    </message>
    <message>
        <source>&amp;Try again  ⏎</source>
        <translation>&amp;Réessayer  ⏎</translation>
    </message>
    <message>
        <source>Touch the wick with something cold and clean: ice is hard and dull, water gives and shines. A wick can stay liquid below zero and freeze with the air above it. With water the humidity would be %1, with ice %2.</source>
        <translation>Toucher la mousseline avec quelque chose de froid et propre&#xa0;: la glace est dure et mate, l’eau cède et brille. Une mousseline peut rester liquide sous zéro et geler avec un air au-dessus. En eau l’humidité serait %1, en glace %2.</translation>
    </message>
    <message>
        <source>Taken: %1. What was typed first is kept with it.</source>
        <translation>Pris&#xa0;: %1. Ce qui a été tapé d’abord est gardé avec.</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::ObserversSection</name>
    <message>
        <source>%1 of %2</source>
        <translation>%1 sur %2</translation>
    </message>
    <message>
        <source>Counting: %1 %</source>
        <translation>Comptage&#xa0;: %1&#xa0;%</translation>
    </message>
    <message>
        <source>Counting …</source>
        <translation>Comptage …</translation>
    </message>
    <message>
        <source>who has read, and how</source>
        <translation>qui a lu, et comment</translation>
    </message>
    <message>
        <source>By</source>
        <translation>Par</translation>
    </message>
    <message>
        <source>First</source>
        <translation>Premier</translation>
    </message>
    <message>
        <source>Last</source>
        <translation>Dernier</translation>
    </message>
    <message>
        <source>Readings</source>
        <translation>Relevés</translation>
    </message>
    <message>
        <source>As deputy</source>
        <translation>En remplaçant</translation>
    </message>
    <message>
        <source>Doubtful</source>
        <translation>Douteux</translation>
    </message>
    <message>
        <source>Erroneous</source>
        <translation>Erronés</translation>
    </message>
    <message>
        <source>Estimated</source>
        <translation>Estimés</translation>
    </message>
    <message>
        <source>Minutes off</source>
        <translation>Minutes d’écart</translation>
    </message>
    <message>
        <source>0 or 5, dry</source>
        <translation>0 ou 5, sec</translation>
    </message>
    <message>
        <source>0 or 5, wet</source>
        <translation>0 ou 5, mouillé</translation>
    </message>
    <message>
        <source>Favours</source>
        <translation>Préfère</translation>
    </message>
    <message>
        <source>Minutes off the hour, early and late alike. A fifth of the last digits is 0 or 5 where no digit is favoured. What changes with the initials may be the hand, not the air.</source>
        <translation>Minutes hors de l’heure, tôt et tard ensemble. Un cinquième des derniers chiffres est 0 ou 5 quand aucun n’est préféré. Ce qui change avec les initiales peut être la main, non l’air.</translation>
    </message>
    <message>
        <source>Who ha&amp;s read: fold away</source>
        <translation>Qui a &amp;lu&#xa0;: replier</translation>
    </message>
    <message>
        <source>Who ha&amp;s read, and how</source>
        <translation>Qui a &amp;lu, et comment</translation>
    </message>
    <message>
        <source>%1 (%2, %3)</source>
        <extracomment>which last digit, of which bulb, and its share</extracomment>
        <translation>%1 (%2, %3)</translation>
    </message>
    <message>
        <source>dry</source>
        <translation>sec</translation>
    </message>
    <message>
        <source>wet</source>
        <translation>mouillé</translation>
    </message>
    <message>
        <source>not written down</source>
        <translation>non noté</translation>
    </message>
    <message>
        <source>%1 (%2 late)</source>
        <translation>%1 (%2 tard)</translation>
    </message>
    <message>
        <source>%1 (%2 early)</source>
        <translation>%1 (%2 tôt)</translation>
    </message>
    <message>
        <source>1 reading</source>
        <translation>1 relevé</translation>
    </message>
    <message numerus="yes">
        <source>%n readings</source>
        <translation>
            <numerusform>%n relevé</numerusform>
            <numerusform>%n relevés</numerusform>
        </translation>
    </message>
    <message>
        <source>named</source>
        <translation>nommé</translation>
    </message>
    <message>
        <source>no initials</source>
        <translation>sans initiales</translation>
    </message>
    <message>
        <source>Nobody has read yet.</source>
        <translation>Personne n’a encore lu.</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::OldPage</name>
    <message>
        <source>Some lines of this page are not in the book yet. Store them first, or empty them.</source>
        <translation>Des lignes de cette page ne sont pas encore dans le livre. Les enregistrer d’abord, ou les vider.</translation>
    </message>
    <message>
        <source>From an old page</source>
        <translation>D’une vieille page</translation>
    </message>
    <message>
        <source>This station&apos;s record begins on %1, so no reading was due in %2. To type this page off, let the station&apos;s first period begin earlier (Station page), or turn to the month it belongs to.</source>
        <translation>La série de cette station commence le %1, donc aucun relevé n’était dû en %2. Pour taper cette page, faire commencer plus tôt la première période (page Station), ou aller au mois voulu.</translation>
    </message>
    <message>
        <source>&amp;Turn to %1</source>
        <translation>&amp;Aller à %1</translation>
    </message>
    <message>
        <source>This station has no observing hours in %1, so the page has no lines. Give it its hours on the Station page, then come back.</source>
        <translation>Cette station n’a pas d’heures en %1, donc la page n’a pas de lignes. Les lui donner sur la page Station, puis revenir.</translation>
    </message>
    <message>
        <source>This month has no line for “%1”. Write the day as a number.</source>
        <translation>Ce mois n’a pas de ligne pour « %1&#xa0;». Écrire le jour en nombre.</translation>
    </message>
    <message>
        <source>%1: first %2, the second time %3. Ctrl+E settles which the paper says.</source>
        <translation>%1&#xa0;: d’abord %2, la seconde fois %3. Ctrl+E règle ce que dit le papier.</translation>
    </message>
    <message>
        <source>Alt+%1: %2 (%3).</source>
        <translation>Alt+%1&#xa0;: %2 (%3).</translation>
    </message>
    <message>
        <source>This hour is still to come.</source>
        <translation>Cette heure est encore à venir.</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>rien</translation>
    </message>
    <message>
        <source>%1: %2 or %3</source>
        <translation>%1&#xa0;: %2 ou %3</translation>
    </message>
    <message>
        <source>The two passes differ. What does the paper say?</source>
        <translation>Les deux frappes diffèrent. Que dit le papier&#xa0;?</translation>
    </message>
    <message>
        <source>%1, as in the book</source>
        <translation>%1, comme au livre</translation>
    </message>
    <message>
        <source>%1, as typed the second time</source>
        <translation>%1, comme tapé la seconde fois</translation>
    </message>
    <message>
        <source>“%1” is not in the book</source>
        <translation>« %1&#xa0;» n’est pas dans le livre</translation>
    </message>
    <message>
        <source>%1 of %2 lines are in the book.</source>
        <translation>%1 lignes sur %2 sont dans le livre.</translation>
    </message>
    <message>
        <source>One line is empty: m and a letter says why.</source>
        <translation>Une ligne est vide&#xa0;: m et une lettre disent pourquoi.</translation>
    </message>
    <message numerus="yes">
        <source>%n lines are empty: m and a letter says why.</source>
        <translation>
            <numerusform>%n ligne est vide&#xa0;: m et une lettre disent pourquoi.</numerusform>
            <numerusform>%n lignes sont vides&#xa0;: m et une lettre disent pourquoi.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n are read back.</source>
        <translation>
            <numerusform>%n est collationnée.</numerusform>
            <numerusform>%n sont collationnées.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n could not be stored yet.</source>
        <translation>
            <numerusform>%n n’a pu être enregistrée encore.</numerusform>
            <numerusform>%n n’ont pu être enregistrées encore.</numerusform>
        </translation>
    </message>
    <message>
        <source>The checks have nothing to say to this line.</source>
        <translation>Les contrôles n’ont rien à dire de cette ligne.</translation>
    </message>
    <message>
        <source>This cause says what happened, not what was read. Look at the paper: Enter goes to the line.</source>
        <translation>Cette cause dit ce qui s’est passé, non ce qui a été lu. Regarder le papier&#xa0;: Entrée va à la ligne.</translation>
    </message>
    <message>
        <source>typed again from the page: %1</source>
        <translation>retapé de la page&#xa0;: %1</translation>
    </message>
    <message>
        <source>Taken for %1: %2. What stood there first is kept; Ctrl+Z takes it back.</source>
        <translation>Pris pour %1&#xa0;: %2. Ce qui y était d’abord est gardé&#xa0;; Ctrl+Z le reprend.</translation>
    </message>
    <message>
        <source>typed twice, and the paper looked at again: %1 was %2</source>
        <translation>tapé deux fois, et le papier regardé à nouveau&#xa0;: %1 était %2</translation>
    </message>
    <message>
        <source>judged %1</source>
        <translation>jugé %1</translation>
    </message>
    <message>
        <source>%1 is judged %2 (Ctrl+Z undoes it).</source>
        <translation>%1 est jugé %2 (Ctrl+Z l’annule).</translation>
    </message>
    <message>
        <source>Some lines are not in the book yet. Store them first.</source>
        <translation>Des lignes ne sont pas dans le livre. Les enregistrer d’abord.</translation>
    </message>
    <message>
        <source>Leave the second &amp;pass</source>
        <translation>Quitter la seconde &amp;frappe</translation>
    </message>
    <message>
        <source>Type it &amp;again</source>
        <translation>La &amp;retaper</translation>
    </message>
    <message>
        <source>Second pass: type the page again. What you typed first is hidden; lines that come out alike are marked as read back.</source>
        <translation>Seconde frappe&#xa0;: retaper la page. Ce que vous avez tapé d’abord est caché&#xa0;; les lignes identiques sont marquées comme collationnées.</translation>
    </message>
    <message>
        <source>the lines typed just now (%1)</source>
        <translation>les lignes tapées à l’instant (%1)</translation>
    </message>
    <message>
        <source>the lines marked on the page (%1)</source>
        <translation>les lignes marquées sur la page (%1)</translation>
    </message>
    <message>
        <source>every line of the month (%1)</source>
        <translation>toutes les lignes du mois (%1)</translation>
    </message>
    <message>
        <source>move: %1</source>
        <translation>déplacer&#xa0;: %1</translation>
    </message>
    <message>
        <source>Nothing was moved. %1</source>
        <translation>Rien n’a été déplacé. %1</translation>
    </message>
    <message>
        <source>One line now stands in %1. Ctrl+Z takes it back.</source>
        <translation>Une ligne est maintenant en %1. Ctrl+Z la reprend.</translation>
    </message>
    <message numerus="yes">
        <source>%n lines now stand in %1. Ctrl+Z takes them back.</source>
        <translation>
            <numerusform>%n ligne est maintenant en %1. Ctrl+Z la reprend.</numerusform>
            <numerusform>%n lignes sont maintenant en %1. Ctrl+Z les reprend.</numerusform>
        </translation>
    </message>
    <message>
        <source>&amp;Try again</source>
        <translation>&amp;Réessayer</translation>
    </message>
    <message>
        <source>Month before</source>
        <translation>Mois d’avant</translation>
    </message>
    <message>
        <source>Month before (Ctrl+Page up)</source>
        <translation>Mois d’avant (Ctrl+Page préc.)</translation>
    </message>
    <message>
        <source>Month after</source>
        <translation>Mois d’après</translation>
    </message>
    <message>
        <source>Month after (Ctrl+Page down)</source>
        <translation>Mois d’après (Ctrl+Page suiv.)</translation>
    </message>
    <message>
        <source>Month of the page</source>
        <translation>Mois de la page</translation>
    </message>
    <message>
        <source>Paper &amp;book</source>
        <translation>&amp;Livre papier</translation>
    </message>
    <message>
        <source>Paper book the page is in</source>
        <translation>Livre papier où est la page</translation>
    </message>
    <message>
        <source>Pa&amp;ge</source>
        <translation>Pa&amp;ge</translation>
    </message>
    <message>
        <source>Page of the paper book</source>
        <translation>Page du livre papier</translation>
    </message>
    <message>
        <source>Read b&amp;y</source>
        <translation>Lu &amp;par</translation>
    </message>
    <message>
        <source>Initials of who read, as the page has them</source>
        <translation>Initiales de qui a lu, comme les a la page</translation>
    </message>
    <message>
        <source>Go to &amp;day</source>
        <translation>Aller au &amp;jour</translation>
    </message>
    <message>
        <source>Go to the day</source>
        <translation>Aller au jour</translation>
    </message>
    <message>
        <source>Ctrl+G, the day, Enter</source>
        <translation>Ctrl+G, le jour, Entrée</translation>
    </message>
    <message>
        <source>&amp;Without the point: 234 is %1, 6 is %2, −6 is −%2</source>
        <extracomment>%1 is 23.4, %2 is 0.6, with the locale&apos;s mark</extracomment>
        <translation>&amp;Sans la virgule&#xa0;: 234 est %1, 6 est %2, −6 est −%2</translation>
    </message>
    <message>
        <source>For the thermometers only; a point or comma that is typed always counts</source>
        <translation>Pour les thermomètres seulement&#xa0;; un point ou une virgule tapés comptent toujours</translation>
    </message>
    <message>
        <source>Where Enter goes</source>
        <translation>Où va Entrée</translation>
    </message>
    <message>
        <source>Enter goes along the line</source>
        <translation>Entrée suit la ligne</translation>
    </message>
    <message>
        <source>Enter goes down the column</source>
        <translation>Entrée descend la colonne</translation>
    </message>
    <message>
        <source>How the page has its hours</source>
        <translation>Comment la page a ses heures</translation>
    </message>
    <message>
        <source>hours under each other</source>
        <translation>heures l’une sous l’autre</translation>
    </message>
    <message>
        <source>hours side by side</source>
        <translation>heures côte à côte</translation>
    </message>
    <message>
        <source>&amp;Notes at the page&apos;s end</source>
        <translation>&amp;Notes à la fin</translation>
    </message>
    <message>
        <source>&amp;Columns…</source>
        <translation>&amp;Colonnes…</translation>
    </message>
    <message>
        <source>Why lines of this page change that were in the book</source>
        <translation>Pourquoi changent des lignes de cette page déjà au livre</translation>
    </message>
    <message>
        <source>Why it chan&amp;ges</source>
        <translation>Pourquoi cela chan&amp;ge</translation>
    </message>
    <message>
        <source>Keep the change</source>
        <translation>Garder le changement</translation>
    </message>
    <message>
        <source>Leave the book as it is</source>
        <translation>Laisser le livre tel quel</translation>
    </message>
    <message>
        <source>m and a letter: missing (%1). &quot; repeats what stands above. w or i after the wet bulb: water or ice.</source>
        <translation>m et une lettre&#xa0;: manquant (%1). &quot; répète ce qui est au-dessus. w ou i après le mouillé&#xa0;: eau ou glace.</translation>
    </message>
    <message>
        <source>Page&apos;s &amp;end</source>
        <translation>&amp;Fin de la page</translation>
    </message>
    <message>
        <source>Ctrl+E</source>
        <translation>Ctrl+E</translation>
    </message>
    <message>
        <source>Type the page a second time without seeing the first: what is alike is marked as read back, what is not is shown</source>
        <translation>Taper la page une seconde fois sans voir la première&#xa0;: ce qui est pareil est marqué collationné, ce qui ne l’est pas est montré</translation>
    </message>
    <message>
        <source>Another &amp;month…</source>
        <translation>Un autre &amp;mois…</translation>
    </message>
    <message>
        <source>These lines belong to another month</source>
        <translation>Ces lignes appartiennent à un autre mois</translation>
    </message>
    <message>
        <source>Back to Observe</source>
        <translation>Retour à Observer</translation>
    </message>
    <message>
        <source>Open the &amp;Station page</source>
        <translation>Ouvrir la page &amp;Station</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 sur %2</translation>
    </message>
    <message>
        <source>typed from the page</source>
        <translation>tapé de la page</translation>
    </message>
    <message>
        <source>%1 is not in the book yet. %2 What you typed is still on the page.</source>
        <translation>%1 n’est pas encore au livre. %2 Ce que vous avez tapé est encore sur la page.</translation>
    </message>
    <message>
        <source>typed again from the page</source>
        <translation>retapé de la page</translation>
    </message>
    <message>
        <source>%1 was in the book already. Say why it changes, once for this page: Enter keeps the change, Esc leaves the book as it is.</source>
        <translation>%1 était déjà au livre. Dire pourquoi cela change, une fois pour cette page&#xa0;: Entrée garde le changement, Échap laisse le livre tel quel.</translation>
    </message>
    <message>
        <source>Write a reason: what stood there first is kept, and so is why it changed.</source>
        <translation>Écrire une raison&#xa0;: ce qui y était d’abord est gardé, et pourquoi cela a changé.</translation>
    </message>
    <message>
        <source>read back against the page: typed twice alike</source>
        <translation>collationné avec la page&#xa0;: tapé deux fois pareil</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::PageModel</name>
    <message>
        <source>nothing written yet</source>
        <translation>rien d’écrit encore</translation>
    </message>
    <message>
        <source>goes into the book when the line is left</source>
        <translation>entre au livre quand on quitte la ligne</translation>
    </message>
    <message>
        <source>not in the book</source>
        <translation>pas au livre</translation>
    </message>
    <message>
        <source>in the book</source>
        <translation>au livre</translation>
    </message>
    <message>
        <source>in the book, read back</source>
        <translation>au livre, collationné</translation>
    </message>
    <message>
        <source>in the book, doubtful</source>
        <translation>au livre, douteux</translation>
    </message>
    <message>
        <source>in the book, can hardly be right</source>
        <translation>au livre, ne peut guère être juste</translation>
    </message>
    <message>
        <source>missing, with a reason</source>
        <translation>manquant, avec une raison</translation>
    </message>
    <message>
        <source>typed otherwise the second time</source>
        <translation>tapé autrement la seconde fois</translation>
    </message>
    <message>
        <source>empty</source>
        <translation>vide</translation>
    </message>
    <message>
        <source>No reading was due at this hour on this day.</source>
        <translation>Aucun relevé n’était dû à cette heure ce jour-là.</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Date</translation>
    </message>
    <message>
        <source>Hour</source>
        <translation>Heure</translation>
    </message>
    <message>
        <source>Observing hour</source>
        <translation>Heure d’observation</translation>
    </message>
    <message>
        <source>RH %</source>
        <translation>HR&#xa0;%</translation>
    </message>
    <message>
        <source>Relative humidity, %</source>
        <translation>Humidité relative,&#xa0;%</translation>
    </message>
    <message>
        <source>Dew p.</source>
        <translation>P. ros.</translation>
    </message>
    <message>
        <source>Dew point, %1</source>
        <translation>Point de rosée, %1</translation>
    </message>
    <message>
        <source>How the line stands</source>
        <translation>Où en est la ligne</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::PageSet</name>
    <message>
        <source>Observe</source>
        <translation>Observer</translation>
    </message>
    <message>
        <source>Register</source>
        <translation>Registre</translation>
    </message>
    <message>
        <source>Month</source>
        <translation>Mois</translation>
    </message>
    <message>
        <source>Instruments</source>
        <translation>Instruments</translation>
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
        <translation>Les lignes de la page</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::PairCheckForm</name>
    <message>
        <source>Pair check</source>
        <translation>Contrôle du couple</translation>
    </message>
    <message>
        <source>Both bulbs without wick in one stirred bath</source>
        <translation>Les deux sans mousseline dans un même bain agité</translation>
    </message>
    <message>
        <source>Ice point: slush of crushed ice of distilled water, well packed, bulbs deep in it, read when they stand still. Then water of about 20 °C, stirred all the while. Let glass warm and cool slowly; broken glass and mercury go by your local rules. A field may stay empty.</source>
        <translation>Point de glace&#xa0;: bouillie de glace pilée d’eau distillée, bien tassée, les réservoirs au fond, lus quand ils ne bougent plus. Puis de l’eau à environ 20&#xa0;°C, agitée sans cesse. Laisser le verre chauffer et refroidir lentement&#xa0;; pour le verre brisé et le mercure valent vos règles locales. Un champ peut rester vide.</translation>
    </message>
    <message>
        <source>Date, year-month-day</source>
        <translation>Date, année-mois-jour</translation>
    </message>
    <message>
        <source>Dry bulb&apos;s thermometer</source>
        <translation>Thermomètre du sec</translation>
    </message>
    <message>
        <source>Wet bulb&apos;s thermometer</source>
        <translation>Thermomètre du mouillé</translation>
    </message>
    <message>
        <source>Dry, at the ice point</source>
        <translation>Sec, au point de glace</translation>
    </message>
    <message>
        <source>Wet, at the ice point</source>
        <translation>Mouillé, au point de glace</translation>
    </message>
    <message>
        <source>Dry, in the bath</source>
        <translation>Sec, dans le bain</translation>
    </message>
    <message>
        <source>Wet, in the bath</source>
        <translation>Mouillé, dans le bain</translation>
    </message>
    <message>
        <source>dry bulb at the ice point</source>
        <translation>sec au point de glace</translation>
    </message>
    <message>
        <source>wet bulb at the ice point</source>
        <translation>mouillé au point de glace</translation>
    </message>
    <message>
        <source>dry bulb in the bath</source>
        <translation>sec dans le bain</translation>
    </message>
    <message>
        <source>wet bulb in the bath</source>
        <translation>mouillé dans le bain</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Note</translation>
    </message>
    <message>
        <source>Write it down once it has happened; this date is still to come.</source>
        <translation>L’inscrire quand c’est arrivé&#xa0;; cette date est encore à venir.</translation>
    </message>
    <message>
        <source>Write down the thermometers first, under “Thermometers”.</source>
        <translation>Inscrire d’abord les thermomètres, sous «&#xa0;Thermomètres&#xa0;».</translation>
    </message>
    <message>
        <source>One thermometer can&apos;t be both bulbs. Choose another for one of them.</source>
        <translation>Un thermomètre ne peut être les deux. En choisir un autre pour l’un d’eux.</translation>
    </message>
    <message>
        <source>Write what at least one of them showed at the ice point, or both in the bath.</source>
        <translation>Écrire ce qu’au moins l’un montrait au point de glace, ou les deux dans le bain.</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::PairCheckSection</name>
    <message>
        <source>Both bulbs in one b&amp;ath</source>
        <translation>Les deux dans un b&amp;ain</translation>
    </message>
    <message>
        <source>New pair check…</source>
        <translation>Nouveau contrôle du couple…</translation>
    </message>
    <message>
        <source>Take the ice points over…</source>
        <translation>Prendre les points de glace…</translation>
    </message>
    <message>
        <source>its thermometers are not written down any more</source>
        <translation>ses thermomètres ne sont plus inscrits</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>Once a year, and after every knock: both without wick in one stirred bath.</source>
        <translation>Une fois l’an, et après chaque choc&#xa0;: les deux sans mousseline dans un bain agité.</translation>
    </message>
    <message>
        <source>pair check</source>
        <translation>contrôle du couple</translation>
    </message>
    <message>
        <source>Written down. It changes no reading until its ice points are taken over.</source>
        <translation>Inscrit. Aucun relevé ne change avant que les points de glace soient pris.</translation>
    </message>
    <message>
        <source>pair check taken back</source>
        <translation>contrôle du couple repris</translation>
    </message>
    <message>
        <source>Taken back. Undo brings it again.</source>
        <translation>Repris. Annuler le ramène.</translation>
    </message>
    <message>
        <source>ice point of %1</source>
        <translation>point de glace du %1</translation>
    </message>
    <message>
        <source>This check has no ice point, and a difference alone does not say which thermometer errs.</source>
        <translation>Ce contrôle n’a pas de point de glace, et un écart seul ne dit pas quel thermomètre se trompe.</translation>
    </message>
    <message>
        <source>corrections from the ice points</source>
        <translation>corrections par les points de glace</translation>
    </message>
    <message>
        <source>Kept. What was read stays; what follows from it is worked out afresh. Undo takes it back.</source>
        <translation>Gardé. Ce qui a été lu reste&#xa0;; ce qui en découle est recalculé. Annuler le reprend.</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::PairsModel</name>
    <message>
        <source>The wick is water or ice: type w or i.</source>
        <translation>La mousseline est en eau ou en glace&#xa0;: taper w ou i.</translation>
    </message>
    <message>
        <source>%1 is not a number: write it as 16.4.</source>
        <translation>%1 n’est pas un nombre&#xa0;: l’écrire comme 16,4.</translation>
    </message>
    <message>
        <source>At or below zero: type w for water or i for ice.</source>
        <translation>À zéro ou au-dessous&#xa0;: taper w pour eau ou i pour glace.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>empty</source>
        <translation>vide</translation>
    </message>
    <message>
        <source>Number</source>
        <translation>Numéro</translation>
    </message>
    <message>
        <source>Dry %1</source>
        <translation>Sec %1</translation>
    </message>
    <message>
        <source>Wet %1</source>
        <translation>Mouillé %1</translation>
    </message>
    <message>
        <source>Wick</source>
        <translation>Mousseline</translation>
    </message>
    <message>
        <source>Dry less wet</source>
        <translation>Sec moins mouillé</translation>
    </message>
    <message>
        <source>Humidity</source>
        <translation>Humidité</translation>
    </message>
    <message>
        <source>Dew point</source>
        <translation>Point de rosée</translation>
    </message>
    <message>
        <source>What to look at</source>
        <translation>Que regarder</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::PaperDialog</name>
    <message>
        <source>Where these lines stand on paper</source>
        <translation>Où sont ces lignes sur le papier</translation>
    </message>
    <message>
        <source>&amp;Which lines</source>
        <translation>&amp;Quelles lignes</translation>
    </message>
    <message>
        <source>Pocket-book 3</source>
        <translation>Carnet 3</translation>
    </message>
    <message>
        <source>&amp;Book</source>
        <translation>&amp;Livre</translation>
    </message>
    <message>
        <source>&amp;Page</source>
        <translation>&amp;Page</translation>
    </message>
    <message>
        <source>&amp;Keep</source>
        <translation>&amp;Garder</translation>
    </message>
    <message>
        <source>Leave it as it is</source>
        <translation>Le laisser tel quel</translation>
    </message>
    <message>
        <source>They stand so already.</source>
        <translation>Elles y sont déjà.</translation>
    </message>
    <message>
        <source>One line will have no place on paper any more.</source>
        <translation>Une ligne n’aura plus de place sur le papier.</translation>
    </message>
    <message numerus="yes">
        <source>%n lines will have no place on paper any more.</source>
        <translation>
            <numerusform>%n ligne n’aura plus de place sur le papier.</numerusform>
            <numerusform>%n lignes n’auront plus de place sur le papier.</numerusform>
        </translation>
    </message>
    <message>
        <source>One line will stand on: %1.</source>
        <translation>Une ligne sera à&#xa0;: %1.</translation>
    </message>
    <message numerus="yes">
        <source>%n lines will stand on: %1.</source>
        <translation>
            <numerusform>%n ligne sera à&#xa0;: %1.</numerusform>
            <numerusform>%n lignes seront à&#xa0;: %1.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>wickbook::ui::PeriodForm</name>
    <message>
        <source>From a date on</source>
        <translation>À partir d’une date</translation>
    </message>
    <message>
        <source>from the beginning</source>
        <translation>depuis le début</translation>
    </message>
    <message>
        <source>See what changes</source>
        <translation>Voir ce qui change</translation>
    </message>
    <message>
        <source>Keep it</source>
        <translation>Garder</translation>
    </message>
    <message>
        <source>From this date on the station differs</source>
        <translation>À partir de cette date la station diffère</translation>
    </message>
    <message>
        <source>Change what is different; leave the rest as it stands.</source>
        <translation>Changer ce qui diffère&#xa0;; laisser le reste tel quel.</translation>
    </message>
    <message>
        <source>From, year-month-day</source>
        <translation>Depuis, année-mois-jour</translation>
    </message>
    <message>
        <source>Observing hours</source>
        <translation>Heures d’observation</translation>
    </message>
    <message>
        <source>They follow</source>
        <translation>Elles suivent</translation>
    </message>
    <message>
        <source>Time zone</source>
        <translation>Fuseau horaire</translation>
    </message>
    <message>
        <source>The thermometers are</source>
        <translation>Les thermomètres sont</translation>
    </message>
    <message>
        <source>latitude</source>
        <translation>latitude</translation>
    </message>
    <message>
        <source>° north</source>
        <translation>° nord</translation>
    </message>
    <message>
        <source>longitude</source>
        <translation>longitude</translation>
    </message>
    <message>
        <source>° east</source>
        <translation>° est</translation>
    </message>
    <message>
        <source>elevation</source>
        <translation>altitude</translation>
    </message>
    <message>
        <source>m</source>
        <translation>m</translation>
    </message>
    <message>
        <source>Latitude</source>
        <translation>Latitude</translation>
    </message>
    <message>
        <source>Longitude</source>
        <translation>Longitude</translation>
    </message>
    <message>
        <source>Elevation</source>
        <translation>Altitude</translation>
    </message>
    <message>
        <source>Surroundings</source>
        <translation>Environs</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Pourquoi</translation>
    </message>
    <message>
        <source>There is no time zone of that name. Choose one from the list.</source>
        <translation>Il n’y a pas de fuseau de ce nom. En choisir un dans la liste.</translation>
    </message>
    <message>
        <source>Write the %1.</source>
        <translation>Écrire&#xa0;: %1.</translation>
    </message>
    <message>
        <source>Nothing differs yet from what is in force. Change a field, or close this.</source>
        <translation>Rien ne diffère encore de ce qui est en vigueur. Changer un champ, ou fermer.</translation>
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
        <translation>O</translation>
    </message>
    <message>
        <source>E</source>
        <translation>E</translation>
    </message>
    <message>
        <source>What di&amp;ffers from when</source>
        <translation>Ce qui di&amp;ffère depuis quand</translation>
    </message>
    <message>
        <source>From a date on…</source>
        <translation>À partir d’une date…</translation>
    </message>
    <message>
        <source>From the beginning</source>
        <translation>Depuis le début</translation>
    </message>
    <message>
        <source>From %1</source>
        <translation>Depuis %1</translation>
    </message>
    <message>
        <source>elevation %1 m</source>
        <translation>altitude %1&#xa0;m</translation>
    </message>
    <message>
        <source>no observing hours</source>
        <translation>pas d’heures d’observation</translation>
    </message>
    <message>
        <source>hours follow %1</source>
        <translation>les heures suivent %1</translation>
    </message>
    <message>
        <source>own coefficient %1 × 10⁻⁴ per degree</source>
        <translation>coefficient propre %1 × 10⁻⁴ par degré</translation>
    </message>
    <message>
        <source>mean pressure %1 hPa</source>
        <translation>pression moyenne %1&#xa0;hPa</translation>
    </message>
    <message>
        <source>no mean pressure</source>
        <translation>pas de pression moyenne</translation>
    </message>
    <message>
        <source>joined to the record before</source>
        <translation>jointe à la série d’avant</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>Nothing is known of the station yet.</source>
        <translation>On ne sait encore rien de la station.</translation>
    </message>
    <message>
        <source>Of %1 readings %2 would have another humidity or dew point.</source>
        <translation>Sur %1 relevés, %2 auraient une autre humidité ou un autre point de rosée.</translation>
    </message>
    <message>
        <source>By the new hours %1 would lie elsewhere; they stay under the hour they were written at.</source>
        <translation>Selon les nouvelles heures, %1 seraient ailleurs&#xa0;; ils restent sous l’heure où ils ont été écrits.</translation>
    </message>
    <message>
        <source>What was read stays as it is.</source>
        <translation>Ce qui a été lu reste tel quel.</translation>
    </message>
    <message>
        <source>period changed: %1</source>
        <translation>période changée&#xa0;: %1</translation>
    </message>
    <message>
        <source>the station differs: %1</source>
        <translation>la station diffère&#xa0;: %1</translation>
    </message>
    <message>
        <source>Kept. Readings are worked out afresh; undo takes it back.</source>
        <translation>Gardé. Les relevés sont recalculés&#xa0;; annuler le reprend.</translation>
    </message>
    <message>
        <source>The beginning can&apos;t be taken back, for a station must stand somewhere. Change it instead.</source>
        <translation>Le début ne peut être repris, car une station doit bien être quelque part. Le changer plutôt.</translation>
    </message>
    <message>
        <source>Take back</source>
        <translation>Reprendre</translation>
    </message>
    <message>
        <source>&amp;Take it back</source>
        <translation>&amp;Reprendre</translation>
    </message>
    <message>
        <source>period taken back: %1</source>
        <translation>période reprise&#xa0;: %1</translation>
    </message>
    <message>
        <source>Taken back. Undo brings it again.</source>
        <translation>Repris. Annuler le ramène.</translation>
    </message>
    <message>
        <source>Working out what would change…</source>
        <translation>Calcul de ce qui changerait…</translation>
    </message>
    <message>
        <source>&amp;Cancel</source>
        <translation>&amp;Annuler</translation>
    </message>
    <message>
        <source>Stopped before the end; nothing is known of what would change.</source>
        <translation>Arrêté avant la fin&#xa0;; on ne sait rien de ce qui changerait.</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::PreferencesDialog</name>
    <message>
        <source>Settings</source>
        <translation>Réglages</translation>
    </message>
    <message>
        <source>as the system</source>
        <translation>comme le système</translation>
    </message>
    <message>
        <source>&amp;Language</source>
        <translation>&amp;Langue</translation>
    </message>
    <message>
        <source>as the desktop</source>
        <translation>comme le bureau</translation>
    </message>
    <message>
        <source>light</source>
        <translation>clair</translation>
    </message>
    <message>
        <source>dark</source>
        <translation>sombre</translation>
    </message>
    <message>
        <source>Light or &amp;dark</source>
        <translation>&amp;Clair ou sombre</translation>
    </message>
    <message>
        <source>%1 %</source>
        <extracomment>size of letters, per cent of the desktop&apos;s own</extracomment>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>&amp;Size of letters</source>
        <translation>&amp;Taille des lettres</translation>
    </message>
    <message>
        <source>What a reading depends on (thermometers, hours, limits, copies) belongs to the station: it is kept in its book and changed on the pages Instruments and Station.</source>
        <translation>Ce dont dépend un relevé (thermomètres, heures, seuils, copies) appartient à la station : c’est gardé dans son livre et se change sur les pages Instruments et Station.</translation>
    </message>
    <message>
        <source>&amp;Use</source>
        <translation>&amp;Employer</translation>
    </message>
    <message>
        <source>&amp;Cancel</source>
        <translation>Annule&amp;r</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::QueriesModel</name>
    <message>
        <source>When</source>
        <translation>Quand</translation>
    </message>
    <message>
        <source>Dry / wet as read</source>
        <translation>Sec / mouillé comme lus</translation>
    </message>
    <message>
        <source>RH</source>
        <translation>HR</translation>
    </message>
    <message>
        <source>Query</source>
        <translation>Question</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::QueriesPanel</name>
    <message>
        <source>Queries to settle</source>
        <translation>Questions à régler</translation>
    </message>
    <message>
        <source>S sound, D doubtful, E erroneous, Enter opens the line</source>
        <translation>S valable, D douteux, E erroné, Entrée ouvre la ligne</translation>
    </message>
    <message>
        <source>No queries to settle</source>
        <translation>Aucune question à régler</translation>
    </message>
    <message>
        <source>One query to settle</source>
        <translation>Une question à régler</translation>
    </message>
    <message numerus="yes">
        <source>%n queries to settle</source>
        <translation>
            <numerusform>%n question à régler</numerusform>
            <numerusform>%n questions à régler</numerusform>
        </translation>
    </message>
    <message>
        <source>judged %1</source>
        <translation>jugé %1</translation>
    </message>
    <message>
        <source>judged %1: %2</source>
        <translation>jugé %1&#xa0;: %2</translation>
    </message>
    <message>
        <source>%1 is judged %2 (Ctrl+Z undoes it).</source>
        <translation>%1 est jugé %2 (Ctrl+Z l’annule).</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::QueryMark</name>
    <message>
        <source>cross: cannot be right</source>
        <translation>croix&#xa0;: ne peut être juste</translation>
    </message>
    <message>
        <source>circle: doubtful</source>
        <translation>cercle&#xa0;: douteux</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::ReadingChoices</name>
    <message>
        <source>The file begins with</source>
        <translation>Le fichier commence par</translation>
    </message>
    <message>
        <source>a line of names</source>
        <translation>une ligne de noms</translation>
    </message>
    <message>
        <source>a reading</source>
        <translation>un relevé</translation>
    </message>
    <message>
        <source>Between the cells stands a</source>
        <translation>Entre les cellules il y a</translation>
    </message>
    <message>
        <source>mark as found</source>
        <translation>la marque trouvée</translation>
    </message>
    <message>
        <source>The bulbs were read in</source>
        <translation>Les thermomètres ont été lus en</translation>
    </message>
    <message>
        <source>the unit in the names, or the station&apos;s</source>
        <translation>l’unité des noms, ou celle de la station</translation>
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
        <translation>Marque décimale</translation>
    </message>
    <message>
        <source>comma or point</source>
        <translation>virgule ou point</translation>
    </message>
    <message>
        <source>point</source>
        <translation>point</translation>
    </message>
    <message>
        <source>comma</source>
        <translation>virgule</translation>
    </message>
    <message>
        <source>Dates like 3/4/2025 are</source>
        <translation>Des dates comme 3/4/2025 sont</translation>
    </message>
    <message>
        <source>as the other dates show</source>
        <translation>comme le montrent les autres dates</translation>
    </message>
    <message>
        <source>day, then month</source>
        <translation>jour, puis mois</translation>
    </message>
    <message>
        <source>month, then day</source>
        <translation>mois, puis jour</translation>
    </message>
    <message>
        <source>Times without an offset are by</source>
        <translation>Les heures sans écart sont selon</translation>
    </message>
    <message>
        <source>the station&apos;s clock (%1)</source>
        <translation>l’horloge de la station (%1)</translation>
    </message>
    <message>
        <source>Times the clock showed twice are</source>
        <translation>Les heures montrées deux fois sont</translation>
    </message>
    <message>
        <source>left out</source>
        <translation>laissé</translation>
    </message>
    <message>
        <source>the earlier</source>
        <translation>la première</translation>
    </message>
    <message>
        <source>the later</source>
        <translation>la seconde</translation>
    </message>
    <message>
        <source>%1, as found</source>
        <translation>%1, comme trouvé</translation>
    </message>
    <message>
        <source>There is no time zone of that name. Choose one from the list.</source>
        <translation>Il n’y a pas de fuseau de ce nom. En choisir un dans la liste.</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::RegisterModel</name>
    <message>
        <source>kept</source>
        <translation>présent</translation>
    </message>
    <message>
        <source>doubtful</source>
        <translation>douteux</translation>
    </message>
    <message>
        <source>erroneous</source>
        <translation>erroné</translation>
    </message>
    <message>
        <source>incomplete</source>
        <translation>incomplet</translation>
    </message>
    <message>
        <source>estimated, not read</source>
        <translation>estimé, non lu</translation>
    </message>
    <message>
        <source>missing, with a reason</source>
        <translation>manquant, avec une raison</translation>
    </message>
    <message>
        <source>not written down</source>
        <translation>non noté</translation>
    </message>
    <message>
        <source>to come</source>
        <translation>à venir</translation>
    </message>
    <message>
        <source>read back</source>
        <translation>collationné</translation>
    </message>
    <message>
        <source>%1, extra</source>
        <translation>%1, hors heure</translation>
    </message>
    <message>
        <source>%1 (absence)</source>
        <translation>%1 (absence)</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Date</translation>
    </message>
    <message>
        <source>Hour</source>
        <translation>Heure</translation>
    </message>
    <message>
        <source>Observing hour</source>
        <translation>Heure d’observation</translation>
    </message>
    <message>
        <source>Dry</source>
        <translation>Sec</translation>
    </message>
    <message>
        <source>Dry bulb as read, %1</source>
        <translation>Sec comme lu, %1</translation>
    </message>
    <message>
        <source>Wet</source>
        <translation>Mouillé</translation>
    </message>
    <message>
        <source>Wet bulb as read, %1</source>
        <translation>Mouillé comme lu, %1</translation>
    </message>
    <message>
        <source>Depr.</source>
        <translation>Écart</translation>
    </message>
    <message>
        <source>Wet-bulb depression, %1</source>
        <translation>Écart psychrométrique, %1</translation>
    </message>
    <message>
        <source>Wick</source>
        <translation>Mousseline</translation>
    </message>
    <message>
        <source>Water or ice on the wick</source>
        <translation>Eau ou glace sur la mousseline</translation>
    </message>
    <message>
        <source>RH %</source>
        <translation>HR&#xa0;%</translation>
    </message>
    <message>
        <source>Relative humidity, %</source>
        <translation>Humidité relative,&#xa0;%</translation>
    </message>
    <message>
        <source>±</source>
        <translation>±</translation>
    </message>
    <message>
        <source>Relative humidity is good to, %</source>
        <translation>L’humidité relative est bonne à,&#xa0;%</translation>
    </message>
    <message>
        <source>Dew p.</source>
        <translation>P. ros.</translation>
    </message>
    <message>
        <source>Dew point, %1</source>
        <translation>Point de rosée, %1</translation>
    </message>
    <message>
        <source>Weather</source>
        <translation>Temps</translation>
    </message>
    <message>
        <source>Wind</source>
        <translation>Vent</translation>
    </message>
    <message>
        <source>Wind, Beaufort force</source>
        <translation>Vent, force Beaufort</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Note</translation>
    </message>
    <message>
        <source>By</source>
        <translation>Par</translation>
    </message>
    <message>
        <source>Observer&apos;s initials</source>
        <translation>Initiales de l’observateur</translation>
    </message>
    <message>
        <source>Origin</source>
        <translation>Origine</translation>
    </message>
    <message>
        <source>How the value came about</source>
        <translation>D’où vient la valeur</translation>
    </message>
    <message>
        <source>Judged</source>
        <translation>Jugé</translation>
    </message>
    <message>
        <source>What was judged of it</source>
        <translation>Ce qui en a été jugé</translation>
    </message>
    <message>
        <source>How the line stands</source>
        <translation>Où en est la ligne</translation>
    </message>
    <message>
        <source>Read back against the paper</source>
        <translation>Collationné avec le papier</translation>
    </message>
    <message>
        <source>Paper</source>
        <translation>Papier</translation>
    </message>
    <message>
        <source>Book and page of the paper register</source>
        <translation>Livre et page du registre papier</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::RegisterPage</name>
    <message>
        <source>Nothing was changed.</source>
        <translation>Rien n’a été changé.</translation>
    </message>
    <message>
        <source>This hour is still to come.</source>
        <translation>Cette heure est encore à venir.</translation>
    </message>
    <message>
        <source>revised %1</source>
        <translation>%1 révisé</translation>
    </message>
    <message>
        <source>wrote down %1</source>
        <translation>%1 inscrit</translation>
    </message>
    <message>
        <source>There is a reading at this hour: a reason is for hours without one.</source>
        <translation>Il y a un relevé à cette heure&#xa0;: une raison est pour les heures sans.</translation>
    </message>
    <message>
        <source>Choose a reason or write one in your own words.</source>
        <translation>Choisir une raison ou en écrire une avec vos mots.</translation>
    </message>
    <message>
        <source>%1 is missing: %2</source>
        <translation>%1 manque&#xa0;: %2</translation>
    </message>
    <message>
        <source>reason changed</source>
        <translation>raison changée</translation>
    </message>
    <message>
        <source>%1 to %2 are missing: %3</source>
        <translation>%1 à %2 manquent&#xa0;: %3</translation>
    </message>
    <message>
        <source>Ordered by: %1. O again turns it round.</source>
        <translation>Rangé par&#xa0;: %1. O encore inverse.</translation>
    </message>
    <message>
        <source>Ordered by: %1, the other way round. O again: as on the page.</source>
        <translation>Rangé par&#xa0;: %1, à l’envers. O encore&#xa0;: comme sur la page.</translation>
    </message>
    <message>
        <source>In the order of the page.</source>
        <translation>Dans l’ordre de la page.</translation>
    </message>
    <message>
        <source>One line is on the clipboard as a table.</source>
        <translation>Une ligne est au presse-papiers comme tableau.</translation>
    </message>
    <message numerus="yes">
        <source>%n lines are on the clipboard as a table.</source>
        <translation>
            <numerusform>%n ligne est au presse-papiers comme tableau.</numerusform>
            <numerusform>%n lignes sont au presse-papiers comme tableau.</numerusform>
        </translation>
    </message>
    <message>
        <source>Stopped.</source>
        <translation>Arrêté.</translation>
    </message>
    <message>
        <source>Looking: %1 %</source>
        <translation>Examen&#xa0;: %1&#xa0;%</translation>
    </message>
    <message>
        <source>No line of the register holds “%1”.</source>
        <translation>Aucune ligne du registre ne contient « %1&#xa0;».</translation>
    </message>
    <message>
        <source>This is the only one.</source>
        <translation>C’est la seule.</translation>
    </message>
    <message>
        <source>Found, round the end of the register.</source>
        <translation>Trouvé, passé le bout du registre.</translation>
    </message>
    <message>
        <source>Found.</source>
        <translation>Trouvé.</translation>
    </message>
    <message>
        <source>The month before (Page Up)</source>
        <translation>Le mois d’avant (Page préc.)</translation>
    </message>
    <message>
        <source>The month after (Page Down)</source>
        <translation>Le mois d’après (Page suiv.)</translation>
    </message>
    <message>
        <source>go to 2025-03 …</source>
        <translation>vers 2025-03 …</translation>
    </message>
    <message>
        <source>Go to a month or a date</source>
        <translation>Aller à un mois ou une date</translation>
    </message>
    <message>
        <source>find in this month</source>
        <translation>chercher ici</translation>
    </message>
    <message>
        <source>Find in this month</source>
        <translation>Chercher dans ce mois</translation>
    </message>
    <message>
        <source>only &amp;queries</source>
        <translation>seulement les &amp;questions</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Annuler</translation>
    </message>
    <message>
        <source>Undo (Ctrl+Z)</source>
        <translation>Annuler (Ctrl+Z)</translation>
    </message>
    <message>
        <source>Redo</source>
        <translation>Refaire</translation>
    </message>
    <message>
        <source>Copy</source>
        <translation>Copier</translation>
    </message>
    <message>
        <source>Copy the lines shown as a table (Ctrl+C)</source>
        <translation>Copier les lignes montrées en tableau (Ctrl+C)</translation>
    </message>
    <message>
        <source>&amp;Lines</source>
        <translation>&amp;Lignes</translation>
    </message>
    <message>
        <source>What can be done with the lines that are marked</source>
        <translation>Ce qui peut se faire des lignes marquées</translation>
    </message>
    <message>
        <source>&amp;Revise…</source>
        <translation>&amp;Réviser…</translation>
    </message>
    <message>
        <source>Enter</source>
        <translation>Entrée</translation>
    </message>
    <message>
        <source>Why it is &amp;missing…</source>
        <translation>Pourquoi cela &amp;manque…</translation>
    </message>
    <message>
        <source>With&amp;draw</source>
        <translation>Re&amp;tirer</translation>
    </message>
    <message>
        <source>Delete</source>
        <translation>Suppr</translation>
    </message>
    <message>
        <source>Read &amp;back against the paper</source>
        <translation>&amp;Collationné avec le papier</translation>
    </message>
    <message>
        <source>Space</source>
        <translation>Espace</translation>
    </message>
    <message>
        <source>&amp;Not read back after all</source>
        <translation>&amp;Non collationné après tout</translation>
    </message>
    <message>
        <source>Shift+Space</source>
        <translation>Maj+Espace</translation>
    </message>
    <message>
        <source>Book and &amp;page on paper…</source>
        <translation>Livre et &amp;page sur papier…</translation>
    </message>
    <message>
        <source>Mo&amp;ve elsewhere…</source>
        <translation>&amp;Déplacer…</translation>
    </message>
    <message>
        <source>Judge &amp;sound</source>
        <translation>Juger &amp;valable</translation>
    </message>
    <message>
        <source>Judge d&amp;oubtful</source>
        <translation>Juger d&amp;outeux</translation>
    </message>
    <message>
        <source>Judge &amp;erroneous</source>
        <translation>Juger &amp;erroné</translation>
    </message>
    <message>
        <source>Order by this &amp;column</source>
        <translation>Ranger par cette colo&amp;nne</translation>
    </message>
    <message>
        <source>&amp;Find in the whole register…</source>
        <translation>C&amp;hercher dans tout le registre…</translation>
    </message>
    <message>
        <source>Ctrl+Shift+F</source>
        <translation>Ctrl+Maj+F</translation>
    </message>
    <message numerus="yes">
        <source>%n lines</source>
        <translation>
            <numerusform>%n ligne</numerusform>
            <numerusform>%n lignes</numerusform>
        </translation>
    </message>
    <message>
        <source>There is no reading here to judge. Go to an hour that has one.</source>
        <translation>Il n’y a pas ici de relevé à juger. Aller à une heure qui en a un.</translation>
    </message>
    <message>
        <source>judged %1: %2</source>
        <translation>jugé %1&#xa0;: %2</translation>
    </message>
    <message>
        <source>judged %1</source>
        <translation>jugé %1</translation>
    </message>
    <message>
        <source>withdrew %1 (Ctrl+Z brings it back)</source>
        <translation>%1 retiré (Ctrl+Z le ramène)</translation>
    </message>
    <message>
        <source>withdrew %1 (Ctrl+Z brings them back)</source>
        <translation>%1 retirés (Ctrl+Z les ramène)</translation>
    </message>
    <message>
        <source>withdrawn</source>
        <translation>retiré</translation>
    </message>
    <message>
        <source>Nothing is written down for that hour: there is nothing to read back.</source>
        <translation>Rien n’est noté pour cette heure&#xa0;: il n’y a rien à collationner.</translation>
    </message>
    <message>
        <source>read back: %1</source>
        <translation>collationné&#xa0;: %1</translation>
    </message>
    <message>
        <source>not read back: %1</source>
        <translation>non collationné&#xa0;: %1</translation>
    </message>
    <message>
        <source>read back against the paper</source>
        <translation>collationné avec le papier</translation>
    </message>
    <message>
        <source>not taken for read back any more</source>
        <translation>n’est plus tenu pour collationné</translation>
    </message>
    <message>
        <source>read back already: %1</source>
        <translation>déjà collationné&#xa0;: %1</translation>
    </message>
    <message>
        <source>That was the last line of the month. Page Down turns the page.</source>
        <translation>C’était la dernière ligne du mois. Page suiv. tourne la page.</translation>
    </message>
    <message>
        <source>Nothing has been written down in this month that could stand on paper.</source>
        <translation>Rien n’a été noté dans ce mois qui puisse être sur papier.</translation>
    </message>
    <message>
        <source>this line: %1</source>
        <translation>cette ligne&#xa0;: %1</translation>
    </message>
    <message>
        <source>the lines marked on the page (%1)</source>
        <translation>les lignes marquées sur la page (%1)</translation>
    </message>
    <message>
        <source>the lines without a page (%1)</source>
        <translation>les lignes sans page (%1)</translation>
    </message>
    <message>
        <source>every line of the month (%1)</source>
        <translation>toutes les lignes du mois (%1)</translation>
    </message>
    <message>
        <source>on paper: %1, %2</source>
        <translation>sur papier&#xa0;: %1, %2</translation>
    </message>
    <message>
        <source>no place on paper any more: %1</source>
        <translation>plus de place sur papier&#xa0;: %1</translation>
    </message>
    <message>
        <source>named its page on paper</source>
        <translation>sa page sur papier nommée</translation>
    </message>
    <message>
        <source>took its page on paper away</source>
        <translation>sa page sur papier ôtée</translation>
    </message>
    <message>
        <source>Nothing has been written down in this month that could be moved.</source>
        <translation>Rien n’a été noté dans ce mois qui puisse être déplacé.</translation>
    </message>
    <message>
        <source>moved %1</source>
        <translation>%1 déplacé</translation>
    </message>
    <message>
        <source>%1. Ctrl+Z takes it back.</source>
        <translation>%1. Ctrl+Z le reprend.</translation>
    </message>
    <message>
        <source>Enter revise · Space read back, P its page · S sound, D doubtful, E erroneous · M why missing · V move · Delete withdraw · Shift+↓ marks several · F3 find · O order · Page Up, Page Down turn the month</source>
        <translation>Entrée réviser · Espace collationné, P sa page · S valable, D douteux, E erroné · M pourquoi manquant · V déplacer · Suppr retirer · Maj+↓ en marque plusieurs · F3 chercher · O ranger · Page préc., Page suiv. tournent le mois</translation>
    </message>
    <message>
        <source>Write a month as 2025-03 or a date as 2025-03-14.</source>
        <translation>Écrire un mois comme 2025-03 ou une date comme 2025-03-14.</translation>
    </message>
    <message>
        <source>No hours were promised in this month, and nothing was read.</source>
        <translation>Aucune heure n’était promise ce mois-ci, et rien n’a été lu.</translation>
    </message>
    <message>
        <source>Nothing has been written down in %1. Enter writes down a forgotten reading.</source>
        <translation>Rien n’a été noté en %1. Entrée inscrit un relevé oublié.</translation>
    </message>
    <message>
        <source>Undone: %1</source>
        <translation>Annulé&#xa0;: %1</translation>
    </message>
    <message>
        <source>%1 of %2 hours count</source>
        <translation>%1 heures sur %2 comptent</translation>
    </message>
    <message>
        <source>%1 missing</source>
        <translation>manquants&#xa0;: %1</translation>
    </message>
    <message>
        <source>%1 set aside</source>
        <translation>mis de côté&#xa0;: %1</translation>
    </message>
    <message>
        <source>%1 to be judged</source>
        <translation>%1 à juger</translation>
    </message>
    <message>
        <source>%1 of %2 read back</source>
        <translation>%1 sur %2 collationnés</translation>
    </message>
    <message numerus="yes">
        <source>%n lines marked</source>
        <translation>
            <numerusform>%n ligne marquée</numerusform>
            <numerusform>%n lignes marquées</numerusform>
        </translation>
    </message>
    <message>
        <source>one line shown</source>
        <translation>une ligne montrée</translation>
    </message>
    <message numerus="yes">
        <source>%n lines shown</source>
        <translation>
            <numerusform>%n ligne montrée</numerusform>
            <numerusform>%n lignes montrées</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>wickbook::ui::RegisterView</name>
    <message>
        <source>The month&apos;s lines</source>
        <translation>Les lignes du mois</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::RepeatsPanel</name>
    <message>
        <source>Wet bulb first</source>
        <translation>Le mouillé d’abord</translation>
    </message>
    <message>
        <source>Dry bulb</source>
        <translation>Thermomètre sec</translation>
    </message>
    <message>
        <source>whirl %1, wet bulb</source>
        <translation>passage %1, mouillé</translation>
    </message>
    <message>
        <source>whirl %1, dry bulb</source>
        <translation>passage %1, sec</translation>
    </message>
    <message>
        <source>Whirl %1 is the reading, and its dry bulb is missing.</source>
        <translation>Le passage %1 est le relevé, et son sec manque.</translation>
    </message>
    <message>
        <source>The wet bulb rises: the wick is drying. Stop, wet it and whirl again.</source>
        <translation>Le mouillé monte&#xa0;: la mousseline sèche. Arrêter, humecter et tourner de nouveau.</translation>
    </message>
    <message>
        <source>The wet bulb has not settled yet: whirl again.</source>
        <translation>Le mouillé n’est pas encore stable&#xa0;: tourner de nouveau.</translation>
    </message>
    <message>
        <source>settled</source>
        <translation>stable</translation>
    </message>
    <message>
        <source>lowest</source>
        <translation>minimale</translation>
    </message>
    <message>
        <source>A row for each whirl, until two wet bulbs agree within %1 %2.</source>
        <translation>Une ligne par passage, jusqu’à ce que deux mouillés s’accordent à %1&#xa0;%2.</translation>
    </message>
    <message>
        <source>Settled: whirl %1 is the reading.</source>
        <translation>Stable&#xa0;: le passage %1 est le relevé.</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::RestoreDialog</name>
    <message>
        <source>Stop</source>
        <translation>Arrêter</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Fermer</translation>
    </message>
    <message>
        <source>Say where the copies are: a folder of them, or one file.</source>
        <translation>Dire où sont les copies&#xa0;: un dossier, ou un fichier.</translation>
    </message>
    <message>
        <source>Copies in “%1”</source>
        <translation>Copies dans « %1&#xa0;»</translation>
    </message>
    <message>
        <source>Looking for copies…</source>
        <translation>Recherche des copies…</translation>
    </message>
    <message>
        <source>There are no copies in this folder: choose another folder, or one file.</source>
        <translation>Il n’y a pas de copies dans ce dossier&#xa0;: choisir un autre dossier, ou un fichier.</translation>
    </message>
    <message>
        <source>The copy is verified first; a new book is made of it, and nothing else is written.</source>
        <translation>La copie est d’abord vérifiée&#xa0;; un nouveau livre en est fait, et rien d’autre n’est écrit.</translation>
    </message>
    <message>
        <source>One file</source>
        <translation>Un fichier</translation>
    </message>
    <message>
        <source>%1 restored from %2</source>
        <translation>%1 restauré du %2</translation>
    </message>
    <message>
        <source>Verifying the copy…</source>
        <translation>Vérification de la copie…</translation>
    </message>
    <message>
        <source>Stopped.</source>
        <translation>Arrêté.</translation>
    </message>
    <message>
        <source>Restoring…</source>
        <translation>Restauration…</translation>
    </message>
    <message>
        <source>Stopped. Nothing was written.</source>
        <translation>Arrêté. Rien n’a été écrit.</translation>
    </message>
    <message>
        <source>Where the copies are</source>
        <translation>Où sont les copies</translation>
    </message>
    <message>
        <source>The copy to restore from</source>
        <translation>La copie à restaurer</translation>
    </message>
    <message>
        <source>Wickbook books (*.wickbook);;All files (*)</source>
        <translation>Livres Wickbook (*.wickbook);;Tous les fichiers (*)</translation>
    </message>
    <message>
        <source>Where the new book shall lie</source>
        <translation>Où placer le nouveau livre</translation>
    </message>
    <message>
        <source>Restore from a copy</source>
        <translation>Restaurer d’une copie</translation>
    </message>
    <message>
        <source>&amp;New book</source>
        <translation>&amp;Nouveau livre</translation>
    </message>
    <message>
        <source>file of the new book</source>
        <translation>fichier du nouveau livre</translation>
    </message>
    <message>
        <source>C&amp;hoose…</source>
        <translation>C&amp;hoisir…</translation>
    </message>
    <message>
        <source>choose the file of the new book</source>
        <translation>choisir le fichier du nouveau livre</translation>
    </message>
    <message>
        <source>what differs</source>
        <translation>ce qui diffère</translation>
    </message>
    <message>
        <source>Another &amp;folder…</source>
        <translation>Un autre &amp;dossier…</translation>
    </message>
    <message>
        <source>Another f&amp;ile…</source>
        <translation>Un autre &amp;fichier…</translation>
    </message>
    <message>
        <source>copies to restore from</source>
        <translation>copies à restaurer</translation>
    </message>
    <message>
        <source>how far it is</source>
        <translation>où cela en est</translation>
    </message>
    <message>
        <source>&amp;Verify the copy</source>
        <translation>&amp;Vérifier la copie</translation>
    </message>
    <message>
        <source>&amp;Restore</source>
        <translation>&amp;Restaurer</translation>
    </message>
    <message>
        <source>&amp;Open the restored book</source>
        <translation>&amp;Ouvrir le livre restauré</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::ReviewWindow</name>
    <message>
        <source>Look through the register – Wickbook</source>
        <translation>Examiner le registre – Wickbook</translation>
    </message>
    <message>
        <source>Look through the register</source>
        <translation>Examiner le registre</translation>
    </message>
    <message>
        <source>The register has changed since it was looked through.</source>
        <translation>Le registre a changé depuis son examen.</translation>
    </message>
    <message>
        <source>Look again  F5</source>
        <translation>Examiner encore  F5</translation>
    </message>
    <message>
        <source>Look through the register again</source>
        <translation>Examiner encore le registre</translation>
    </message>
    <message>
        <source>How far the register has been looked through</source>
        <translation>Où en est l’examen du registre</translation>
    </message>
    <message>
        <source>Cancel  Esc</source>
        <translation>Annuler  Échap</translation>
    </message>
    <message>
        <source>Stop looking through the register</source>
        <translation>Cesser d’examiner le registre</translation>
    </message>
    <message>
        <source>The other window can be used meanwhile.</source>
        <translation>L’autre fenêtre reste utilisable pendant ce temps.</translation>
    </message>
    <message>
        <source>Groups of questions, worst first</source>
        <translation>Groupes de questions, les pires d’abord</translation>
    </message>
    <message>
        <source>In the list the keys are for the whole group, in the table for the readings chosen: S sound, D doubtful, E erroneous · W why · 1 to 3 take a likely cause · Enter opens in the register · N next, P previous group · Ctrl+Z takes back</source>
        <translation>Dans la liste les touches valent pour tout le groupe, dans le tableau pour les relevés choisis&#xa0;: S valable, D douteux, E erroné · W pourquoi · 1 à 3 prennent une cause probable · Entrée ouvre dans le registre · N groupe suivant, P précédent · Ctrl+Z reprend</translation>
    </message>
    <message>
        <source>Stopped. Nothing was changed, and nothing is kept of it.</source>
        <translation>Arrêté. Rien n’a été changé, et rien n’en est gardé.</translation>
    </message>
    <message>
        <source>Every reading is judged among its neighbours; what is marked and not yet judged is asked about here.</source>
        <translation>Chaque relevé est jugé parmi ses voisins&#xa0;; ce qui est marqué et non encore jugé est demandé ici.</translation>
    </message>
    <message>
        <source>reading %1 of %2</source>
        <translation>relevé %1 sur %2</translation>
    </message>
    <message>
        <source>Opening the book</source>
        <translation>Ouverture du livre</translation>
    </message>
    <message>
        <source>Reading the book: %1</source>
        <translation>Lecture du livre&#xa0;: %1</translation>
    </message>
    <message>
        <source>Learning what this station usually reads</source>
        <translation>Apprentissage de ce que lit d’ordinaire cette station</translation>
    </message>
    <message>
        <source>Judging: %1</source>
        <translation>Jugement&#xa0;: %1</translation>
    </message>
    <message>
        <source>%1 looked at</source>
        <translation>%1 regardés</translation>
    </message>
    <message>
        <source>%1 to ask about, in %2 groups, worst first; %3.</source>
        <translation>%1 à demander, en %2 groupes, les pires d’abord&#xa0;; %3.</translation>
    </message>
    <message>
        <source>Nothing to ask: no reading is marked that has not been judged; %1.</source>
        <translation>Rien à demander&#xa0;: aucun relevé marqué n’est sans jugement&#xa0;; %1.</translation>
    </message>
    <message>
        <source>Choose a reading that is asked about first, or go to the list for the whole group.</source>
        <translation>Choisir d’abord un relevé demandé, ou aller à la liste pour tout le groupe.</translation>
    </message>
    <message>
        <source>judged %1</source>
        <translation>jugé %1</translation>
    </message>
    <message>
        <source>%1: %2, %3</source>
        <translation>%1&#xa0;: %2, %3</translation>
    </message>
    <message>
        <source>%1 %2. Ctrl+Z takes it back.</source>
        <translation>%1&#xa0;%2. Ctrl+Z le reprend.</translation>
    </message>
    <message>
        <source>What should have stood there is not known. Judge the reading doubtful or erroneous instead.</source>
        <translation>Ce qui aurait dû y être n’est pas connu. Juger plutôt le relevé douteux ou erroné.</translation>
    </message>
    <message>
        <source>slip of the keys: %1</source>
        <translation>méprise aux touches&#xa0;: %1</translation>
    </message>
    <message>
        <source>slip at the thermometer: %1</source>
        <translation>méprise au thermomètre&#xa0;: %1</translation>
    </message>
    <message>
        <source>corrected %1, %2</source>
        <translation>%1 corrigé, %2</translation>
    </message>
    <message>
        <source>%1: %2. What was read first is kept. Ctrl+Z takes it back.</source>
        <translation>%1&#xa0;: %2. Ce qui a été lu d’abord est gardé. Ctrl+Z le reprend.</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::RunPanel</name>
    <message>
        <source>Readings of this group, with their neighbours</source>
        <translation>Relevés de ce groupe, avec leurs voisins</translation>
    </message>
    <message>
        <source>What the checks say</source>
        <translation>Ce que disent les contrôles</translation>
    </message>
    <message>
        <source>&amp;Why</source>
        <translation>&amp;Pourquoi</translation>
    </message>
    <message>
        <source>Why, kept with each judgement</source>
        <translation>Pourquoi, gardé avec chaque jugement</translation>
    </message>
    <message>
        <source>kept with each judgement, for example: fog every morning that week</source>
        <translation>gardé avec chaque jugement, par exemple&#xa0;: brouillard chaque matin de cette semaine</translation>
    </message>
    <message>
        <source>Sound  S</source>
        <translation>Valable  S</translation>
    </message>
    <message>
        <source>Doubtful  D</source>
        <translation>Douteux  D</translation>
    </message>
    <message>
        <source>Erroneous  E</source>
        <translation>Erroné  E</translation>
    </message>
    <message>
        <source>Judge %1</source>
        <translation>Juger %1</translation>
    </message>
    <message>
        <source>No reading is chosen.</source>
        <translation>Aucun relevé n’est choisi.</translation>
    </message>
    <message numerus="yes">
        <source>Judge the %n chosen:</source>
        <translation>
            <numerusform>Juger le %n choisi&#xa0;:</numerusform>
            <numerusform>Juger les %n choisis&#xa0;:</numerusform>
        </translation>
    </message>
    <message>
        <source>Judge this reading:</source>
        <translation>Juger ce relevé&#xa0;:</translation>
    </message>
    <message numerus="yes">
        <source>Judge all %n:</source>
        <translation>
            <numerusform>Juger tous les %n&#xa0;:</numerusform>
            <numerusform>Juger tous les %n&#xa0;:</numerusform>
        </translation>
    </message>
    <message>
        <source>What does the paper say?</source>
        <translation>Que dit le papier&#xa0;?</translation>
    </message>
    <message>
        <source>the paper says so: it was a slip of the keys</source>
        <translation>le papier dit cela&#xa0;: c’était une méprise aux touches</translation>
    </message>
    <message>
        <source>the paper says what stands here: it was a slip at the thermometer</source>
        <translation>le papier dit ce qui est ici&#xa0;: c’était une méprise au thermomètre</translation>
    </message>
    <message>
        <source>neither: back to the notes</source>
        <translation>ni l’un ni l’autre&#xa0;: retour aux notes</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::RunsModel</name>
    <message>
        <source>a slip: %1</source>
        <translation>une méprise&#xa0;: %1</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1&#xa0;: %2</translation>
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
        <translation>Contrôle sur sels</translation>
    </message>
    <message>
        <source>A sensor over saturated salt solutions</source>
        <translation>Un capteur sur des solutions salines saturées</translation>
    </message>
    <message>
        <source>It checks an electronic sensor, not a psychrometer. Wet slurry of the salt in a closed jar, near 25 °C, several hours until it stands still. Lithium chloride is poisonous: gloves, no kitchen vessels, local rules for disposal. A field may stay empty.</source>
        <translation>Cela contrôle un capteur électronique, non un psychromètre. Bouillie humide du sel dans un bocal fermé, près de 25&#xa0;°C, plusieurs heures jusqu’à ce que rien ne bouge. Le chlorure de lithium est toxique&#xa0;: gants, pas de récipients de cuisine, règles locales pour l’éliminer. Un champ peut rester vide.</translation>
    </message>
    <message>
        <source>Date, year-month-day</source>
        <translation>Date, année-mois-jour</translation>
    </message>
    <message>
        <source>Sensor</source>
        <translation>Capteur</translation>
    </message>
    <message>
        <source>temperature of the solutions</source>
        <translation>température des solutions</translation>
    </message>
    <message>
        <source>°C</source>
        <translation>°C</translation>
    </message>
    <message>
        <source>Temperature</source>
        <translation>Température</translation>
    </message>
    <message>
        <source>reading over %1</source>
        <translation>lecture sur %1</translation>
    </message>
    <message>
        <source>% read</source>
        <translation>% lu</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Note</translation>
    </message>
    <message>
        <source>Write it down once it has happened; this date is still to come.</source>
        <translation>L’inscrire quand c’est arrivé&#xa0;; cette date est encore à venir.</translation>
    </message>
    <message>
        <source>%1 is not a relative humidity. Look at the %2.</source>
        <translation>%1 n’est pas une humidité relative. Regarder&#xa0;: %2.</translation>
    </message>
    <message>
        <source>Write what the sensor showed over at least one solution.</source>
        <translation>Écrire ce que le capteur montrait sur au moins une solution.</translation>
    </message>
    <message>
        <source>Write which sensor it was.</source>
        <translation>Écrire quel capteur c’était.</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::SaltCheckSection</name>
    <message>
        <source>A sensor over &amp;salts</source>
        <translation>Un capteur sur des &amp;sels</translation>
    </message>
    <message>
        <source>New salt check…</source>
        <translation>Nouveau contrôle sur sels…</translation>
    </message>
    <message>
        <source>%1, %2: %3</source>
        <translation>%1, %2&#xa0;: %3</translation>
    </message>
    <message>
        <source>For an electronic sensor that the station is compared with; a psychrometer is not checked so.</source>
        <translation>Pour un capteur électronique auquel la station est comparée&#xa0;; un psychromètre ne se contrôle pas ainsi.</translation>
    </message>
    <message>
        <source>salt check</source>
        <translation>contrôle sur sels</translation>
    </message>
    <message>
        <source>Written down. Undo takes it back.</source>
        <translation>Inscrit. Annuler le reprend.</translation>
    </message>
    <message>
        <source>salt check taken back</source>
        <translation>contrôle sur sels repris</translation>
    </message>
    <message>
        <source>Taken back. Undo brings it again.</source>
        <translation>Repris. Annuler le ramène.</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::SalvageDialog</name>
    <message>
        <source>Save what can be read</source>
        <translation>Sauver ce qui est lisible</translation>
    </message>
    <message>
        <source>Save what can be read of %1</source>
        <translation>Sauver ce qui est lisible de %1</translation>
    </message>
    <message>
        <source>Every revision that can still be read goes into a new book, and what can&apos;t is counted. The damaged book stays as it is: keep it. Where there is a copy that verifies, restore that one first.</source>
        <translation>Chaque version encore lisible entre dans un nouveau livre, et ce qui ne l’est pas est compté. Le livre endommagé reste tel quel&#xa0;: le garder. S’il y a une copie vérifiée, la restaurer d’abord.</translation>
    </message>
    <message>
        <source>what came back and what is lost</source>
        <translation>ce qui est revenu et ce qui est perdu</translation>
    </message>
    <message>
        <source>how far it is</source>
        <translation>où cela en est</translation>
    </message>
    <message>
        <source>&amp;Name the new book…</source>
        <translation>&amp;Nommer le nouveau livre…</translation>
    </message>
    <message>
        <source>&amp;Stop</source>
        <translation>&amp;Arrêter</translation>
    </message>
    <message>
        <source>&amp;Open the new book</source>
        <translation>&amp;Ouvrir le nouveau livre</translation>
    </message>
    <message>
        <source>&amp;Close</source>
        <translation>&amp;Fermer</translation>
    </message>
    <message>
        <source>%1 salvaged</source>
        <translation>%1 sauvé</translation>
    </message>
    <message>
        <source>Reading %1 page by page.</source>
        <translation>Lecture de %1 page par page.</translation>
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
        <translation>&amp;Papier</translation>
    </message>
    <message>
        <source>&amp;Look at the pages…</source>
        <translation>&amp;Regarder les pages…</translation>
    </message>
    <message>
        <source>P&amp;rint…</source>
        <translation>&amp;Imprimer…</translation>
    </message>
    <message>
        <source>&amp;Save as PDF…</source>
        <translation>&amp;Enregistrer en PDF…</translation>
    </message>
    <message>
        <source>&amp;Close</source>
        <translation>&amp;Fermer</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::SideBySideForm</name>
    <message>
        <source>Beside another instrument</source>
        <translation>À côté d’un autre instrument</translation>
    </message>
    <message>
        <source>Another instrument beside the station&apos;s</source>
        <translation>Un autre instrument à côté de celui de la station</translation>
    </message>
    <message>
        <source>Same place, same air, read within five minutes of the station&apos;s pair. A reference tells how far the station lies off and gives its own coefficient; a new instrument or site goes beside the old for a year before it takes over.</source>
        <translation>Même lieu, même air, lu à moins de cinq minutes du couple de la station. Une référence dit de combien la station s’écarte et donne son coefficient propre&#xa0;; un nouvel instrument ou site va un an à côté de l’ancien avant de prendre le relais.</translation>
    </message>
    <message>
        <source>What it is</source>
        <translation>Ce que c’est</translation>
    </message>
    <message>
        <source>It is</source>
        <translation>C’est</translation>
    </message>
    <message>
        <source>First day, year-month-day</source>
        <translation>Premier jour, année-mois-jour</translation>
    </message>
    <message>
        <source>Last day</source>
        <translation>Dernier jour</translation>
    </message>
    <message>
        <source>as announced; may stay empty</source>
        <translation>comme annoncé&#xa0;; peut rester vide</translation>
    </message>
    <message>
        <source>uncertainty of the reference</source>
        <translation>incertitude de la référence</translation>
    </message>
    <message>
        <source>% RH, standard; of a reference</source>
        <translation>% HR, type&#xa0;; d’une référence</translation>
    </message>
    <message>
        <source>Its uncertainty</source>
        <translation>Son incertitude</translation>
    </message>
    <message>
        <source>no psychrometer, or as the station&apos;s</source>
        <translation>pas un psychromètre, ou comme la station</translation>
    </message>
    <message>
        <source>A psychrometer, exposed as</source>
        <translation>Un psychromètre, exposé</translation>
    </message>
    <message>
        <source>What was decided</source>
        <translation>Ce qui a été décidé</translation>
    </message>
    <message>
        <source>at the end: joined, broken, coefficient taken over from …</source>
        <translation>à la fin&#xa0;: jointes, rompues, coefficient pris du …</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Note</translation>
    </message>
    <message>
        <source>Write what the other instrument is.</source>
        <translation>Écrire ce qu’est l’autre instrument.</translation>
    </message>
    <message>
        <source>The last day lies before the first.</source>
        <translation>Le dernier jour est avant le premier.</translation>
    </message>
    <message>
        <source>The uncertainty of a reference lies between 0 and 20 % RH.</source>
        <translation>L’incertitude d’une référence se trouve entre 0 et 20&#xa0;% HR.</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::SideBySideSection</name>
    <message>
        <source>Beside a&amp;nother instrument</source>
        <translation>À côté d’u&amp;n autre instrument</translation>
    </message>
    <message>
        <source>Announce one…</source>
        <translation>En annoncer un…</translation>
    </message>
    <message>
        <source>Readings and what they say…</source>
        <translation>Relevés et ce qu’ils disent…</translation>
    </message>
    <message>
        <source>%1, %2: from %3</source>
        <translation>%1, %2&#xa0;: depuis %3</translation>
    </message>
    <message>
        <source> to %1</source>
        <translation> à %1</translation>
    </message>
    <message>
        <source>A reference tells how far the station lies off and gives its own coefficient; what shall follow the station&apos;s instrument stands beside it first.</source>
        <translation>Une référence dit de combien la station s’écarte et donne son coefficient propre&#xa0;; ce qui doit succéder à l’instrument de la station va d’abord à côté.</translation>
    </message>
    <message>
        <source>beside another instrument: %1</source>
        <translation>à côté d’un autre instrument&#xa0;: %1</translation>
    </message>
    <message>
        <source>Written down. Its readings come in under “Readings and what they say”.</source>
        <translation>Inscrit. Ses relevés entrent sous «&#xa0;Relevés et ce qu’ils disent&#xa0;».</translation>
    </message>
    <message>
        <source>comparison taken back</source>
        <translation>comparaison reprise</translation>
    </message>
    <message>
        <source>Taken back with its readings. Undo brings them again.</source>
        <translation>Reprise avec ses relevés. Annuler les ramène.</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::SignForm</name>
    <message>
        <source>%1 of %2 readings at observing hours count. The numbers and the readings are kept as they are now. A change stays possible afterwards; the month and its report then say so.</source>
        <translation>%1 relevés sur %2 aux heures d’observation comptent. Nombres et relevés sont gardés comme ils sont maintenant. Un changement reste possible ensuite&#xa0;; le mois et son rapport le disent alors.</translation>
    </message>
    <message>
        <source>Queries still open: %1; their readings stay set aside. Better settle them first.</source>
        <translation>Questions encore ouvertes&#xa0;: %1&#xa0;; leurs relevés restent de côté. Mieux vaut les régler d’abord.</translation>
    </message>
    <message>
        <source>Sign off</source>
        <translation>Viser</translation>
    </message>
    <message>
        <source>Sign off %1</source>
        <translation>Viser %1</translation>
    </message>
    <message>
        <source>&amp;Initials or name</source>
        <translation>&amp;Initiales ou nom</translation>
    </message>
    <message>
        <source>&amp;Note</source>
        <translation>&amp;Note</translation>
    </message>
    <message>
        <source>Write who signs the month off.</source>
        <translation>Écrire qui vise le mois.</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::StationForm</name>
    <message>
        <source>The hours follow standard time all the year, and so the sun; while summer time is in force the clock is ahead of them.</source>
        <translation>Les heures suivent toute l’année l’heure normale, donc le soleil&#xa0;; pendant l’heure d’été l’horloge est en avance sur elles.</translation>
    </message>
    <message>
        <source>The hours go with the clock on the wall; when it changes in spring and autumn they move against the sun, which changes a humidity record.</source>
        <translation>Les heures vont avec l’horloge du mur&#xa0;; quand elle change au printemps et en automne, elles se déplacent par rapport au soleil, ce qui change une série d’humidité.</translation>
    </message>
    <message>
        <source>The hours are those of UTC, the same moment everywhere.</source>
        <translation>Les heures sont celles de l’UTC, partout le même instant.</translation>
    </message>
    <message>
        <source>Tomorrow the clock skips %1, so nothing is expected then.</source>
        <translation>Demain l’horloge saute %1, donc rien n’est attendu alors.</translation>
    </message>
    <message>
        <source>Tomorrow %1 is read when the clock shows %2.</source>
        <translation>Demain %1 se lit quand l’horloge montre %2.</translation>
    </message>
    <message>
        <source>Start a station</source>
        <translation>Commencer une station</translation>
    </message>
    <message>
        <source>One page; everything on it can be changed later.</source>
        <translation>Une page&#xa0;; tout peut y être changé plus tard.</translation>
    </message>
    <message>
        <source>&amp;Start the book</source>
        <translation>&amp;Commencer le livre</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Retour</translation>
    </message>
    <message>
        <source>Latitude runs from −90 to 90.</source>
        <translation>La latitude va de −90 à 90.</translation>
    </message>
    <message>
        <source>Longitude runs from −180 to 180.</source>
        <translation>La longitude va de −180 à 180.</translation>
    </message>
    <message>
        <source>The elevation must lie between −500 and 9000 m; write it in metres.</source>
        <translation>L’altitude doit être entre −500 et 9000&#xa0;m&#xa0;; l’écrire en mètres.</translation>
    </message>
    <message>
        <source>There is no time zone of that name. Choose one from the list.</source>
        <translation>Il n’y a pas de fuseau de ce nom. En choisir un dans la liste.</translation>
    </message>
    <message>
        <source>name of the station</source>
        <translation>nom de la station</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nom</translation>
    </message>
    <message>
        <source>latitude</source>
        <translation>latitude</translation>
    </message>
    <message>
        <source>° north</source>
        <translation>° nord</translation>
    </message>
    <message>
        <source>longitude</source>
        <translation>longitude</translation>
    </message>
    <message>
        <source>° east</source>
        <translation>° est</translation>
    </message>
    <message>
        <source>Degrees and decimals, south with a minus sign.</source>
        <translation>Degrés et décimales, le sud avec un signe moins.</translation>
    </message>
    <message>
        <source>Degrees and decimals, west with a minus sign.</source>
        <translation>Degrés et décimales, l’ouest avec un signe moins.</translation>
    </message>
    <message>
        <source>Place, south and west with −</source>
        <translation>Lieu, sud et ouest avec −</translation>
    </message>
    <message>
        <source>elevation</source>
        <translation>altitude</translation>
    </message>
    <message>
        <source>m</source>
        <translation>m</translation>
    </message>
    <message>
        <source>Elevation above the sea</source>
        <translation>Altitude au-dessus de la mer</translation>
    </message>
    <message>
        <source>observing hours</source>
        <translation>heures d’observation</translation>
    </message>
    <message>
        <source>Observing hours</source>
        <translation>Heures d’observation</translation>
    </message>
    <message>
        <source>what the hours follow</source>
        <translation>ce que suivent les heures</translation>
    </message>
    <message>
        <source>They follow</source>
        <translation>Elles suivent</translation>
    </message>
    <message>
        <source>time zone</source>
        <translation>fuseau horaire</translation>
    </message>
    <message>
        <source>Time zone</source>
        <translation>Fuseau horaire</translation>
    </message>
    <message>
        <source>how the thermometers are exposed</source>
        <translation>comment les thermomètres sont exposés</translation>
    </message>
    <message>
        <source>The thermometers are</source>
        <translation>Les thermomètres sont</translation>
    </message>
    <message>
        <source>scale of the thermometers</source>
        <translation>échelle des thermomètres</translation>
    </message>
    <message>
        <source>finest step that is read</source>
        <translation>plus petit pas lu</translation>
    </message>
    <message>
        <source>tenths</source>
        <translation>dixièmes</translation>
    </message>
    <message>
        <source>fifths</source>
        <translation>cinquièmes</translation>
    </message>
    <message>
        <source>halves</source>
        <translation>demis</translation>
    </message>
    <message>
        <source>whole degrees</source>
        <translation>degrés entiers</translation>
    </message>
    <message>
        <source>read to</source>
        <translation>lu à</translation>
    </message>
    <message>
        <source>Scale</source>
        <translation>Échelle</translation>
    </message>
    <message>
        <source>lowest mark</source>
        <translation>trait le plus bas</translation>
    </message>
    <message>
        <source>highest mark</source>
        <translation>trait le plus haut</translation>
    </message>
    <message>
        <source>to</source>
        <translation>à</translation>
    </message>
    <message>
        <source>Marks run from</source>
        <translation>Les traits vont de</translation>
    </message>
    <message>
        <source>Give the station a name, so that its book can be told from others.</source>
        <translation>Donner un nom à la station, pour distinguer son livre des autres.</translation>
    </message>
    <message>
        <source>Write the %1: the checks and the pressure need it.</source>
        <translation>Écrire&#xa0;: %1&#xa0;; les contrôles et la pression en ont besoin.</translation>
    </message>
    <message>
        <source>There is no such place: latitude runs from −90 to 90, longitude from −180 to 180.</source>
        <translation>Un tel lieu n’existe pas&#xa0;: la latitude va de −90 à 90, la longitude de −180 à 180.</translation>
    </message>
    <message>
        <source>The lowest mark of the scale must lie below the highest.</source>
        <translation>Le trait le plus bas de l’échelle doit être sous le plus haut.</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::StationPage</name>
    <message>
        <source>From a date on the station &amp;differs…</source>
        <translation>À partir d’une date la station &amp;diffère…</translation>
    </message>
    <message>
        <source>what is known of the station</source>
        <translation>ce qu’on sait de la station</translation>
    </message>
    <message>
        <source>Book: %1</source>
        <translation>Livre&#xa0;: %1</translation>
    </message>
    <message>
        <source>1 reading</source>
        <translation>1 relevé</translation>
    </message>
    <message numerus="yes">
        <source>%n readings</source>
        <translation>
            <numerusform>%n relevé</numerusform>
            <numerusform>%n relevés</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 à %2</translation>
    </message>
    <message>
        <source>From %1</source>
        <translation>Depuis %1</translation>
    </message>
    <message>
        <source>From the beginning</source>
        <translation>Depuis le début</translation>
    </message>
    <message>
        <source>%1, in force</source>
        <translation>%1, en vigueur</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Lieu</translation>
    </message>
    <message>
        <source>Elevation</source>
        <translation>Altitude</translation>
    </message>
    <message>
        <source>%1 m</source>
        <translation>%1&#xa0;m</translation>
    </message>
    <message>
        <source>Observing hours</source>
        <translation>Heures d’observation</translation>
    </message>
    <message>
        <source>none, extra readings only</source>
        <translation>aucune, relevés hors heure seulement</translation>
    </message>
    <message>
        <source>%1; they follow %2</source>
        <translation>%1&#xa0;; elles suivent %2</translation>
    </message>
    <message>
        <source>Time zone</source>
        <translation>Fuseau horaire</translation>
    </message>
    <message>
        <source>Exposure</source>
        <translation>Exposition</translation>
    </message>
    <message>
        <source>Own coefficient</source>
        <translation>Coefficient propre</translation>
    </message>
    <message>
        <source>%1 × 10⁻⁴ per degree, water</source>
        <translation>%1 × 10⁻⁴ par degré, eau</translation>
    </message>
    <message>
        <source>Mean pressure</source>
        <translation>Pression moyenne</translation>
    </message>
    <message>
        <source>%1 hPa, where none was read</source>
        <translation>%1&#xa0;hPa, là où aucune n’a été lue</translation>
    </message>
    <message>
        <source>Surroundings</source>
        <translation>Environs</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::TakeBackForm</name>
    <message>
        <source>Take back</source>
        <translation>Reprendre</translation>
    </message>
    <message>
        <source>Take it back</source>
        <translation>Reprendre</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::TakeInDialog</name>
    <message>
        <source>Stop</source>
        <translation>Arrêter</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Fermer</translation>
    </message>
    <message>
        <source>Leave it</source>
        <translation>Laisser</translation>
    </message>
    <message>
        <source>Drop a table (CSV) or files of the Station Exchange Format here, or choose them. Nothing is written before you have seen what would become of every line.</source>
        <translation>Déposer ici un tableau (CSV) ou des fichiers au Station Exchange Format, ou les choisir. Rien n’est écrit avant que vous ayez vu ce que deviendrait chaque ligne.</translation>
    </message>
    <message>
        <source>Choose a file</source>
        <translation>Choisir un fichier</translation>
    </message>
    <message>
        <source>Tables and SEF files (*.csv *.tsv *.txt *.tab *.sef);;All files (*)</source>
        <translation>Tableaux et fichiers SEF (*.csv *.tsv *.txt *.tab *.sef);;Tous les fichiers (*)</translation>
    </message>
    <message>
        <source>%1 (Station Exchange Format; times in UTC, joined on time)</source>
        <translation>%1 (Station Exchange Format&#xa0;; heures en UTC, jointes par l’heure)</translation>
    </message>
    <message>
        <source>%1 (cells by %2, %3).</source>
        <translation>%1 (cellules par %2, %3).</translation>
    </message>
    <message>
        <source>Read as the last file with these names was.</source>
        <translation>Lu comme le dernier fichier à ces noms.</translation>
    </message>
    <message>
        <source>Its observing hours are taken by the station&apos;s rule: %1.</source>
        <translation>Ses heures d’observation sont prises par la règle de la station&#xa0;: %1.</translation>
    </message>
    <message>
        <source>Trying what every line would become…</source>
        <translation>Essai de ce que deviendrait chaque ligne…</translation>
    </message>
    <message>
        <source>Stopped. Nothing was written.</source>
        <translation>Arrêté. Rien n’a été écrit.</translation>
    </message>
    <message>
        <source>Read the whole file before bringing it in.</source>
        <translation>Lire tout le fichier avant de le reprendre.</translation>
    </message>
    <message>
        <source>One reading of the book differs from the file:</source>
        <translation>Un relevé du livre diffère du fichier&#xa0;:</translation>
    </message>
    <message>
        <source>%1 readings of the book differ from the file:</source>
        <translation>%1 relevés du livre diffèrent du fichier&#xa0;:</translation>
    </message>
    <message>
        <source>&amp;Bring in %1</source>
        <translation>Re&amp;prendre %1</translation>
    </message>
    <message>
        <source>Bringing in…</source>
        <translation>Reprise…</translation>
    </message>
    <message>
        <source>bring in %1</source>
        <translation>reprendre %1</translation>
    </message>
    <message>
        <source>Brought in: %1, of these marked: %2. Left out: %3.</source>
        <translation>Repris&#xa0;: %1, dont marqués&#xa0;: %2. Laissés&#xa0;: %3.</translation>
    </message>
    <message>
        <source>The book as it was before is kept among its copies as “%1”.</source>
        <translation>Le livre tel qu’il était est gardé parmi ses copies sous « %1&#xa0;».</translation>
    </message>
    <message>
        <source>Something was changed since: undo that first, with Ctrl+Z.</source>
        <translation>Quelque chose a changé depuis&#xa0;: l’annuler d’abord, par Ctrl+Z.</translation>
    </message>
    <message>
        <source>Withdrawn: nothing of it counts any more; the history keeps what was brought in.</source>
        <translation>Retiré&#xa0;: rien n’en compte plus&#xa0;; l’histoire garde ce qui a été repris.</translation>
    </message>
    <message>
        <source>Not everything could be withdrawn, so nothing was.</source>
        <translation>Tout n’a pu être retiré, donc rien ne l’a été.</translation>
    </message>
    <message>
        <source>Where the lines that are left out shall lie</source>
        <translation>Où placer les lignes laissées</translation>
    </message>
    <message>
        <source>%1 left out.csv</source>
        <translation>%1 laissées.csv</translation>
    </message>
    <message>
        <source>Tables (*.csv)</source>
        <translation>Tableaux (*.csv)</translation>
    </message>
    <message>
        <source>Saved as “%1”, each line with its reason.</source>
        <translation>Enregistré sous « %1&#xa0;», chaque ligne avec sa raison.</translation>
    </message>
    <message>
        <source>Bring in a register</source>
        <translation>Reprendre un registre</translation>
    </message>
    <message>
        <source>C&amp;hoose a file…</source>
        <translation>C&amp;hoisir un fichier…</translation>
    </message>
    <message>
        <source>which lines are shown</source>
        <translation>quelles lignes sont montrées</translation>
    </message>
    <message>
        <source>all lines</source>
        <translation>toutes les lignes</translation>
    </message>
    <message>
        <source>what is new</source>
        <translation>ce qui est nouveau</translation>
    </message>
    <message>
        <source>what is marked</source>
        <translation>ce qui est marqué</translation>
    </message>
    <message>
        <source>conflicts</source>
        <translation>les conflits</translation>
    </message>
    <message>
        <source>what can&apos;t come in</source>
        <translation>ce qui ne peut entrer</translation>
    </message>
    <message>
        <source>what is there already</source>
        <translation>ce qui est déjà là</translation>
    </message>
    <message>
        <source>what every line would become</source>
        <translation>ce que deviendrait chaque ligne</translation>
    </message>
    <message>
        <source>what becomes of conflicts</source>
        <translation>ce que deviennent les conflits</translation>
    </message>
    <message>
        <source>keep what the book has</source>
        <translation>garder ce qu’a le livre</translation>
    </message>
    <message>
        <source>take the file&apos;s; the old ones stay in the history</source>
        <translation>prendre celui du fichier&#xa0;; les anciens restent dans l’histoire</translation>
    </message>
    <message>
        <source>leave these lines out and list them</source>
        <translation>laisser ces lignes et les lister</translation>
    </message>
    <message>
        <source>&amp;First keep a copy of the book</source>
        <translation>&amp;D’abord garder une copie du livre</translation>
    </message>
    <message>
        <source>how far it is</source>
        <translation>où cela en est</translation>
    </message>
    <message>
        <source>&amp;Read the whole file</source>
        <translation>&amp;Lire tout le fichier</translation>
    </message>
    <message>
        <source>&amp;Save what is left out…</source>
        <translation>&amp;Enregistrer ce qui est laissé…</translation>
    </message>
    <message>
        <source>&amp;Withdraw what was brought in</source>
        <translation>&amp;Retirer ce qui a été repris</translation>
    </message>
    <message>
        <source>&amp;Bring in</source>
        <translation>Re&amp;prendre</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::ThermometerDrawing</name>
    <message>
        <source>Drawn dry bulb thermometer</source>
        <translation>Thermomètre sec dessiné</translation>
    </message>
    <message>
        <source>Drawn wet bulb thermometer</source>
        <translation>Thermomètre mouillé dessiné</translation>
    </message>
    <message>
        <source>Up and down move the column by a step of the scale, Page Up and Page Down by ten.</source>
        <translation>Haut et bas déplacent la colonne d’un pas de l’échelle, Page préc. et Page suiv. de dix.</translation>
    </message>
    <message>
        <source>below scale</source>
        <translation>sous l’échelle</translation>
    </message>
    <message>
        <source>no reading yet</source>
        <translation>pas encore de relevé</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::ThermometerForm</name>
    <message>
        <source>Thermometer</source>
        <translation>Thermomètre</translation>
    </message>
    <message>
        <source>Change a thermometer</source>
        <translation>Changer un thermomètre</translation>
    </message>
    <message>
        <source>A new thermometer</source>
        <translation>Un nouveau thermomètre</translation>
    </message>
    <message>
        <source>What was read with it stays as it was read. A column that breaks or a zero that moved is a correction, not a new thermometer.</source>
        <translation>Ce qui a été lu avec lui reste comme lu. Une colonne brisée ou un zéro déplacé est une correction, non un nouveau thermomètre.</translation>
    </message>
    <message>
        <source>Serial number or name</source>
        <translation>Numéro de série ou nom</translation>
    </message>
    <message>
        <source>Liquid</source>
        <translation>Liquide</translation>
    </message>
    <message>
        <source>spirit, mercury, …</source>
        <translation>alcool, mercure, …</translation>
    </message>
    <message>
        <source>Scale in</source>
        <translation>Échelle en</translation>
    </message>
    <message>
        <source>Read to</source>
        <translation>Lu à</translation>
    </message>
    <message>
        <source>finest step that is read</source>
        <translation>plus petit pas lu</translation>
    </message>
    <message>
        <source>Lowest mark</source>
        <translation>Trait le plus bas</translation>
    </message>
    <message>
        <source>lowest mark</source>
        <translation>trait le plus bas</translation>
    </message>
    <message>
        <source>Highest mark</source>
        <translation>Trait le plus haut</translation>
    </message>
    <message>
        <source>highest mark</source>
        <translation>trait le plus haut</translation>
    </message>
    <message>
        <source>not yet</source>
        <translation>pas encore</translation>
    </message>
    <message>
        <source>as the dry bulb</source>
        <translation>comme sec</translation>
    </message>
    <message>
        <source>as the wet bulb</source>
        <translation>comme mouillé</translation>
    </message>
    <message>
        <source>It hangs</source>
        <translation>Il est placé</translation>
    </message>
    <message>
        <source>From, year-month-day</source>
        <translation>Depuis, année-mois-jour</translation>
    </message>
    <message>
        <source>Write the number on it, or what you call it.</source>
        <translation>Écrire le numéro qu’il porte, ou comment vous l’appelez.</translation>
    </message>
    <message>
        <source>There is a thermometer “%1” already. Give this one another name.</source>
        <translation>Il y a déjà un thermomètre « %1&#xa0;». Donner un autre nom à celui-ci.</translation>
    </message>
    <message>
        <source>Write the %1.</source>
        <translation>Écrire&#xa0;: %1.</translation>
    </message>
    <message>
        <source>The finest step that is read lies between 0.01 and 2 degrees; look at “%1”.</source>
        <translation>Le plus petit pas lu se trouve entre 0,01 et 2 degrés&#xa0;; regarder « %1&#xa0;».</translation>
    </message>
    <message>
        <source>The lowest mark must lie below the highest.</source>
        <translation>Le trait le plus bas doit être sous le plus haut.</translation>
    </message>
    <message>
        <source>The other bulb&apos;s thermometer is not known. Hang the pair up under “The pair in use”.</source>
        <translation>L’autre thermomètre n’est pas connu. Placer le couple sous «&#xa0;Le couple en service&#xa0;».</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::ThermometerSection</name>
    <message>
        <source>unknown</source>
        <translation>inconnu</translation>
    </message>
    <message>
        <source>&amp;Thermometers</source>
        <translation>&amp;Thermomètres</translation>
    </message>
    <message>
        <source>New thermometer…</source>
        <translation>Nouveau thermomètre…</translation>
    </message>
    <message>
        <source>dry bulb now</source>
        <translation>sec actuel</translation>
    </message>
    <message>
        <source>wet bulb now</source>
        <translation>mouillé actuel</translation>
    </message>
    <message>
        <source>not in use</source>
        <translation>hors service</translation>
    </message>
    <message>
        <source>%1, %2: %3</source>
        <translation>%1, %2&#xa0;: %3</translation>
    </message>
    <message>
        <source>No thermometer is written down yet; readings are used as they are read.</source>
        <translation>Aucun thermomètre n’est encore inscrit&#xa0;; les relevés valent comme lus.</translation>
    </message>
    <message>
        <source>thermometer changed: %1</source>
        <translation>thermomètre changé&#xa0;: %1</translation>
    </message>
    <message>
        <source>new thermometer: %1</source>
        <translation>nouveau thermomètre&#xa0;: %1</translation>
    </message>
    <message>
        <source>Kept. Readings are worked out afresh; undo takes it back.</source>
        <translation>Gardé. Les relevés sont recalculés&#xa0;; annuler le reprend.</translation>
    </message>
    <message>
        <source>It hangs, or hung, in the screen: take it down under “The pair in use” first.</source>
        <translation>Il est, ou a été, dans l’abri&#xa0;: l’ôter d’abord sous «&#xa0;Le couple en service&#xa0;».</translation>
    </message>
    <message>
        <source>thermometer taken back: %1</source>
        <translation>thermomètre repris&#xa0;: %1</translation>
    </message>
    <message>
        <source>Taken back. Undo brings it again.</source>
        <translation>Repris. Annuler le ramène.</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::TypedNumberEdit</name>
    <message>
        <source>below scale</source>
        <translation>sous l’échelle</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::VerdictModel</name>
    <message>
        <source>line</source>
        <translation>ligne</translation>
    </message>
    <message>
        <source>what becomes of it</source>
        <translation>ce qu’elle devient</translation>
    </message>
    <message>
        <source>reading</source>
        <translation>relevé</translation>
    </message>
    <message>
        <source>dry</source>
        <translation>sec</translation>
    </message>
    <message>
        <source>wet</source>
        <translation>mouillé</translation>
    </message>
    <message>
        <source>why</source>
        <translation>pourquoi</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::WeatherChoice</name>
    <message>
        <source>weather</source>
        <translation>temps</translation>
    </message>
    <message>
        <source>none</source>
        <translation>aucune</translation>
    </message>
    <message>
        <source>not noted</source>
        <translation>non noté</translation>
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
        <translation>de la main aux réservoirs, en centimètres</translation>
    </message>
    <message>
        <source>cm</source>
        <translation>cm</translation>
    </message>
    <message>
        <source>a sound at each turn</source>
        <translation>un son à chaque tour</translation>
    </message>
    <message>
        <source>no movement, numbers only</source>
        <translation>pas de mouvement, des nombres seulement</translation>
    </message>
    <message>
        <source>From the hand to the bulbs</source>
        <translation>De la main aux réservoirs</translation>
    </message>
    <message>
        <source>%1 turns a second</source>
        <translation>%1 tours par seconde</translation>
    </message>
    <message>
        <source>Write the distance, from 5 to 100 cm.</source>
        <translation>Écrire la distance, de 5 à 100&#xa0;cm.</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Arrêter</translation>
    </message>
    <message>
        <source>Start</source>
        <translation>Commencer</translation>
    </message>
    <message>
        <source>turn %1</source>
        <translation>tour %1</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::WickForm</name>
    <message>
        <source>Wick and water</source>
        <translation>Mousseline et eau</translation>
    </message>
    <message>
        <source>Change an entry of the log</source>
        <translation>Changer une note du carnet</translation>
    </message>
    <message>
        <source>What was done to the wick</source>
        <translation>Ce qui a été fait à la mousseline</translation>
    </message>
    <message>
        <source>A new wick: muslin soaked and washed free of dressing, one layer, tied above and below the bulb, a thread of cotton to the reservoir; not touched with the fingers. Water: distilled or rain.</source>
        <translation>Une nouvelle mousseline&#xa0;: trempée et lavée de tout apprêt, une seule couche, liée au-dessus et au-dessous du réservoir, un fil de coton jusqu’à l’eau&#xa0;; sans la toucher des doigts. Eau&#xa0;: distillée ou de pluie.</translation>
    </message>
    <message>
        <source>Date, year-month-day</source>
        <translation>Date, année-mois-jour</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Quoi</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Note</translation>
    </message>
    <message>
        <source>Write it down once it has happened; this date is still to come.</source>
        <translation>L’inscrire quand c’est arrivé&#xa0;; cette date est encore à venir.</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::WickSection</name>
    <message>
        <source>&amp;Wick and water</source>
        <translation>&amp;Mousseline et eau</translation>
    </message>
    <message>
        <source>Write down care…</source>
        <translation>Inscrire un soin…</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>Nothing was written down apart from what was ticked with a reading.</source>
        <translation>Rien n’a été inscrit hormis ce qui a été coché avec un relevé.</translation>
    </message>
    <message>
        <source>wick and water: %1</source>
        <translation>mousseline et eau&#xa0;: %1</translation>
    </message>
    <message>
        <source>Written down; it marks the charts. Undo takes it back.</source>
        <translation>Inscrit&#xa0;; cela marque les graphiques. Annuler le reprend.</translation>
    </message>
    <message>
        <source>wick and water: entry taken back</source>
        <translation>mousseline et eau&#xa0;: note reprise</translation>
    </message>
    <message>
        <source>Taken back. Undo brings it again.</source>
        <translation>Repris. Annuler le ramène.</translation>
    </message>
</context>
<context>
    <name>wickbook::ui::WorkingDialog</name>
    <message>
        <source>The working</source>
        <translation>Le calcul</translation>
    </message>
    <message>
        <source>&amp;Copy</source>
        <translation>&amp;Copier</translation>
    </message>
    <message>
        <source>Copy as a p&amp;icture</source>
        <translation>Copier en &amp;image</translation>
    </message>
    <message>
        <source>&amp;Print…</source>
        <translation>I&amp;mprimer…</translation>
    </message>
    <message>
        <source>Keep as P&amp;DF…</source>
        <translation>Garder en P&amp;DF…</translation>
    </message>
    <message>
        <source>C&amp;lose</source>
        <translation>&amp;Fermer</translation>
    </message>
    <message>
        <source>Copied as text.</source>
        <translation>Copié comme texte.</translation>
    </message>
    <message>
        <source>Copied as a picture.</source>
        <translation>Copié comme image.</translation>
    </message>
    <message>
        <source>The PDF can&apos;t be written: %1. Choose another folder.</source>
        <translation>Le PDF ne peut être écrit&#xa0;: %1. Choisir un autre dossier.</translation>
    </message>
    <message>
        <source>Keep the working as a PDF</source>
        <translation>Garder le calcul en PDF</translation>
    </message>
    <message>
        <source>working.pdf</source>
        <translation>calcul.pdf</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>Kept as %1.</source>
        <translation>Gardé sous %1.</translation>
    </message>
</context>
</TS>
