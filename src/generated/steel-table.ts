// Made by .build/steel-table.ts from src/steel/data/*.csv; change the CSV, not this file.
// A grade a line: designation|standard|class|yield min|max|tensile min|max (MPa)|state|mark|typical yield|typical tensile|when the tensile minimum holds.
export const gradeLines = `
DC01|EN 10130:2006|mild|140|280|270|410|as_delivered|seen|||
DC03|EN 10130:2006|mild|140|240|270|370|as_delivered|seen|||
DC04|EN 10130:2006|mild|140|210|270|350|as_delivered|seen|||
DC05|EN 10130:2006|mild|140|180|270|330|as_delivered|seen|||
DC06|EN 10130:2006|mild|120|170|270|330|as_delivered|seen|||
DC07|EN 10130:2006|mild|100|150|250|310|as_delivered|memory|||
DC01+ZE|EN 10152:2017|mild||280|270|410|as_delivered|memory|||
DC03+ZE|EN 10152:2017|mild||240|270|370|as_delivered|memory|||
DC04+ZE|EN 10152:2017|mild||220|270|350|as_delivered|memory|||
DC05+ZE|EN 10152:2017|mild|||270|330|as_delivered|memory|||
DC06+ZE|EN 10152:2017|mild|||||as_delivered|memory|||
DC07+ZE|EN 10152:2017|mild|||250|310|as_delivered|memory|||
DC01+LC|EN 10139:1998|mild||280|270|410|as_delivered|seen|||
DC01+C290|EN 10139:1998|cold_hardened|200|380|290|430|cold_hardened|seen|||
DC01+C340|EN 10139:1998|cold_hardened|250||340|490|cold_hardened|seen|||
DC01+C390|EN 10139:1998|cold_hardened|310||390|540|cold_hardened|seen|||
DC01+C440|EN 10139:1998|cold_hardened|360||440|590|cold_hardened|seen|||
DC01+C490|EN 10139:1998|cold_hardened|420||490|640|cold_hardened|seen|||
DC01+C590|EN 10139:1998|cold_hardened|520||590|740|cold_hardened|seen|||
DC01+C690|EN 10139:1998|cold_hardened|630||690||cold_hardened|seen|||
HC180Y|EN 10268:2006+A1:2013|high_strength_if|180|230|330|400|as_delivered|memory|||
HC220Y|EN 10268:2006+A1:2013|high_strength_if|220|270|340|420|as_delivered|memory|||
HC260Y|EN 10268:2006+A1:2013|high_strength_if|260|320|380|440|as_delivered|memory|||
HC220I|EN 10268:2006+A1:2013|isotropic|220|270|300|380|as_delivered|memory|||
HC260I|EN 10268:2006+A1:2013|isotropic|260|310|320|400|as_delivered|memory|||
HC300I|EN 10268:2006+A1:2013|isotropic|300|350|340|440|as_delivered|memory|||
HC180P|EN 10268:2006+A1:2013|rephosphorised|180|230|280|360|as_delivered|memory|||
HC220P|EN 10268:2006+A1:2013|rephosphorised|220|270|320|400|as_delivered|seen|||
HC260P|EN 10268:2006+A1:2013|rephosphorised|260|320|360|440|as_delivered|seen|||
HC300P|EN 10268:2006+A1:2013|rephosphorised|300|360|400|480|as_delivered|seen|||
HC180B|EN 10268:2006+A1:2013|bake_hardening|180|230|290|360|as_delivered|memory|||
HC220B|EN 10268:2006+A1:2013|bake_hardening|220|270|320|400|as_delivered|seen|||
HC260B|EN 10268:2006+A1:2013|bake_hardening|260|320|360|440|as_delivered|seen|||
HC300B|EN 10268:2006+A1:2013|bake_hardening|300|360|390|480|as_delivered|memory|||
HC260LA|EN 10268:2006+A1:2013|hsla|260|330|350|430|as_delivered|memory|||
HC300LA|EN 10268:2006+A1:2013|hsla|300|380|380|480|as_delivered|memory|||
HC340LA|EN 10268:2006+A1:2013|hsla|340|420|410|510|as_delivered|seen|||
HC380LA|EN 10268:2006+A1:2013|hsla|380|480|440|560|as_delivered|memory|||
HC420LA|EN 10268:2006+A1:2013|hsla|420|520|470|590|as_delivered|memory|||
HC460LA|EN 10268:2006+A1:2013|hsla|460|580|510|660|as_delivered|memory|||
HC500LA|EN 10268:2006+A1:2013|hsla|500|620|550|710|as_delivered|memory|||
HCT450X|EN 10338:2015|dual_phase|260|340|450||as_delivered|memory|||
HCT490X|EN 10338:2015|dual_phase|290|380|490||as_delivered|memory|||
HCT590X|EN 10338:2015|dual_phase|330|430|590||as_delivered|memory|||
HCT780X|EN 10338:2015|dual_phase|440|550|780||as_delivered|seen|||
HCT980X|EN 10338:2015|dual_phase|590|740|980||as_delivered|seen|||
HCT980XG|EN 10338:2015|dual_phase|700|850|980||as_delivered|memory|||
HCT690T|EN 10338:2015|trip|400|520|690||as_delivered|memory|||
HCT780T|EN 10338:2015|trip|450|570|780||as_delivered|memory|||
HCT600C|EN 10338:2015|complex_phase|350|500|600||as_delivered|memory|||
HCT780C|EN 10338:2015|complex_phase|570|720|780||as_delivered|memory|||
HCT980C|EN 10338:2015|complex_phase|780|950|980||as_delivered|memory|||
HDT450F|EN 10338:2015|ferrite_bainite|300|420|450||as_delivered|memory|||
HDT580F|EN 10338:2015|ferrite_bainite|460|620|580||as_delivered|memory|||
HDT580X|EN 10338:2015|dual_phase|330|450|580||as_delivered|memory|||
HDT750C|EN 10338:2015|complex_phase|620|760|750||as_delivered|memory|||
HDT760C|EN 10338:2015|complex_phase|660|830|760||as_delivered|seen|||
HDT950C|EN 10338:2015|complex_phase|720|950|950||as_delivered|memory|||
HDT1200M|EN 10338:2015|martensitic|900|1150|1200||as_delivered|memory|||
HCT450X|EN 10346:2015|dual_phase|260|340|450||as_delivered|memory|||
HCT490X|EN 10346:2015|dual_phase|290|380|490||as_delivered|memory|||
HCT590X|EN 10346:2015|dual_phase|330|430|590||as_delivered|memory|||
HCT780X|EN 10346:2015|dual_phase|440|550|780||as_delivered|memory|||
HCT980X|EN 10346:2015|dual_phase|590|740|980||as_delivered|memory|||
HCT980XG|EN 10346:2015|dual_phase|700|850|980||as_delivered|memory|||
HCT690T|EN 10346:2015|trip|400|520|690||as_delivered|memory|||
HCT780T|EN 10346:2015|trip|450|570|780||as_delivered|memory|||
HCT600C|EN 10346:2015|complex_phase|350|500|600||as_delivered|memory|||
HCT780C|EN 10346:2015|complex_phase|570|720|780||as_delivered|memory|||
HCT980C|EN 10346:2015|complex_phase|780|950|980||as_delivered|memory|||
HDT450F|EN 10346:2015|ferrite_bainite|300|420|450||as_delivered|memory|||
HDT580F|EN 10346:2015|ferrite_bainite|460|620|580||as_delivered|memory|||
HDT580X|EN 10346:2015|dual_phase|330|450|580||as_delivered|memory|||
HDT750C|EN 10346:2015|complex_phase|620|760|750||as_delivered|memory|||
HDT760C|EN 10346:2015|complex_phase|660|830|760||as_delivered|memory|||
HDT950C|EN 10346:2015|complex_phase|720|950|950||as_delivered|memory|||
HCT500X|EN 10336:2007|dual_phase|300|380|500||as_delivered|seen|||
HCT600X|EN 10336:2007|dual_phase|340|420|600||as_delivered|seen|||
HDT560F|EN 10346:2009|ferrite_bainite|460||560||as_delivered|memory|||
HDT780C|EN 10346:2009|complex_phase|680||780||as_delivered|memory|||
DX51D|EN 10346:2015|mild|||270|500|as_delivered|memory|||
DX52D|EN 10346:2015|mild|140|300|270|420|as_delivered|memory|||
DX53D|EN 10346:2015|mild|140|260|270|380|as_delivered|seen|||
DX54D|EN 10346:2015|mild|120|220|260|350|as_delivered|memory|||
DX55D|EN 10346:2015|mild|140|240|270|370|as_delivered|memory|||
DX56D|EN 10346:2015|mild|120|180|260|350|as_delivered|seen|||
DX57D|EN 10346:2015|mild|120|170|260|350|as_delivered|seen|||
S220GD|EN 10346:2015|structural|220||300||as_delivered|seen|||
S250GD|EN 10346:2015|structural|250||330||as_delivered|seen|||
S280GD|EN 10346:2015|structural|280||360||as_delivered|seen|||
S320GD|EN 10346:2015|structural|320||390||as_delivered|seen|||
S350GD|EN 10346:2015|structural|350||420||as_delivered|seen|||
S390GD|EN 10346:2015|structural|390||460||as_delivered|memory|||
S420GD|EN 10346:2015|structural|420||480||as_delivered|memory|||
S450GD|EN 10346:2015|structural|450||510||as_delivered|memory|||
S550GD|EN 10346:2015|structural|550||560||as_delivered|seen|||
HX160YD|EN 10346:2015|high_strength_if|160|220|300|360|as_delivered|memory|||
HX180YD|EN 10346:2015|high_strength_if|180|240|330|390|as_delivered|memory|||
HX220YD|EN 10346:2015|high_strength_if|220|280|340|420|as_delivered|memory|||
HX260YD|EN 10346:2015|high_strength_if|260|320|380|440|as_delivered|memory|||
HX300YD|EN 10346:2015|high_strength_if|300|360|390|470|as_delivered|memory|||
HX180BD|EN 10346:2015|bake_hardening|180|240|290|360|as_delivered|memory|||
HX220BD|EN 10346:2015|bake_hardening|220|280|320|400|as_delivered|memory|||
HX260BD|EN 10346:2015|bake_hardening|260|320|360|440|as_delivered|seen|||
HX300BD|EN 10346:2015|bake_hardening|300|360|400|480|as_delivered|memory|||
HX340BD|EN 10346:2015|bake_hardening|340|400|||as_delivered|memory|||
HX260LAD|EN 10346:2015|hsla|260|330|350|430|as_delivered|memory|||
HX300LAD|EN 10346:2015|hsla|300|380|380|480|as_delivered|seen|||
HX340LAD|EN 10346:2015|hsla|340|420|410|510|as_delivered|memory|||
HX380LAD|EN 10346:2015|hsla|380|480|440|560|as_delivered|memory|||
HX420LAD|EN 10346:2015|hsla|420|520|470|590|as_delivered|memory|||
HX460LAD|EN 10346:2015|hsla|460|560|500|640|as_delivered|memory|||
HX500LAD|EN 10346:2015|hsla|500|620|530|690|as_delivered|memory|||
S315MC|EN 10149-2:2013|hsla|315||390|510|as_delivered|seen|||
S355MC|EN 10149-2:2013|hsla|355||430|550|as_delivered|seen|||
S420MC|EN 10149-2:2013|hsla|420||480|620|as_delivered|seen|||
S460MC|EN 10149-2:2013|hsla|460||520|670|as_delivered|seen|||
S500MC|EN 10149-2:2013|hsla|500||550|700|as_delivered|seen|||
S550MC|EN 10149-2:2013|hsla|550||600|760|as_delivered|seen|||
S600MC|EN 10149-2:2013|hsla|600||650|820|as_delivered|seen|||
S650MC|EN 10149-2:2013|hsla|650||700|880|as_delivered|seen|||
S700MC|EN 10149-2:2013|hsla|700||750|950|as_delivered|seen|||
S900MC|EN 10149-2:2013|hsla_ultra_high|900||930|1200|as_delivered|memory|||
S960MC|EN 10149-2:2013|hsla_ultra_high|960||980|1250|as_delivered|memory|||
S260NC|EN 10149-3:2013|hsla|260||370|490|as_delivered|memory|||
S315NC|EN 10149-3:2013|hsla|315||430|550|as_delivered|memory|||
S355NC|EN 10149-3:2013|hsla|355||470|610|as_delivered|memory|||
S420NC|EN 10149-3:2013|hsla|420||530|670|as_delivered|memory|||
DD11|EN 10111:2008|mild|170|340||440|as_delivered|seen|||
DD12|EN 10111:2008|mild|170|320||420|as_delivered|seen|||
DD13|EN 10111:2008|mild|170|310||400|as_delivered|seen|||
DD14|EN 10111:2008|mild|170|290||380|as_delivered|seen|||
22MnB5|works name (chemistry near the boron steels of EN 10083-3)|press_hardening|300|600|450|750|as_delivered|seen|||
22MnB5|works name (chemistry near the boron steels of EN 10083-3)|press_hardening|950||1300|1650|hardened|seen|||
20MnB5|EN 10083-3:2006|quenched_tempered_boron|700||900|1050|hardened|memory|||
30MnB5|EN 10083-3:2006|quenched_tempered_boron|800||950|1150|hardened|memory|||
38MnB5|EN 10083-3:2006|quenched_tempered_boron|900||1050|1250|hardened|memory|||
27MnCrB5-2|EN 10083-3:2006|quenched_tempered_boron|800||1000|1250|hardened|memory|||
33MnCrB5-2|EN 10083-3:2006|quenched_tempered_boron|850||1050|1300|hardened|memory|||
39MnCrB6-2|EN 10083-3:2006|quenched_tempered_boron|900||1100|1350|hardened|memory|||
CR1500T-MB|VDA 239-500|press_hardening|||||hardened|seen||1500|
CR1900T-MB|VDA 239-500|press_hardening|||||hardened|seen||1900|
CR1500T-PS|VDA 239-500|press_hardening|||||hardened|seen||1500|
CR1500T-MS|VDA 239-500|press_hardening|||||hardened|seen||1500|
HC340/460HS|GB/T 34566 style name:2017|press_hardening|340|460|460|600|hardened|seen|||
HC370/550HS|GB/T 34566 style name:2017|press_hardening|370|550|550|750|hardened|seen|||
HC800/1000HS|GB/T 34566 style name:2017|press_hardening|800|1100|1000|1300|hardened|seen|||
HC950/1300HS|GB/T 34566 style name:2017|press_hardening|950|1250|1300|1700|hardened|seen|||
HC1100/1700HS|GB/T 34566 style name:2017|press_hardening|1100|1400|1700|2000|hardened|seen|||
HC1200/1800HS|GB/T 34566 style name:2017|press_hardening|1200|1500|1800|2150|hardened|seen|||
CR1|VDA 239-100:2016|mild|140|280|270|410|as_delivered|memory|||
CR2|VDA 239-100:2016|mild|140|240|270|370|as_delivered|memory|||
CR3|VDA 239-100:2016|mild|140|210|270|350|as_delivered|memory|||
CR4|VDA 239-100:2016|mild|140|180|270|330|as_delivered|memory|||
CR5|VDA 239-100:2016|mild|110|170|260|330|as_delivered|memory|||
HR2|VDA 239-100:2016|mild|||||as_delivered|memory|||
CR160IF|VDA 239-100:2016|high_strength_if|160|210|||as_delivered|memory|||
CR180IF|VDA 239-100:2016|high_strength_if|180|240|330|400|as_delivered|memory|||
CR210IF|VDA 239-100:2016|high_strength_if|210|270|||as_delivered|memory|||
CR240IF|VDA 239-100:2016|high_strength_if|240|300|360|440|as_delivered|memory|||
CR180BH|VDA 239-100:2016|bake_hardening|180|240|290|370|as_delivered|memory|||
CR210BH|VDA 239-100:2016|bake_hardening|210|270|320|400|as_delivered|memory|||
CR240BH|VDA 239-100:2016|bake_hardening|240|300|340|440|as_delivered|memory|||
CR270BH|VDA 239-100:2016|bake_hardening|270|330|360|460|as_delivered|memory|||
CR210LA|VDA 239-100:2016|hsla|210|300|310|410|as_delivered|memory|||
CR240LA|VDA 239-100:2016|hsla|240|320|320|420|as_delivered|memory|||
CR270LA|VDA 239-100:2016|hsla|270|350|350|460|as_delivered|memory|||
CR300LA|VDA 239-100:2016|hsla|300|380|380|490|as_delivered|memory|||
CR340LA|VDA 239-100:2016|hsla|340|430|410|530|as_delivered|memory|||
CR380LA|VDA 239-100:2016|hsla|380|470|||as_delivered|memory|||
CR420LA|VDA 239-100:2016|hsla|420|520|480|600|as_delivered|memory|||
CR460LA|VDA 239-100:2016|hsla|460|580|520|680|as_delivered|memory|||
HR240LA|VDA 239-100:2016|hsla|240||||as_delivered|memory|||
HR270LA|VDA 239-100:2016|hsla|270||||as_delivered|memory|||
HR300LA|VDA 239-100:2016|hsla|300||||as_delivered|memory|||
HR340LA|VDA 239-100:2016|hsla|340||||as_delivered|memory|||
HR380LA|VDA 239-100:2016|hsla|380||||as_delivered|memory|||
HR420LA|VDA 239-100:2016|hsla|420||||as_delivered|memory|||
HR460LA|VDA 239-100:2016|hsla|460||||as_delivered|memory|||
HR500LA|VDA 239-100:2016|hsla|500||||as_delivered|memory|||
HR550LA|VDA 239-100:2016|hsla|550||||as_delivered|memory|||
HR700LA|VDA 239-100:2016|hsla|700||||as_delivered|memory|||
CR290Y490T-DP|VDA 239-100:2016|dual_phase|290|380|490|600|as_delivered|memory|||
CR330Y590T-DP|VDA 239-100:2016|dual_phase|330|430|590|700|as_delivered|memory|||
CR440Y780T-DP|VDA 239-100:2016|dual_phase|440|550|780|900|as_delivered|seen|||
CR590Y980T-DP|VDA 239-100:2016|dual_phase|590|740|980|1130|as_delivered|memory|||
CR700Y980T-DP|VDA 239-100:2016|dual_phase|700|850|980|1130|as_delivered|memory|||
CR330Y590T-DH|VDA 239-100:2016|dual_phase_high_ductility|330|430|590|700|as_delivered|memory|||
CR440Y780T-DH|VDA 239-100:2016|dual_phase_high_ductility|440|550|780|900|as_delivered|seen|||
CR700Y980T-DH|VDA 239-100:2016|dual_phase_high_ductility|700|850|980|1180|as_delivered|memory|||
CR400Y690T-TR|VDA 239-100:2016|trip|400|520|690|800|as_delivered|memory|||
CR450Y780T-TR|VDA 239-100:2016|trip|450|570|780|910|as_delivered|memory|||
CR570Y780T-CP|VDA 239-100:2016|complex_phase|570|720|780|920|as_delivered|memory|||
CR780Y980T-CP|VDA 239-100:2016|complex_phase|780|950|980|1140|as_delivered|memory|||
CR900Y1180T-CP|VDA 239-100:2016|complex_phase|900|1100|1180|1350|as_delivered|memory|||
CR860Y1100T-MS|VDA 239-100:2016|martensitic|860|1120|1100|1320|as_delivered|memory|||
CR1030Y1300T-MS|VDA 239-100:2016|martensitic|1030|1330|1300|1550|as_delivered|memory|||
CR1220Y1500T-MS|VDA 239-100:2016|martensitic|1220|1520|1500|1750|as_delivered|memory|||
CR1350Y1700T-MS|VDA 239-100:2016|martensitic|1350||1700||as_delivered|memory|||
HR330Y580T-DP|VDA 239-100:2016|dual_phase|330||580||as_delivered|memory|||
HR300Y450T-FB|VDA 239-100:2016|ferrite_bainite|300||450||as_delivered|memory|||
HR440Y580T-FB|VDA 239-100:2016|ferrite_bainite|440||580||as_delivered|memory|||
HR660Y760T-CP|VDA 239-100:2016|complex_phase|660|820|760|960|as_delivered|seen|||
HR720Y950T-CP|VDA 239-100:2016|complex_phase|720||950||as_delivered|memory|||
HR900Y1200T-MS|VDA 239-100:2016|martensitic|900||1200||as_delivered|memory|||
180A|SAE J2340:1999|dent_resistant_non_bh|180||310||as_delivered|memory|||
180B|SAE J2340:1999|bake_hardening|180||300||as_delivered|memory|||
210A|SAE J2340:1999|dent_resistant_non_bh|210||330||as_delivered|memory|||
210B|SAE J2340:1999|bake_hardening|210||320||as_delivered|memory|||
250A|SAE J2340:1999|dent_resistant_non_bh|250||355||as_delivered|memory|||
250B|SAE J2340:1999|bake_hardening|250||345||as_delivered|memory|||
280A|SAE J2340:1999|dent_resistant_non_bh|280||375||as_delivered|memory|||
280B|SAE J2340:1999|bake_hardening|280||365||as_delivered|memory|||
300S|SAE J2340:1999|solid_solution|300|400|390||as_delivered|memory|||
340S|SAE J2340:1999|solid_solution|340|440|440||as_delivered|memory|||
300X|SAE J2340:1999|hsla|300|400|370||as_delivered|memory|||
300Y|SAE J2340:1999|hsla|300|400|400||as_delivered|memory|||
340X|SAE J2340:1999|hsla|340|440|410||as_delivered|memory|||
340Y|SAE J2340:1999|hsla|340|440|440||as_delivered|memory|||
380X|SAE J2340:1999|hsla|380|480|450||as_delivered|memory|||
380Y|SAE J2340:1999|hsla|380|480|480||as_delivered|memory|||
420X|SAE J2340:1999|hsla|420|520|490||as_delivered|memory|||
420Y|SAE J2340:1999|hsla|420|520|520||as_delivered|memory|||
490X|SAE J2340:1999|hsla|490|590|560||as_delivered|memory|||
490Y|SAE J2340:1999|hsla|490|590|590||as_delivered|memory|||
550X|SAE J2340:1999|hsla|550|680|620||as_delivered|memory|||
550Y|SAE J2340:1999|hsla|550|680|650||as_delivered|memory|||
490R|SAE J2340:1999|recovery_annealed|490||||as_delivered|memory|||
550R|SAE J2340:1999|recovery_annealed|550||||as_delivered|memory|||
700R|SAE J2340:1999|recovery_annealed|700||||as_delivered|memory|||
830R|SAE J2340:1999|recovery_annealed|830||||as_delivered|memory|||
600DH|SAE J2340:1999|dual_phase|||600||as_delivered|memory|||
600DL1|SAE J2340:1999|dual_phase|||600||as_delivered|memory|||
600DL2|SAE J2340:1999|dual_phase|||600||as_delivered|memory|||
700DH|SAE J2340:1999|dual_phase|||700||as_delivered|memory|||
800DL|SAE J2340:1999|dual_phase|||800||as_delivered|memory|||
950DL|SAE J2340:1999|dual_phase|||950||as_delivered|memory|||
1000DL|SAE J2340:1999|dual_phase|||1000||as_delivered|memory|||
800M|SAE J2340:1999|martensitic|||800||as_delivered|memory|||
900M|SAE J2340:1999|martensitic|||900||as_delivered|memory|||
1000M|SAE J2340:1999|martensitic|||1000||as_delivered|memory|||
1100M|SAE J2340:1999|martensitic|||1100||as_delivered|memory|||
1200M|SAE J2340:1999|martensitic|||1200||as_delivered|memory|||
1300M|SAE J2340:1999|martensitic|||1300||as_delivered|memory|||
1400M|SAE J2340:1999|martensitic|||1400||as_delivered|memory|||
1500M|SAE J2340:1999|martensitic|||1500||as_delivered|memory|||
DP 440T/250Y|SAE J2745:2024|dual_phase|250||440||as_delivered|seen|||
DP 490T/290Y|SAE J2745:2024|dual_phase|290||490||as_delivered|seen|||
DP 590T/340Y|SAE J2745:2024|dual_phase|340||590||as_delivered|seen|||
DP 690T/550Y|SAE J2745:2024|dual_phase|550||690||as_delivered|seen|||
DP 780T/420Y|SAE J2745:2024|dual_phase|420||780||as_delivered|seen|||
DP 980T/550Y|SAE J2745:2024|dual_phase|550||980||as_delivered|seen|||
TRIP 590T/380Y|SAE J2745:2024|trip|380||590||as_delivered|seen|||
TRIP 690T/400Y|SAE J2745:2024|trip|400||690||as_delivered|seen|||
TRIP 780T/420Y|SAE J2745:2024|trip|420||780||as_delivered|seen|||
MS 900T/700Y|SAE J2745:2024|martensitic|700||900||as_delivered|seen|||
MS 1100T/860Y|SAE J2745:2024|martensitic|860||1100||as_delivered|seen|||
MS 1300T/1030Y|SAE J2745:2024|martensitic|1030||1300||as_delivered|seen|||
MS 1500T/1200Y|SAE J2745:2024|martensitic|1200||1500||as_delivered|seen|||
CR1|SAE J2329:2015|mild|||||as_delivered|memory|||
CR2|SAE J2329:2015|mild|140|260|270||as_delivered|memory|||
CR3|SAE J2329:2015|mild|140|205|270||as_delivered|memory|||
CR4|SAE J2329:2015|mild|140|185|270||as_delivered|memory|||
CR5|SAE J2329:2015|mild|110|170|260||as_delivered|memory|||
HR1|SAE J2329:2015|mild|||||as_delivered|memory|||
HR2|SAE J2329:2015|mild|180|290|270||as_delivered|memory|||
HR3|SAE J2329:2015|mild|180|240|270||as_delivered|memory|||
SPCC|JIS G 3141:2017|mild|||270||as_delivered|seen|||ordered with T (SPCCT)
SPCD|JIS G 3141:2017|mild||240|270||as_delivered|seen|||
SPCE|JIS G 3141:2017|mild||220|270||as_delivered|seen|||
SPCF|JIS G 3141:2017|mild||210|270||as_delivered|memory|||
SPCG|JIS G 3141:2017|mild||190|270||as_delivered|memory|||
SPHC|JIS G 3131:2018|mild|||270||as_delivered|seen|||
SPHD|JIS G 3131:2018|mild|||270||as_delivered|memory|||
SPHE|JIS G 3131:2018|mild|||270||as_delivered|memory|||
SPHF|JIS G 3131:2018|mild|||270||as_delivered|memory|||
SPFC340|JIS G 3135:2018|solid_solution|175||340||as_delivered|seen|||
SPFC370|JIS G 3135:2018|solid_solution|205||370||as_delivered|seen|||
SPFC390|JIS G 3135:2018|solid_solution|235||390||as_delivered|seen|||
SPFC440|JIS G 3135:2018|solid_solution|265||440||as_delivered|seen|||
SPFC490|JIS G 3135:2018|hsla|295||490||as_delivered|seen|||
SPFC540|JIS G 3135:2018|hsla|325||540||as_delivered|seen|||
SPFC590|JIS G 3135:2018|hsla|355||590||as_delivered|seen|||
SPFC490Y|JIS G 3135:2018|dual_phase|225||490||as_delivered|seen|||
SPFC540Y|JIS G 3135:2018|dual_phase|245||540||as_delivered|seen|||
SPFC590Y|JIS G 3135:2018|dual_phase|265||590||as_delivered|seen|||
SPFC780Y|JIS G 3135:2018|dual_phase|365||780||as_delivered|seen|||
SPFC980Y|JIS G 3135:2018|dual_phase|490||980||as_delivered|seen|||
SPFC340H|JIS G 3135:2018|bake_hardening|185||340||as_delivered|seen|||
SPFH490|JIS G 3134:2018|hsla|325||490||as_delivered|memory|||
SPFH540|JIS G 3134:2018|hsla|355||540||as_delivered|memory|||
SPFH590|JIS G 3134:2018|hsla|420||590||as_delivered|memory|||
SPFH540Y|JIS G 3134:2018|dual_phase|295||540||as_delivered|memory|||
SPFH590Y|JIS G 3134:2018|dual_phase|325||590||as_delivered|memory|||
SAPH310|JIS G 3113:1990|structural|185||310||as_delivered|seen|||
SAPH370|JIS G 3113:1990|structural|225||370||as_delivered|seen|||
SAPH400|JIS G 3113:1990|structural|255||400||as_delivered|seen|||
SAPH440|JIS G 3113:1990|structural|305||440||as_delivered|seen|||
SGCC|JIS G 3302:2010|mild|||270||as_delivered|memory|||ordered so
SGCD1|JIS G 3302:2010|mild|||270||as_delivered|memory|||
SGCD2|JIS G 3302:2010|mild|||270||as_delivered|memory|||
SGCD3|JIS G 3302:2010|mild|||270||as_delivered|memory|||
SGCD4|JIS G 3302:2010|mild|||270||as_delivered|memory|||
SGC340|JIS G 3302:2010|structural|245||340||as_delivered|memory|||
SGC400|JIS G 3302:2010|structural|295||400||as_delivered|memory|||
SGC440|JIS G 3302:2010|structural|335||440||as_delivered|memory|||
SGC490|JIS G 3302:2010|structural|365||490||as_delivered|memory|||
SGC570|JIS G 3302:2010|structural|560||570||as_delivered|memory|||
SECC|JIS G 3313:2010|mild|||270||as_delivered|memory|||ordered with T (SECCT)
SECD|JIS G 3313:2010|mild|||270||as_delivered|memory|||
SECE|JIS G 3313:2010|mild|||270||as_delivered|memory|||
JSC270C|JFS A 2001:2014|mild|||270||as_delivered|memory|||
JSC270D|JFS A 2001:2014|mild|||270||as_delivered|memory|||
JSC270E|JFS A 2001:2014|mild|||270||as_delivered|memory|||
JSC270F|JFS A 2001:2014|mild|||270||as_delivered|memory|||
JSC260G|JFS A 2001:2014|mild|||260||as_delivered|memory|||
JSC340W|JFS A 2001:2014|solid_solution|||340||as_delivered|memory|||
JSC370W|JFS A 2001:2014|solid_solution|||370||as_delivered|memory|||
JSC390W|JFS A 2001:2014|solid_solution|||390||as_delivered|memory|||
JSC440W|JFS A 2001:2014|solid_solution|||440||as_delivered|memory|||
JSC340P|JFS A 2001:2014|rephosphorised|||340||as_delivered|memory|||
JSC370P|JFS A 2001:2014|rephosphorised|||370||as_delivered|memory|||
JSC390P|JFS A 2001:2014|rephosphorised|||390||as_delivered|memory|||
JSC440P|JFS A 2001:2014|rephosphorised|||440||as_delivered|memory|||
JSC340H|JFS A 2001:2014|bake_hardening|||340||as_delivered|memory|||
JSC440R|JFS A 2001:2014|hsla|||440||as_delivered|memory|||
JSC590R|JFS A 2001:2014|hsla|||590||as_delivered|memory|||
JSC590Y|JFS A 2001:2014|dual_phase|||590||as_delivered|memory|||
JSC780Y|JFS A 2001:2014|dual_phase|||780||as_delivered|memory|||
JSC980Y|JFS A 2001:2014|dual_phase|||980||as_delivered|memory|||
JSC1180Y|JFS A 2001:2014|dual_phase|||1180||as_delivered|memory|||
JSC590T|JFS A 2001:2014|trip|||590||as_delivered|memory|||
JSC780T|JFS A 2001:2014|trip|||780||as_delivered|memory|||
JAC270C|JFS A 3011:2014|mild|||270||as_delivered|memory|||
JAC270D|JFS A 3011:2014|mild|||270||as_delivered|memory|||
JAC270E|JFS A 3011:2014|mild|||270||as_delivered|memory|||
JAC270F|JFS A 3011:2014|mild|||270||as_delivered|memory|||
JAC260G|JFS A 3011:2014|mild|||260||as_delivered|memory|||
JAC340W|JFS A 3011:2014|solid_solution|||340||as_delivered|memory|||
JAC340P|JFS A 3011:2014|rephosphorised|||340||as_delivered|memory|||
JAC340H|JFS A 3011:2014|bake_hardening|||340||as_delivered|memory|||
JAC390P|JFS A 3011:2014|rephosphorised|||390||as_delivered|memory|||
JAC440W|JFS A 3011:2014|solid_solution|||440||as_delivered|memory|||
JAC440P|JFS A 3011:2014|rephosphorised|||440||as_delivered|memory|||
JAC590R|JFS A 3011:2014|hsla|||590||as_delivered|memory|||
JAC590Y|JFS A 3011:2014|dual_phase|||590||as_delivered|memory|||
JAC780Y|JFS A 3011:2014|dual_phase|||780||as_delivered|memory|||
JAC980Y|JFS A 3011:2014|dual_phase|||980||as_delivered|memory|||
JAH270C|JFS A 3011:2014|mild|||270||as_delivered|memory|||
JSH270C|JFS A 1001:2014|mild|||270||as_delivered|memory|||
JSH370W|JFS A 1001:2014|solid_solution|||370||as_delivered|memory|||
JSH400W|JFS A 1001:2014|solid_solution|||400||as_delivered|memory|||
JSH440W|JFS A 1001:2014|solid_solution|||440||as_delivered|memory|||
JSH590R|JFS A 1001:2014|hsla|||590||as_delivered|memory|||
JSH780R|JFS A 1001:2014|hsla|||780||as_delivered|memory|||
JSH590Y|JFS A 1001:2014|dual_phase|||590||as_delivered|memory|||
CR140BH|GB/T 20564.1:2017|bake_hardening|140||||as_delivered|memory|||
CR180BH|GB/T 20564.1:2017|bake_hardening|180||||as_delivered|memory|||
CR220BH|GB/T 20564.1:2017|bake_hardening|220||||as_delivered|memory|||
CR260BH|GB/T 20564.1:2017|bake_hardening|260||||as_delivered|memory|||
CR300BH|GB/T 20564.1:2017|bake_hardening|300||||as_delivered|memory|||
CR180IF|GB/T 20564.3:2017|high_strength_if|180||||as_delivered|memory|||
CR220IF|GB/T 20564.3:2017|high_strength_if|220||||as_delivered|memory|||
CR260IF|GB/T 20564.3:2017|high_strength_if|260||||as_delivered|memory|||
CR260LA|GB/T 20564.4:2010|hsla|260|330|350|430|as_delivered|memory|||
CR300LA|GB/T 20564.4:2010|hsla|300|380|380|480|as_delivered|memory|||
CR340LA|GB/T 20564.4:2010|hsla|340|420|410|510|as_delivered|memory|||
CR380LA|GB/T 20564.4:2010|hsla|380|480|440|560|as_delivered|memory|||
CR420LA|GB/T 20564.4:2010|hsla|420|520|470|590|as_delivered|memory|||
CR260/450DP|GB/T 20564.2:2017|dual_phase|260||450||as_delivered|memory|||
CR300/500DP|GB/T 20564.2:2017|dual_phase|300||500||as_delivered|memory|||
CR340/590DP|GB/T 20564.2:2017|dual_phase|340||590||as_delivered|memory|||
CR420/780DP|GB/T 20564.2:2017|dual_phase|420||780||as_delivered|memory|||
CR500/780DP|GB/T 20564.2:2017|dual_phase|500||780||as_delivered|seen|||
CR550/980DP|GB/T 20564.2:2017|dual_phase|550||980||as_delivered|memory|||
CR700/980DP|GB/T 20564.2:2017|dual_phase|700||980||as_delivered|seen|||
CR820/1180DP|GB/T 20564.2:2017|dual_phase|820||1180||as_delivered|seen|||
CR380/590TR|GB/T 20564.6:2010|trip|380||590||as_delivered|memory|||
CR400/690TR|GB/T 20564.6:2010|trip|400||690||as_delivered|memory|||
CR420/780TR|GB/T 20564.6:2010|trip|420||780||as_delivered|memory|||
CR500/780MS|GB/T 20564.7:2010|martensitic|500||780||as_delivered|memory|||
CR700/900MS|GB/T 20564.7:2010|martensitic|700||900||as_delivered|memory|||
CR700/980MS|GB/T 20564.7:2010|martensitic|700||980||as_delivered|memory|||
CR860/1100MS|GB/T 20564.7:2010|martensitic|860||1100||as_delivered|memory|||
CR950/1180MS|GB/T 20564.7:2010|martensitic|950||1180||as_delivered|memory|||
CR1030/1300MS|GB/T 20564.7:2010|martensitic|1030||1300||as_delivered|memory|||
CR1150/1400MS|GB/T 20564.7:2010|martensitic|1150||1400||as_delivered|memory|||
CR1200/1500MS|GB/T 20564.7:2010|martensitic|1200||1500||as_delivered|memory|||
CR350/590CP|GB/T 20564.8:2015|complex_phase|350||590||as_delivered|memory|||
CR500/780CP|GB/T 20564.8:2015|complex_phase|500||780||as_delivered|memory|||
CR700/980CP|GB/T 20564.8:2015|complex_phase|700||980||as_delivered|memory|||
HR300/540DP|GB/T 20887.3:2022|dual_phase|300||540||as_delivered|seen|||
HR330/580DP|GB/T 20887.3:2022|dual_phase|330||580||as_delivered|seen|||
HR380/680DP|GB/T 20887.3:2022|dual_phase|380||680||as_delivered|seen|||
HSLAS Grade 45 [310] Class 1|ASTM A1008/A1008M:2018|hsla|310||410||as_delivered|memory|||
HSLAS Grade 45 [310] Class 2|ASTM A1008/A1008M:2018|hsla|310||380||as_delivered|memory|||
HSLAS Grade 50 [340] Class 1|ASTM A1008/A1008M:2018|hsla|340||450||as_delivered|memory|||
HSLAS Grade 50 [340] Class 2|ASTM A1008/A1008M:2018|hsla|340||410||as_delivered|memory|||
HSLAS Grade 55 [380] Class 1|ASTM A1008/A1008M:2018|hsla|380||480||as_delivered|memory|||
HSLAS Grade 55 [380] Class 2|ASTM A1008/A1008M:2018|hsla|380||450||as_delivered|memory|||
HSLAS Grade 60 [410] Class 1|ASTM A1008/A1008M:2018|hsla|410||520||as_delivered|memory|||
HSLAS Grade 60 [410] Class 2|ASTM A1008/A1008M:2018|hsla|410||480||as_delivered|memory|||
HSLAS Grade 65 [450] Class 1|ASTM A1008/A1008M:2018|hsla|450||550||as_delivered|memory|||
HSLAS Grade 65 [450] Class 2|ASTM A1008/A1008M:2018|hsla|450||520||as_delivered|memory|||
HSLAS Grade 70 [480] Class 1|ASTM A1008/A1008M:2018|hsla|480||585||as_delivered|memory|||
HSLAS Grade 70 [480] Class 2|ASTM A1008/A1008M:2018|hsla|480||550||as_delivered|memory|||
HSLAS-F Grade 50 [340]|ASTM A1008/A1008M:2018|hsla|340||410||as_delivered|memory|||
HSLAS-F Grade 60 [410]|ASTM A1008/A1008M:2018|hsla|410||480||as_delivered|memory|||
HSLAS-F Grade 70 [480]|ASTM A1008/A1008M:2018|hsla|480||550||as_delivered|memory|||
HSLAS-F Grade 80 [550]|ASTM A1008/A1008M:2018|hsla|550||620||as_delivered|memory|||
CS|ASTM A1008/A1008M:2018|mild|140|275|||as_delivered|memory|||
DS|ASTM A1008/A1008M:2018|mild|150|240|||as_delivered|seen|||
DDS|ASTM A1008/A1008M:2018|mild|115|200|||as_delivered|memory|||
EDDS|ASTM A1008/A1008M:2018|mild|105|170|||as_delivered|memory|||
SS Grade 25 [170]|ASTM A1008/A1008M:2018|structural|170||290||as_delivered|memory|||
SS Grade 30 [205]|ASTM A1008/A1008M:2018|structural|205||310||as_delivered|memory|||
SS Grade 33 [230] Type 1|ASTM A1008/A1008M:2018|structural|230||330||as_delivered|memory|||
SS Grade 40 [275] Type 1|ASTM A1008/A1008M:2018|structural|275||360||as_delivered|memory|||
SS Grade 30 [205]|ASTM A1011/A1011M:2018|structural|205||340||as_delivered|memory|||
SS Grade 33 [230]|ASTM A1011/A1011M:2018|structural|230||360||as_delivered|memory|||
SS Grade 40 [275]|ASTM A1011/A1011M:2018|structural|275||380||as_delivered|memory|||
SS Grade 45 [310]|ASTM A1011/A1011M:2018|structural|310||410||as_delivered|memory|||
SS Grade 50 [340]|ASTM A1011/A1011M:2018|structural|340||450||as_delivered|memory|||
SS Grade 55 [380]|ASTM A1011/A1011M:2018|structural|380||480||as_delivered|memory|||
HSLAS Grade 45 [310] Class 1|ASTM A1011/A1011M:2018|hsla|310||410||as_delivered|memory|||
HSLAS Grade 45 [310] Class 2|ASTM A1011/A1011M:2018|hsla|310||380||as_delivered|memory|||
HSLAS Grade 50 [340] Class 1|ASTM A1011/A1011M:2018|hsla|340||450||as_delivered|memory|||
HSLAS Grade 50 [340] Class 2|ASTM A1011/A1011M:2018|hsla|340||410||as_delivered|memory|||
HSLAS Grade 55 [380] Class 1|ASTM A1011/A1011M:2018|hsla|380||480||as_delivered|memory|||
HSLAS Grade 55 [380] Class 2|ASTM A1011/A1011M:2018|hsla|380||450||as_delivered|memory|||
HSLAS Grade 60 [410] Class 1|ASTM A1011/A1011M:2018|hsla|410||520||as_delivered|memory|||
HSLAS Grade 60 [410] Class 2|ASTM A1011/A1011M:2018|hsla|410||480||as_delivered|memory|||
HSLAS Grade 65 [450] Class 1|ASTM A1011/A1011M:2018|hsla|450||550||as_delivered|memory|||
HSLAS Grade 65 [450] Class 2|ASTM A1011/A1011M:2018|hsla|450||520||as_delivered|memory|||
HSLAS Grade 70 [480] Class 1|ASTM A1011/A1011M:2018|hsla|480||585||as_delivered|memory|||
HSLAS Grade 70 [480] Class 2|ASTM A1011/A1011M:2018|hsla|480||550||as_delivered|memory|||
HSLAS-F Grade 50 [340]|ASTM A1011/A1011M:2018|hsla|340||410||as_delivered|memory|||
HSLAS-F Grade 60 [410]|ASTM A1011/A1011M:2018|hsla|410||480||as_delivered|memory|||
HSLAS-F Grade 70 [480]|ASTM A1011/A1011M:2018|hsla|480||550||as_delivered|memory|||
HSLAS-F Grade 80 [550]|ASTM A1011/A1011M:2018|hsla|550||620||as_delivered|memory|||
UHSS Grade 90 [620] Type 1|ASTM A1011/A1011M:2018|hsla_ultra_high|620||690||as_delivered|memory|||
UHSS Grade 100 [690] Type 1|ASTM A1011/A1011M:2018|hsla_ultra_high|690||760||as_delivered|memory|||
DP590T/340Y|ASTM A1088:2013|dual_phase|340||590||as_delivered|memory|||
DP780T/420Y|ASTM A1088:2013|dual_phase|420||780||as_delivered|memory|||
DP980T/550Y|ASTM A1088:2013|dual_phase|550||980||as_delivered|memory|||
CR0|IS 513-1:2016|mild|||||as_delivered|memory|||
CR1|IS 513-1:2016|mild|||||as_delivered|memory|||
CR2|IS 513-1:2016|mild|||||as_delivered|memory|||
CR3|IS 513-1:2016|mild|||||as_delivered|memory|||
CR4|IS 513-1:2016|mild|||||as_delivered|memory|||
CR5|IS 513-1:2016|mild|||||as_delivered|memory|||
St12|DIN 1623-1:1983|mild|140|280|270|410|as_delivered|seen|||
St13|DIN 1623-1:1983|mild|140|240|270|370|as_delivered|seen|||
St14|DIN 1623-1:1983|mild|140|210|270|350|as_delivered|seen|||
St15|DIN 1623-1:1983|mild|120|180|270|330|as_delivered|seen|||
FeP01|EN 10130:1991|mild|140|280|270|410|as_delivered|seen|||
FeP03|EN 10130:1991|mild|140|240|270|370|as_delivered|seen|||
FeP04|EN 10130:1991|mild|140|210|270|350|as_delivered|seen|||
H240LA|EN 10268:1998|hsla|240|310|340|420|as_delivered|seen|||
H280LA|EN 10268:1998|hsla|280|360|370|470|as_delivered|seen|||
H320LA|EN 10268:1998|hsla|320|410|400|500|as_delivered|seen|||
H360LA|EN 10268:1998|hsla|360|460|430|550|as_delivered|seen|||
H400LA|EN 10268:1998|hsla|400|500|460|580|as_delivered|seen|||
ZStE260|SEW 093:1987|hsla|260|340|350|450|as_delivered|seen|||
ZStE300|SEW 093:1987|hsla|300|380|380|480|as_delivered|seen|||
ZStE340|SEW 093:1987|hsla|340|440|410|530|as_delivered|seen|||
ZStE380|SEW 093:1987|hsla|380|500|460|600|as_delivered|seen|||
ZStE420|SEW 093:1987|hsla|420|540|480|620|as_delivered|seen|||
ZStE220BH|SEW 094:1987|bake_hardening|220|280|320|400|as_delivered|seen|||
ZStE260BH|SEW 094:1987|bake_hardening|260|320|360|440|as_delivered|seen|||
ZStE220P|SEW 094:1987|rephosphorised|220|280|340|420|as_delivered|seen|||
ZStE260P|SEW 094:1987|rephosphorised|260|320|380|460|as_delivered|seen|||
ZStE300P|SEW 094:1987|rephosphorised|300|360|420|500|as_delivered|seen|||
QStE340TM|SEW 092:1990|hsla|340||420|540|as_delivered|memory|||
QStE380TM|SEW 092:1990|hsla|380||450|590|as_delivered|memory|||
QStE420TM|SEW 092:1990|hsla|420||480|620|as_delivered|memory|||
QStE460TM|SEW 092:1990|hsla|460||520|670|as_delivered|memory|||
QStE500TM|SEW 092:1990|hsla|500||550|700|as_delivered|memory|||
QStE550TM|SEW 092:1990|hsla|550||||as_delivered|memory|||
QStE600TM|SEW 092:1990|hsla|600||||as_delivered|memory|||
QStE690TM|SEW 092:1990|hsla|690||||as_delivered|memory|||
1.4301|EN 10088-2:2014|stainless_austenitic|230||540|750|as_delivered|seen|||
1.4307|EN 10088-2:2014|stainless_austenitic|220||520|700|as_delivered|memory|||
1.4310|EN 10088-2:2014|stainless_austenitic|250||600|950|as_delivered|memory|||
1.4318|EN 10088-2:2014|stainless_austenitic|350||650|850|as_delivered|memory|||
1.4404|EN 10088-2:2014|stainless_austenitic|240||530|680|as_delivered|memory|||
1.4016|EN 10088-2:2014|stainless_ferritic|260||450|600|as_delivered|memory|||
1.4512|EN 10088-2:2014|stainless_ferritic|210||380|560|as_delivered|memory|||
1.4509|EN 10088-2:2014|stainless_ferritic|230||430|630|as_delivered|memory|||
1.4376|EN 10088-2:2014|stainless_austenitic|||||as_delivered|memory|||
1.4310+C850|EN 10088-2:2014|stainless_austenitic|||850|1000|cold_hardened|memory|||
1.4310+C1000|EN 10088-2:2014|stainless_austenitic|||1000|1150|cold_hardened|memory|||
1.4310+C1150|EN 10151:2002|stainless_austenitic|||1150|1300|cold_hardened|seen|||
1.4310+C1300|EN 10151:2002|stainless_austenitic|||1300|1500|cold_hardened|seen|||
1.4310+C1500|EN 10151:2002|stainless_austenitic|||1500|1700|cold_hardened|seen|||
1.4318+C850|EN 10088-2:2014|stainless_austenitic|||850|1000|cold_hardened|memory|||
1.4318+CP500|EN 10088-2:2014|stainless_austenitic|500|700|||cold_hardened|memory|||
EN AW-5754-O|EN 485-2:2016+A1:2018|aluminium_5xxx|80||190|240|as_delivered|memory|||
EN AW-5754-H111|EN 485-2:2016+A1:2018|aluminium_5xxx|80||190|240|as_delivered|memory|||
EN AW-5754-H22|EN 485-2:2016+A1:2018|aluminium_5xxx|130||220|270|as_delivered|seen|||
EN AW-5754-H32|EN 485-2:2016+A1:2018|aluminium_5xxx|130||220|270|as_delivered|seen|||
EN AW-5754-H24|EN 485-2:2016+A1:2018|aluminium_5xxx|160||240|280|as_delivered|memory|||
EN AW-5754-H34|EN 485-2:2016+A1:2018|aluminium_5xxx|160||240|280|as_delivered|memory|||
EN AW-5182-O|EN 485-2:2016+A1:2018|aluminium_5xxx|110||255|315|as_delivered|memory|||
EN AW-5182-H111|EN 485-2:2016+A1:2018|aluminium_5xxx|110||255|315|as_delivered|memory|||
EN AW-5083-O|EN 485-2:2016+A1:2018|aluminium_5xxx|125||275|350|as_delivered|seen|||
EN AW-5083-H111|EN 485-2:2016+A1:2018|aluminium_5xxx|125||275|350|as_delivered|seen|||
EN AW-5083-H22|EN 485-2:2016+A1:2018|aluminium_5xxx|215||305|380|as_delivered|memory|||
EN AW-5083-H32|EN 485-2:2016+A1:2018|aluminium_5xxx|215||305|380|as_delivered|memory|||
EN AW-5049-O|EN 485-2:2016+A1:2018|aluminium_5xxx|80||190|240|as_delivered|memory|||
EN AW-5049-H111|EN 485-2:2016+A1:2018|aluminium_5xxx|80||190|240|as_delivered|memory|||
EN AW-5052-O|EN 485-2:2016+A1:2018|aluminium_5xxx|65||170|215|as_delivered|memory|||
EN AW-5052-H111|EN 485-2:2016+A1:2018|aluminium_5xxx|65||170|215|as_delivered|memory|||
EN AW-5251-O|EN 485-2:2016+A1:2018|aluminium_5xxx|60||160|200|as_delivered|memory|||
EN AW-5251-H111|EN 485-2:2016+A1:2018|aluminium_5xxx|60||160|200|as_delivered|memory|||
EN AW-5454-O|EN 485-2:2016+A1:2018|aluminium_5xxx|85||215|275|as_delivered|memory|||
EN AW-5454-H111|EN 485-2:2016+A1:2018|aluminium_5xxx|85||215|275|as_delivered|memory|||
EN AW-6016-T4|EN 485-2:2016+A1:2018|aluminium_6xxx|80|140|170|250|as_delivered|seen|||
EN AW-6016-T6|EN 485-2:2016+A1:2018|aluminium_6xxx|180|260|260|300|hardened|seen|||
EN AW-6016-T4P|EN 573-3 alloy (range in use)|aluminium_6xxx|85|130|205|240|as_delivered|seen|||
6111-T4|AA alloy (typical values)|aluminium_6xxx|||||as_delivered|seen|115|240|
6111-T4|AA alloy (typical values)|aluminium_6xxx|||||paint_baked|seen|210|285|
6116-T4|AA alloy (typical values)|aluminium_6xxx|||||as_delivered|seen|130|240|
6116-T4|AA alloy (typical values)|aluminium_6xxx|||||paint_baked|seen|205|285|
EN AW-6014-T4|EN 573-3:2019|aluminium_6xxx|||||as_delivered|memory|||
EN AW-6181A-T4|EN 573-3:2019|aluminium_6xxx|||||as_delivered|memory|||
EN AW-6451-T4|EN 573-3:2019|aluminium_6xxx|||||as_delivered|memory|||
EN AW-6022-T4|EN 573-3:2019|aluminium_6xxx|||||as_delivered|memory|||
EN AW-6061-T4|EN 485-2:2016+A1:2018|aluminium_6xxx|110||205||as_delivered|memory|||
EN AW-6061-T6|EN 485-2:2016+A1:2018|aluminium_6xxx|240||290||hardened|memory|||
EN AW-6082-T4|EN 485-2:2016+A1:2018|aluminium_6xxx|110||205||as_delivered|memory|||
EN AW-6082-T6|EN 485-2:2016+A1:2018|aluminium_6xxx|260||310||hardened|seen|||
EN AW-6082-T61|EN 485-2:2016+A1:2018|aluminium_6xxx|205||280||hardened|memory|||
EN AW-7020-T6|EN 485-2:2016+A1:2018|aluminium_7xxx|280||350||hardened|seen|||
EN AW-7075-T6|EN 485-2:2016+A1:2018|aluminium_7xxx|460||525||hardened|memory|||
EN AW-6060-T6 (extrusion)|EN 755-2:2016|aluminium_6xxx|150||190||hardened|seen|||
EN AW-6063-T6 (extrusion)|EN 755-2:2016|aluminium_6xxx|170||215||hardened|seen|||
EN AW-6082-T6 (extrusion)|EN 755-2:2016|aluminium_6xxx|250||290||hardened|memory|||
EN AW-6005A-T6 (extrusion)|EN 755-2:2016|aluminium_6xxx|225||270||hardened|memory|||
EN AC-43500|EN 1706:2020|aluminium_casting|||||as_delivered|memory|||
EN AC-42100|EN 1706:2020|aluminium_casting|||||as_delivered|memory|||
AM60B|ASTM B94|magnesium|||||as_delivered|memory|||
AZ91D|ASTM B94|magnesium|||||as_delivered|memory|||
AZ31B|ASTM B90/B90M|magnesium|||||as_delivered|memory|||
CFRP|ISO 1043-1/-2 abbreviations|composite_cfrp|||||not_applicable|practice|||
GFRP|ISO 1043-1/-2 abbreviations|composite_gfrp|||||not_applicable|practice|||
SMC|ISO 1043-1/-2 abbreviations|composite_gfrp|||||not_applicable|practice|||
PP-LGF|ISO 1043-1/-2 abbreviations|composite_thermoplastic|||||not_applicable|practice|||
SS Grade 33 [230]|ASTM A653/A653M:2020|structural|230||310||as_delivered|memory|||
SS Grade 37 [255]|ASTM A653/A653M:2020|structural|255||360||as_delivered|memory|||
SS Grade 40 [275]|ASTM A653/A653M:2020|structural|275||380||as_delivered|memory|||
SS Grade 50 [340] Class 1|ASTM A653/A653M:2020|structural|340||450||as_delivered|memory|||
SS Grade 50 [340] Class 2|ASTM A653/A653M:2020|structural|340||||as_delivered|memory|||
SS Grade 50 [340] Class 3|ASTM A653/A653M:2020|structural|340||480||as_delivered|memory|||
SS Grade 50 [340] Class 4|ASTM A653/A653M:2020|structural|340||410||as_delivered|memory|||
SS Grade 55 [380]|ASTM A653/A653M:2020|structural|380||480||as_delivered|memory|||
SS Grade 60 [410]|ASTM A653/A653M:2020|structural|410||480||as_delivered|memory|||
SS Grade 80 [550] Class 1|ASTM A653/A653M:2020|structural|550||570||as_delivered|memory|||
SS Grade 80 [550] Class 2|ASTM A653/A653M:2020|structural|550||570||as_delivered|memory|||
HSLAS Grade 40 [275]|ASTM A653/A653M:2020|hsla|275||340||as_delivered|memory|||
HSLAS Grade 50 [340]|ASTM A653/A653M:2020|hsla|340||410||as_delivered|memory|||
HSLAS Grade 55 [380] Class 1|ASTM A653/A653M:2020|hsla|380||480||as_delivered|memory|||
HSLAS Grade 55 [380] Class 2|ASTM A653/A653M:2020|hsla|380||450||as_delivered|memory|||
HSLAS Grade 60 [410]|ASTM A653/A653M:2020|hsla|410||480||as_delivered|memory|||
HSLAS Grade 70 [480]|ASTM A653/A653M:2020|hsla|480||550||as_delivered|memory|||
HSLAS Grade 80 [550]|ASTM A653/A653M:2020|hsla|550||620||as_delivered|memory|||
HSLAS-F Grade 40 [275]|ASTM A653/A653M:2020|hsla|275||340||as_delivered|memory|||
HSLAS-F Grade 50 [340]|ASTM A653/A653M:2020|hsla|340||410||as_delivered|memory|||
HSLAS-F Grade 60 [410]|ASTM A653/A653M:2020|hsla|410||480||as_delivered|memory|||
HSLAS-F Grade 70 [480]|ASTM A653/A653M:2020|hsla|480||550||as_delivered|memory|||
HSLAS-F Grade 80 [550]|ASTM A653/A653M:2020|hsla|550||620||as_delivered|memory|||
SHS Grade 26 [180]|ASTM A653/A653M:2020|solid_solution|180||300||as_delivered|memory|||
SHS Grade 31 [210]|ASTM A653/A653M:2020|solid_solution|210||320||as_delivered|memory|||
SHS Grade 35 [240]|ASTM A653/A653M:2020|solid_solution|240||340||as_delivered|memory|||
SHS Grade 41 [280]|ASTM A653/A653M:2020|solid_solution|280||370||as_delivered|memory|||
SHS Grade 44 [300]|ASTM A653/A653M:2020|solid_solution|300||390||as_delivered|memory|||
BHS Grade 26 [180]|ASTM A653/A653M:2020|bake_hardening|180||300||as_delivered|memory|||
BHS Grade 31 [210]|ASTM A653/A653M:2020|bake_hardening|210||320||as_delivered|memory|||
BHS Grade 35 [240]|ASTM A653/A653M:2020|bake_hardening|240||340||as_delivered|memory|||
BHS Grade 41 [280]|ASTM A653/A653M:2020|bake_hardening|280||370||as_delivered|memory|||
BHS Grade 44 [300]|ASTM A653/A653M:2020|bake_hardening|300||390||as_delivered|memory|||
SS Grade 33 [230]|ASTM A463/A463M:2015|structural|230||310||as_delivered|memory|||
SS Grade 37 [255]|ASTM A463/A463M:2015|structural|255||360||as_delivered|memory|||
SS Grade 40 [275]|ASTM A463/A463M:2015|structural|275||380||as_delivered|memory|||
SS Grade 50 [340] Class 1|ASTM A463/A463M:2015|structural|340||450||as_delivered|memory|||
HSLAS Grade 50 [340]|ASTM A463/A463M:2015|hsla|340||410||as_delivered|memory|||
HSLAS Grade 60 [410]|ASTM A463/A463M:2015|hsla|410||480||as_delivered|memory|||
HSLAS Grade 70 [480]|ASTM A463/A463M:2015|hsla|480||550||as_delivered|memory|||
HSLAS Grade 80 [550]|ASTM A463/A463M:2015|hsla|550||620||as_delivered|memory|||
SS Grade 33 [230]|ASTM A792/A792M:2021|structural|230||310||as_delivered|memory|||
SS Grade 37 [255]|ASTM A792/A792M:2021|structural|255||360||as_delivered|memory|||
SS Grade 40 [275]|ASTM A792/A792M:2021|structural|275||380||as_delivered|memory|||
SS Grade 50 [340] Class 1|ASTM A792/A792M:2021|structural|340||450||as_delivered|memory|||
SS Grade 50 [340] Class 2|ASTM A792/A792M:2021|structural|340||||as_delivered|memory|||
SS Grade 50 [340] Class 4|ASTM A792/A792M:2021|structural|340||410||as_delivered|memory|||
SS Grade 80 [550] Class 1|ASTM A792/A792M:2021|structural|550||570||as_delivered|memory|||
SHS Grade 26 [180]|ASTM A1008/A1008M:2018|solid_solution|180||300||as_delivered|memory|||
SHS Grade 31 [210]|ASTM A1008/A1008M:2018|solid_solution|210||320||as_delivered|memory|||
SHS Grade 35 [240]|ASTM A1008/A1008M:2018|solid_solution|240||340||as_delivered|memory|||
SHS Grade 41 [280]|ASTM A1008/A1008M:2018|solid_solution|280||370||as_delivered|memory|||
SHS Grade 44 [300]|ASTM A1008/A1008M:2018|solid_solution|300||390||as_delivered|memory|||
BHS Grade 26 [180]|ASTM A1008/A1008M:2018|bake_hardening|180||300||as_delivered|memory|||
BHS Grade 31 [210]|ASTM A1008/A1008M:2018|bake_hardening|210||320||as_delivered|memory|||
BHS Grade 35 [240]|ASTM A1008/A1008M:2018|bake_hardening|240||340||as_delivered|memory|||
BHS Grade 41 [280]|ASTM A1008/A1008M:2018|bake_hardening|280||370||as_delivered|memory|||
BHS Grade 44 [300]|ASTM A1008/A1008M:2018|bake_hardening|300||390||as_delivered|memory|||
SS Grade 36 [250] Type 1|ASTM A1011/A1011M:2018|structural|250||365||as_delivered|memory|||
Type 201|ASTM A240/A240M:2020|stainless_austenitic|260||515||as_delivered|memory|||
Type 201LN|ASTM A240/A240M:2020|stainless_austenitic|310||655||as_delivered|memory|||
Type 301|ASTM A240/A240M:2020|stainless_austenitic|205||515||as_delivered|seen|||
Type 301L|ASTM A240/A240M:2020|stainless_austenitic|220||550||as_delivered|seen|||
Type 301LN|ASTM A240/A240M:2020|stainless_austenitic|240||550||as_delivered|seen|||
Type 304|ASTM A240/A240M:2020|stainless_austenitic|205||515||as_delivered|seen|||
Type 304L|ASTM A240/A240M:2020|stainless_austenitic|170||485||as_delivered|memory|||
Type 316|ASTM A240/A240M:2020|stainless_austenitic|205||515||as_delivered|memory|||
Type 316L|ASTM A240/A240M:2020|stainless_austenitic|170||485||as_delivered|memory|||
Type 409|ASTM A240/A240M:2020|stainless_ferritic|170||380||as_delivered|memory|||
Type 430|ASTM A240/A240M:2020|stainless_ferritic|205||450||as_delivered|memory|||
Type 439|ASTM A240/A240M:2020|stainless_ferritic|205||415||as_delivered|memory|||
Type 441|ASTM A240/A240M:2020|stainless_ferritic|205||415||as_delivered|memory|||
Type 444|ASTM A240/A240M:2020|stainless_ferritic|275||415||as_delivered|memory|||
Type 301 1/4 hard|ASTM A666:2015|stainless_austenitic|515||860||cold_hardened|seen|||
Type 301 1/2 hard|ASTM A666:2015|stainless_austenitic|760||1035||cold_hardened|seen|||
Type 301 3/4 hard|ASTM A666:2015|stainless_austenitic|930||1205||cold_hardened|memory|||
Type 301 full hard|ASTM A666:2015|stainless_austenitic|965||1275||cold_hardened|seen|||
Type 304 1/4 hard|ASTM A666:2015|stainless_austenitic|515||860||cold_hardened|seen|||
Type 304 1/2 hard|ASTM A666:2015|stainless_austenitic|760||1035||cold_hardened|seen|||
Type 201 1/4 hard|ASTM A666:2015|stainless_austenitic|515||860||cold_hardened|memory|||
Type 201 1/2 hard|ASTM A666:2015|stainless_austenitic|760||1035||cold_hardened|memory|||
SUS301|JIS G 4305:2012|stainless_austenitic|205||520||as_delivered|seen|||
SUS301L|JIS G 4305:2012|stainless_austenitic|215||550||as_delivered|memory|||
SUS304|JIS G 4305:2012|stainless_austenitic|205||520||as_delivered|seen|||
SUS304L|JIS G 4305:2012|stainless_austenitic|175||480||as_delivered|memory|||
SUS316|JIS G 4305:2012|stainless_austenitic|205||520||as_delivered|memory|||
SUS316L|JIS G 4305:2012|stainless_austenitic|175||480||as_delivered|seen|||
SUS430|JIS G 4305:2012|stainless_ferritic|205||450||as_delivered|seen|||
SUS301-CSP-1/2H|JIS G 4313:2011|stainless_austenitic|||930||cold_hardened|memory|||
SUS301-CSP-3/4H|JIS G 4313:2011|stainless_austenitic|||1130||cold_hardened|memory|||
SUS301-CSP-H|JIS G 4313:2011|stainless_austenitic|||1320||cold_hardened|seen|||
SUS301-CSP-EH|JIS G 4313:2011|stainless_austenitic|||1570||cold_hardened|memory|||
SUS304-CSP-1/2H|JIS G 4313:2011|stainless_austenitic|||780||cold_hardened|memory|||
SUS304-CSP-3/4H|JIS G 4313:2011|stainless_austenitic|||930||cold_hardened|memory|||
SUS304-CSP-H|JIS G 4313:2011|stainless_austenitic|||1130||cold_hardened|seen|||
SUS301L-DLT|JIS G 4305:2012|stainless_austenitic|345||690||cold_hardened|memory|||
SUS301L-ST|JIS G 4305:2012|stainless_austenitic|410||760||cold_hardened|memory|||
SUS301L-MT|JIS G 4305:2012|stainless_austenitic|480||820||cold_hardened|memory|||
SUS301L-HT|JIS G 4305:2012|stainless_austenitic|685||930||cold_hardened|memory|||
HC260LAD|GB/T 2518:2008|hsla|260|330|350|430|as_delivered|memory|||
HC300LAD|GB/T 2518:2008|hsla|300|380|380|480|as_delivered|memory|||
HC340LAD|GB/T 2518:2008|hsla|340|420|410|510|as_delivered|memory|||
HC380LAD|GB/T 2518:2008|hsla|380|480|440|560|as_delivered|memory|||
HC420LAD|GB/T 2518:2008|hsla|420|520|470|590|as_delivered|memory|||
HC180YD|GB/T 2518:2008|high_strength_if|180|240|330||as_delivered|memory|||
HC220YD|GB/T 2518:2008|high_strength_if|220|280|340||as_delivered|memory|||
HC260YD|GB/T 2518:2008|high_strength_if|260|320|380||as_delivered|memory|||
HC180BD|GB/T 2518:2008|bake_hardening|180|240|290||as_delivered|memory|||
HC220BD|GB/T 2518:2008|bake_hardening|220|280|320||as_delivered|memory|||
HC260BD|GB/T 2518:2008|bake_hardening|260|320|360||as_delivered|memory|||
HC300BD|GB/T 2518:2008|bake_hardening|300|360|400||as_delivered|memory|||
SEFC340|JIS G 3313:2010|solid_solution|175||340||as_delivered|memory|||
SEFC370|JIS G 3313:2010|solid_solution|205||370||as_delivered|memory|||
SEFC390|JIS G 3313:2010|solid_solution|235||390||as_delivered|memory|||
SEFC440|JIS G 3313:2010|solid_solution|265||440||as_delivered|memory|||
SEFC490|JIS G 3313:2010|hsla|295||490||as_delivered|memory|||
SEFC540|JIS G 3313:2010|hsla|325||540||as_delivered|memory|||
SEFC590|JIS G 3313:2010|hsla|355||590||as_delivered|memory|||
SEFC490Y|JIS G 3313:2010|dual_phase|225||490||as_delivered|memory|||
SEFC540Y|JIS G 3313:2010|dual_phase|245||540||as_delivered|memory|||
SEFC590Y|JIS G 3313:2010|dual_phase|265||590||as_delivered|memory|||
SEFC780Y|JIS G 3313:2010|dual_phase|365||780||as_delivered|memory|||
SEFC980Y|JIS G 3313:2010|dual_phase|490||980||as_delivered|memory|||
SEFC340H|JIS G 3313:2010|bake_hardening|185||340||as_delivered|memory|||
SEFH490|JIS G 3313:2010|hsla|325||490||as_delivered|memory|||
SEFH540|JIS G 3313:2010|hsla|355||540||as_delivered|memory|||
SEFH590|JIS G 3313:2010|hsla|420||590||as_delivered|memory|||
SEFH540Y|JIS G 3313:2010|dual_phase|295||540||as_delivered|memory|||
SEFH590Y|JIS G 3313:2010|dual_phase|325||590||as_delivered|memory|||
SGH340|JIS G 3302:2010|structural|245||340||as_delivered|seen|||
SGH400|JIS G 3302:2010|structural|295||400||as_delivered|seen|||
SGH440|JIS G 3302:2010|structural|335||440||as_delivered|seen|||
SGH490|JIS G 3302:2010|structural|365||490||as_delivered|memory|||
SGH540|JIS G 3302:2010|structural|400||540||as_delivered|memory|||
AM50A|ASTM B94|magnesium|||||as_delivered|memory|||
`;
// A comparison key a line: key|the lines above that it names, from 0.
export const gradeKeyLines = `
DC01|0
DC03|1
DC04|2
DC05|3
DC06|4
DC07|5
DC01+ZE|6
DC03+ZE|7
DC04+ZE|8
DC05+ZE|9
DC06+ZE|10
DC07+ZE|11
DC01+LC|12
DC01+C290|13
DC01+C340|14
DC01+C390|15
DC01+C440|16
DC01+C490|17
DC01+C590|18
DC01+C690|19
HC180Y|20
HC220Y|21
HC260Y|22
HC220I|23
HC260I|24
HC300I|25
HC180P|26
HC220P|27
HC260P|28
HC300P|29
HC180B|30
HC220B|31
HC260B|32
HC300B|33
HC260LA|34
HC300LA|35
HC340LA|36
HC380LA|37
HC420LA|38
HC460LA|39
HC500LA|40
HCT450X|41,59
HCT490X|42,60
HCT590X|43,61
HCT780X|44,62
HCT980X|45,63
HCT980XG|46,64
HCT690T|47,65
HCT780T|48,66
HCT600C|49,67
HCT780C|50,68
HCT980C|51,69
HDT450F|52,70
HDT580F|53,71
HDT580X|54,72
HDT750C|55,73
HDT760C|56,74
HDT950C|57,75
HDT1200M|58
HCT500X|76
HCT600X|77
HDT560F|78
HDT780C|79
DX51D|80
DX52D|81
DX53D|82
DX54D|83
DX55D|84
DX56D|85
DX57D|86
S220GD|87
S250GD|88
S280GD|89
S320GD|90
S350GD|91
S390GD|92
S420GD|93
S450GD|94
S550GD|95
HX160YD|96
HX180YD|97
HX220YD|98
HX260YD|99
HX300YD|100
HX180BD|101
HX220BD|102
HX260BD|103
HX300BD|104
HX340BD|105
HX260LAD|106
HX300LAD|107
HX340LAD|108
HX380LAD|109
HX420LAD|110
HX460LAD|111
HX500LAD|112
S315MC|113
S355MC|114
S420MC|115
S460MC|116
S500MC|117
S550MC|118
S600MC|119
S650MC|120
S700MC|121
S900MC|122
S960MC|123
S260NC|124
S315NC|125
S355NC|126
S420NC|127
DD11|128
DD12|129
DD13|130
DD14|131
22MNB5|132,133
20MNB5|134
30MNB5|135
38MNB5|136
27MNCRB52|137
33MNCRB52|138
39MNCRB62|139
CR1500TMB|140
CR1900TMB|141
CR1500TPS|142
CR1500TMS|143
HC340/460HS|144
HC370/550HS|145
HC800/1000HS|146
HC950/1300HS|147
HC1100/1700HS|148
HC1200/1800HS|149
CR1|150,259,446
CR2|151,260,447
CR3|152,261,448
CR4|153,262,449
CR5|154,263,450
HR2|155,265
CR160IF|156
CR180IF|157,361
CR210IF|158
CR240IF|159
CR180BH|160,357
CR210BH|161
CR240BH|162
CR270BH|163
CR210LA|164
CR240LA|165
CR270LA|166
CR300LA|167,365
CR340LA|168,366
CR380LA|169,367
CR420LA|170,368
CR460LA|171
HR240LA|172
HR270LA|173
HR300LA|174
HR340LA|175
HR380LA|176
HR420LA|177
HR460LA|178
HR500LA|179
HR550LA|180
HR700LA|181
CR290Y490TDP|182
CR330Y590TDP|183
CR440Y780TDP|184
CR590Y980TDP|185
CR700Y980TDP|186
CR330Y590TDH|187
CR440Y780TDH|188
CR700Y980TDH|189
CR400Y690TTR|190
CR450Y780TTR|191
CR570Y780TCP|192
CR780Y980TCP|193
CR900Y1180TCP|194
CR860Y1100TMS|195
CR1030Y1300TMS|196
CR1220Y1500TMS|197
CR1350Y1700TMS|198
HR330Y580TDP|199
HR300Y450TFB|200
HR440Y580TFB|201
HR660Y760TCP|202
HR720Y950TCP|203
HR900Y1200TMS|204
180A|205
180B|206
210A|207
210B|208
250A|209
250B|210
280A|211
280B|212
300S|213
340S|214
300X|215
300Y|216
340X|217
340Y|218
380X|219
380Y|220
420X|221
420Y|222
490X|223
490Y|224
550X|225
550Y|226
490R|227
550R|228
700R|229
830R|230
600DH|231
600DL1|232
600DL2|233
700DH|234
800DL|235
950DL|236
1000DL|237
800M|238
900M|239
1000M|240
1100M|241
1200M|242
1300M|243
1400M|244
1500M|245
DP440T/250Y|246
DP490T/290Y|247
DP590T/340Y|248,442
DP690T/550Y|249
DP780T/420Y|250,443
DP980T/550Y|251,444
TRIP590T/380Y|252
TRIP690T/400Y|253
TRIP780T/420Y|254
MS900T/700Y|255
MS1100T/860Y|256
MS1300T/1030Y|257
MS1500T/1200Y|258
HR1|264
HR3|266
SPCC|267
SPCD|268
SPCE|269
SPCF|270
SPCG|271
SPHC|272
SPHD|273
SPHE|274
SPHF|275
SPFC340|276
SPFC370|277
SPFC390|278
SPFC440|279
SPFC490|280
SPFC540|281
SPFC590|282
SPFC490Y|283
SPFC540Y|284
SPFC590Y|285
SPFC780Y|286
SPFC980Y|287
SPFC340H|288
SPFH490|289
SPFH540|290
SPFH590|291
SPFH540Y|292
SPFH590Y|293
SAPH310|294
SAPH370|295
SAPH400|296
SAPH440|297
SGCC|298
SGCD1|299
SGCD2|300
SGCD3|301
SGCD4|302
SGC340|303
SGC400|304
SGC440|305
SGC490|306
SGC570|307
SECC|308
SECD|309
SECE|310
JSC270C|311
JSC270D|312
JSC270E|313
JSC270F|314
JSC260G|315
JSC340W|316
JSC370W|317
JSC390W|318
JSC440W|319
JSC340P|320
JSC370P|321
JSC390P|322
JSC440P|323
JSC340H|324
JSC440R|325
JSC590R|326
JSC590Y|327
JSC780Y|328
JSC980Y|329
JSC1180Y|330
JSC590T|331
JSC780T|332
JAC270C|333
JAC270D|334
JAC270E|335
JAC270F|336
JAC260G|337
JAC340W|338
JAC340P|339
JAC340H|340
JAC390P|341
JAC440W|342
JAC440P|343
JAC590R|344
JAC590Y|345
JAC780Y|346
JAC980Y|347
JAH270C|348
JSH270C|349
JSH370W|350
JSH400W|351
JSH440W|352
JSH590R|353
JSH780R|354
JSH590Y|355
CR140BH|356
CR220BH|358
CR260BH|359
CR300BH|360
CR220IF|362
CR260IF|363
CR260LA|364
CR260/450DP|369
CR300/500DP|370
CR340/590DP|371
CR420/780DP|372
CR500/780DP|373
CR550/980DP|374
CR700/980DP|375
CR820/1180DP|376
CR380/590TR|377
CR400/690TR|378
CR420/780TR|379
CR500/780MS|380
CR700/900MS|381
CR700/980MS|382
CR860/1100MS|383
CR950/1180MS|384
CR1030/1300MS|385
CR1150/1400MS|386
CR1200/1500MS|387
CR350/590CP|388
CR500/780CP|389
CR700/980CP|390
HR300/540DP|391
HR330/580DP|392
HR380/680DP|393
HSLASGRADE45[310]CLASS1|394,424
HSLASGRADE45CLASS1|394,424
HSLASGRADE45|394,395,424,425
HSLASGRADE45[310]|394,395,424,425
HSLASGRADE310CLASS1|394,424
HSLASGRADE310|394,395,424,425
HSLASGRADE45[310]CLASS2|395,425
HSLASGRADE45CLASS2|395,425
HSLASGRADE310CLASS2|395,425
HSLASGRADE50[340]CLASS1|396,426
HSLASGRADE50CLASS1|396,426
HSLASGRADE50|396,397,426,427,560,585
HSLASGRADE50[340]|396,397,426,427,560,585
HSLASGRADE340CLASS1|396,426
HSLASGRADE340|396,397,426,427,560,585
HSLASGRADE50[340]CLASS2|397,427
HSLASGRADE50CLASS2|397,427
HSLASGRADE340CLASS2|397,427
HSLASGRADE55[380]CLASS1|398,428,561
HSLASGRADE55CLASS1|398,428,561
HSLASGRADE55|398,399,428,429,561,562
HSLASGRADE55[380]|398,399,428,429,561,562
HSLASGRADE380CLASS1|398,428,561
HSLASGRADE380|398,399,428,429,561,562
HSLASGRADE55[380]CLASS2|399,429,562
HSLASGRADE55CLASS2|399,429,562
HSLASGRADE380CLASS2|399,429,562
HSLASGRADE60[410]CLASS1|400,430
HSLASGRADE60CLASS1|400,430
HSLASGRADE60|400,401,430,431,563,586
HSLASGRADE60[410]|400,401,430,431,563,586
HSLASGRADE410CLASS1|400,430
HSLASGRADE410|400,401,430,431,563,586
HSLASGRADE60[410]CLASS2|401,431
HSLASGRADE60CLASS2|401,431
HSLASGRADE410CLASS2|401,431
HSLASGRADE65[450]CLASS1|402,432
HSLASGRADE65CLASS1|402,432
HSLASGRADE65|402,403,432,433
HSLASGRADE65[450]|402,403,432,433
HSLASGRADE450CLASS1|402,432
HSLASGRADE450|402,403,432,433
HSLASGRADE65[450]CLASS2|403,433
HSLASGRADE65CLASS2|403,433
HSLASGRADE450CLASS2|403,433
HSLASGRADE70[480]CLASS1|404,434
HSLASGRADE70CLASS1|404,434
HSLASGRADE70|404,405,434,435,564,587
HSLASGRADE70[480]|404,405,434,435,564,587
HSLASGRADE480CLASS1|404,434
HSLASGRADE480|404,405,434,435,564,587
HSLASGRADE70[480]CLASS2|405,435
HSLASGRADE70CLASS2|405,435
HSLASGRADE480CLASS2|405,435
HSLASFGRADE50[340]|406,436,567
HSLASFGRADE50|406,436,567
HSLASFGRADE340|406,436,567
HSLASFGRADE60[410]|407,437,568
HSLASFGRADE60|407,437,568
HSLASFGRADE410|407,437,568
HSLASFGRADE70[480]|408,438,569
HSLASFGRADE70|408,438,569
HSLASFGRADE480|408,438,569
HSLASFGRADE80[550]|409,439,570
HSLASFGRADE80|409,439,570
HSLASFGRADE550|409,439,570
CS|410
DS|411
DDS|412
EDDS|413
SSGRADE25[170]|414
SSGRADE25|414
SSGRADE170|414
SSGRADE30[205]|415,418
SSGRADE30|415,418
SSGRADE205|415,418
SSGRADE33[230]TYPE1|416
SSGRADE33TYPE1|416
SSGRADE33|416,419,548,581,589
SSGRADE33[230]|416,419,548,581,589
SSGRADE230TYPE1|416
SSGRADE230|416,419,548,581,589
SSGRADE40[275]TYPE1|417
SSGRADE40TYPE1|417
SSGRADE40|417,420,550,583,591
SSGRADE40[275]|417,420,550,583,591
SSGRADE275TYPE1|417
SSGRADE275|417,420,550,583,591
SSGRADE45[310]|421
SSGRADE45|421
SSGRADE310|421
SSGRADE50[340]|422,551,552,553,554,584,592,593,594
SSGRADE50|422,551,552,553,554,584,592,593,594
SSGRADE340|422,551,552,553,554,584,592,593,594
SSGRADE55[380]|423,555
SSGRADE55|423,555
SSGRADE380|423,555
UHSSGRADE90[620]TYPE1|440
UHSSGRADE90TYPE1|440
UHSSGRADE90|440
UHSSGRADE90[620]|440
UHSSGRADE620TYPE1|440
UHSSGRADE620|440
UHSSGRADE100[690]TYPE1|441
UHSSGRADE100TYPE1|441
UHSSGRADE100|441
UHSSGRADE100[690]|441
UHSSGRADE690TYPE1|441
UHSSGRADE690|441
CR0|445
ST12|451
ST13|452
ST14|453
ST15|454
FEP01|455
FEP03|456
FEP04|457
H240LA|458
H280LA|459
H320LA|460
H360LA|461
H400LA|462
ZSTE260|463
ZSTE300|464
ZSTE340|465
ZSTE380|466
ZSTE420|467
ZSTE220BH|468
ZSTE260BH|469
ZSTE220P|470
ZSTE260P|471
ZSTE300P|472
QSTE340TM|473
QSTE380TM|474
QSTE420TM|475
QSTE460TM|476
QSTE500TM|477
QSTE550TM|478
QSTE600TM|479
QSTE690TM|480
1.4301|481
1.4307|482
1.4310|483
1.4318|484
1.4404|485
1.4016|486
1.4512|487
1.4509|488
1.4376|489
1.4310+C850|490
1.4310+C1000|491
1.4310+C1150|492
1.4310+C1300|493
1.4310+C1500|494
1.4318+C850|495
1.4318+CP500|496
ENAW5754O|497
5754O|497
ENAW5754|497,498,499,500,501,502
ENAW5754H111|498
5754H111|498
ENAW5754H22|499
5754H22|499
ENAW5754H32|500
5754H32|500
ENAW5754H24|501
5754H24|501
ENAW5754H34|502
5754H34|502
ENAW5182O|503
5182O|503
ENAW5182|503,504
ENAW5182H111|504
5182H111|504
ENAW5083O|505
5083O|505
ENAW5083|505,506,507,508
ENAW5083H111|506
5083H111|506
ENAW5083H22|507
5083H22|507
ENAW5083H32|508
5083H32|508
ENAW5049O|509
5049O|509
ENAW5049|509,510
ENAW5049H111|510
5049H111|510
ENAW5052O|511
5052O|511
ENAW5052|511,512
ENAW5052H111|512
5052H111|512
ENAW5251O|513
5251O|513
ENAW5251|513,514
ENAW5251H111|514
5251H111|514
ENAW5454O|515
5454O|515
ENAW5454|515,516
ENAW5454H111|516
5454H111|516
ENAW6016T4|517
6016T4|517
ENAW6016|517,518,519
ENAW6016T6|518
6016T6|518
ENAW6016T4P|519
6016T4P|519
6111T4|520,521
ENAW6111|520,521
6116T4|522,523
ENAW6116|522,523
ENAW6014T4|524
6014T4|524
ENAW6014|524
ENAW6181AT4|525
6181AT4|525
ENAW6181A|525
ENAW6451T4|526
6451T4|526
ENAW6451|526
ENAW6022T4|527
6022T4|527
ENAW6022|527
ENAW6061T4|528
6061T4|528
ENAW6061|528,529
ENAW6061T6|529
6061T6|529
ENAW6082T4|530
6082T4|530
ENAW6082|530,531,532,537
ENAW6082T6|531
6082T6|531,537
ENAW6082T61|532
6082T61|532
ENAW7020T6|533
7020T6|533
ENAW7020|533
ENAW7075T6|534
7075T6|534
ENAW7075|534
ENAW6060T6EXTRUSION|535
6060T6|535
ENAW6060|535
ENAW6063T6EXTRUSION|536
6063T6|536
ENAW6063|536
ENAW6082T6EXTRUSION|537
ENAW6005AT6EXTRUSION|538
6005AT6|538
ENAW6005A|538
ENAC43500|539
ENAC42100|540
AM60B|541
AZ91D|542
AZ31B|543
CFRP|544
GFRP|545
SMC|546
PPLGF|547
SSGRADE37[255]|549,582,590
SSGRADE37|549,582,590
SSGRADE255|549,582,590
SSGRADE50[340]CLASS1|551,584,592
SSGRADE50CLASS1|551,584,592
SSGRADE340CLASS1|551,584,592
SSGRADE50[340]CLASS2|552,593
SSGRADE50CLASS2|552,593
SSGRADE340CLASS2|552,593
SSGRADE50[340]CLASS3|553
SSGRADE50CLASS3|553
SSGRADE340CLASS3|553
SSGRADE50[340]CLASS4|554,594
SSGRADE50CLASS4|554,594
SSGRADE340CLASS4|554,594
SSGRADE60[410]|556
SSGRADE60|556
SSGRADE410|556
SSGRADE80[550]CLASS1|557,595
SSGRADE80CLASS1|557,595
SSGRADE80|557,558,595
SSGRADE80[550]|557,558,595
SSGRADE550CLASS1|557,595
SSGRADE550|557,558,595
SSGRADE80[550]CLASS2|558
SSGRADE80CLASS2|558
SSGRADE550CLASS2|558
HSLASGRADE40[275]|559
HSLASGRADE40|559
HSLASGRADE275|559
HSLASGRADE80[550]|565,588
HSLASGRADE80|565,588
HSLASGRADE550|565,588
HSLASFGRADE40[275]|566
HSLASFGRADE40|566
HSLASFGRADE275|566
SHSGRADE26[180]|571,596
SHSGRADE26|571,596
SHSGRADE180|571,596
SHSGRADE31[210]|572,597
SHSGRADE31|572,597
SHSGRADE210|572,597
SHSGRADE35[240]|573,598
SHSGRADE35|573,598
SHSGRADE240|573,598
SHSGRADE41[280]|574,599
SHSGRADE41|574,599
SHSGRADE280|574,599
SHSGRADE44[300]|575,600
SHSGRADE44|575,600
SHSGRADE300|575,600
BHSGRADE26[180]|576,601
BHSGRADE26|576,601
BHSGRADE180|576,601
BHSGRADE31[210]|577,602
BHSGRADE31|577,602
BHSGRADE210|577,602
BHSGRADE35[240]|578,603
BHSGRADE35|578,603
BHSGRADE240|578,603
BHSGRADE41[280]|579,604
BHSGRADE41|579,604
BHSGRADE280|579,604
BHSGRADE44[300]|580,605
BHSGRADE44|580,605
BHSGRADE300|580,605
SSGRADE36[250]TYPE1|606
SSGRADE36TYPE1|606
SSGRADE36|606
SSGRADE36[250]|606
SSGRADE250TYPE1|606
SSGRADE250|606
TYPE201|607
TYPE201LN|608
TYPE301|609
TYPE301L|610
TYPE301LN|611
TYPE304|612
TYPE304L|613
TYPE316|614
TYPE316L|615
TYPE409|616
TYPE430|617
TYPE439|618
TYPE441|619
TYPE444|620
TYPE3011/4HARD|621
TYPE3011/2HARD|622
TYPE3013/4HARD|623
TYPE301FULLHARD|624
TYPE3041/4HARD|625
TYPE3041/2HARD|626
TYPE2011/4HARD|627
TYPE2011/2HARD|628
SUS301|629
SUS301L|630
SUS304|631
SUS304L|632
SUS316|633
SUS316L|634
SUS430|635
SUS301CSP1/2H|636
SUS301CSP3/4H|637
SUS301CSPH|638
SUS301CSPEH|639
SUS304CSP1/2H|640
SUS304CSP3/4H|641
SUS304CSPH|642
SUS301LDLT|643
SUS301LST|644
SUS301LMT|645
SUS301LHT|646
HC260LAD|647
HC300LAD|648
HC340LAD|649
HC380LAD|650
HC420LAD|651
HC180YD|652
HC220YD|653
HC260YD|654
HC180BD|655
HC220BD|656
HC260BD|657
HC300BD|658
SEFC340|659
SEFC370|660
SEFC390|661
SEFC440|662
SEFC490|663
SEFC540|664
SEFC590|665
SEFC490Y|666
SEFC540Y|667
SEFC590Y|668
SEFC780Y|669
SEFC980Y|670
SEFC340H|671
SEFH490|672
SEFH540|673
SEFH590|674
SEFH540Y|675
SEFH590Y|676
SGH340|677
SGH400|678
SGH440|679
SGH490|680
SGH540|681
AM50A|682
`;
// A steel number a line, or a stainless name that the table lists by its number: key|comparison key of its grade|mark.
export const steelNumberLines = `
1.0226|DX51D|memory
1.0233|S450GD|memory
1.0238|S390GD|memory
1.0239|S420GD|memory
1.0241|S220GD|seen
1.0242|S250GD|seen
1.0244|S280GD|seen
1.0250|S320GD|seen
1.0306|DX54D|memory
1.0309|DX55D|memory
1.0312|DC05|seen
1.0322|DX56D|memory
1.0330|DC01|seen
1.0332|DD11|memory
1.0335|DD13|memory
1.0338|DC04|seen
1.0342|HC180P|memory
1.0346|HC220I|memory
1.0347|DC03|seen
1.0349|HC260I|memory
1.0350|DX52D|memory
1.0355|DX53D|memory
1.0389|DD14|memory
1.0395|HC180B|memory
1.0396|HC220B|memory
1.0397|HC220P|memory
1.0398|DD12|memory
1.0400|HC260B|memory
1.0417|HC260P|memory
1.0444|HC300B|memory
1.0447|HC300I|memory
1.0448|HC300P|memory
1.0480|HC260LA|seen
1.0489|HC300LA|memory
1.0529|S350GD|seen
1.0531|S550GD|seen
1.0548|HC340LA|seen
1.0550|HC380LA|memory
1.0556|HC420LA|seen
1.0573|HC500LA|memory
1.0574|HC460LA|memory
1.0853|DX57D|memory
1.0873|DC06|seen
1.0898|DC07|memory
1.0910|HX160YD|seen
1.0914|HX180BD|seen
1.0917|DX51D|memory
1.0918|DX52D|memory
1.0919|HX220BD|seen
1.0921|HX180YD|seen
1.0922|HC180Y|memory
1.0923|HX220YD|seen
1.0924|HX260BD|seen
1.0925|HC220Y|memory
1.0926|HX260YD|seen
1.0927|HX300YD|seen
1.0928|HC260Y|memory
1.0929|HX260LAD|seen
1.0930|HX300BD|seen
1.0932|HX300LAD|seen
1.0933|HX340LAD|memory
1.0934|HX380LAD|memory
1.0935|HX420LAD|memory
1.0936|HDT580X|memory
1.0937|HCT450X|memory
1.0943|HCT780X|memory
1.0944|HCT980X|seen
1.0945|HX340BD|seen
1.0947|HCT690T|memory
1.0948|HCT780T|memory
1.0951|DX53D|memory
1.0952|DX54D|memory
1.0953|HCT600C|memory
1.0954|HCT780C|memory
1.0955|HCT980C|memory
1.0956|HDT750C|memory
1.0958|HDT950C|memory
1.0961|HDT450F|memory
1.0962|DX55D|memory
1.0963|DX56D|memory
1.0965|HDT1200M|memory
1.0971|S260NC|memory
1.0972|S315MC|seen
1.0973|S315NC|memory
1.0976|S355MC|seen
1.0977|S355NC|memory
1.0980|S420MC|seen
1.0981|S420NC|memory
1.0982|S460MC|seen
1.0984|S500MC|seen
1.0986|S550MC|seen
1.0990|HX460LAD|memory
1.0991|HX500LAD|memory
1.0994|HDT580F|memory
1.0995|HCT490X|memory
1.0996|HCT590X|memory
1.0997|HCT980XG|memory
1.0998|HDT760C|memory
X6CR17|1.4016|memory
X5CRNI1810|1.4301|seen
X2CRNI189|1.4307|seen
X10CRNI188|1.4310|seen
X2CRNIN187|1.4318|memory
X8CRMNNI1963|1.4376|memory
X2CRNIMO17122|1.4404|seen
X2CRTINB18|1.4509|memory
X2CRTI12|1.4512|memory
1.5528|22MNB5|seen
1.5530|20MNB5|memory
1.5531|30MNB5|memory
1.5532|38MNB5|memory
1.7182|27MNCRB52|memory
1.7185|33MNCRB52|memory
1.7189|39MNCRB62|memory
1.8798|S900MC|seen
1.8799|S960MC|seen
1.8969|S600MC|seen
1.8974|S700MC|seen
1.8976|S650MC|seen
`;
