import { frozen } from './frozen.js'
import { fromMemory, published, type Source } from './source.js'
import { table } from './table.js'

/** What a drawn sign tells the reader; `note` has no field in a reading and is reported as unread. */
export type SymbolMeaning = 'ac' | 'dc' | 'class II' | 'fuse' | 'note'

/** One graphical symbol of rating plates with the characters that stand for it in text. */
export interface PlateSymbol {
  readonly name: string
  readonly meaning: SymbolMeaning
  /** as typed or recognised; empty where no character stands for it */
  readonly characters: readonly string[]
  readonly standard: string
  readonly tells: string
  readonly source: Source
}

const symbol = (
  name: string,
  meaning: SymbolMeaning,
  characters: string,
  standard: string,
  tells: string,
  source: Source,
): PlateSymbol => ({
  name,
  meaning,
  characters: characters === '' ? [] : characters.split('; '),
  standard,
  tells,
  source,
})

/** One line a symbol; a new character for one is added to its line and nowhere else. */
export const plateSymbols: readonly PlateSymbol[] = frozen([
  symbol(
    'direct current',
    'dc',
    '⎓; =; ==; ===; ====; ---; ≡',
    'IEC 60417-5031',
    'Value before it is DC. On a brick input it would mean a DC-only input. Printed substitutes: =, ==, ===, ====, ---, ⎓, "V-" (OCR).',
    published(
      'instrument manual appendix E, manualshive.com bnc/525 p. 39 (IEC 417 numbers listed); accessory manual symbol table, manualslib.es/manual/631210 p. 11 and esmanual.top/manual/631212 p. 81 (IEC 60417 numbers listed); Unicode character database (names checked with python unicodedata)',
      'symbol list or its meaning',
    ),
  ),
  symbol(
    'alternating current',
    'ac',
    '~; ∼; ∿; 〜; ～; ⏦; ˜',
    'IEC 60417-5032',
    'Value before it is AC. After "OUTPUT 9 V" it marks an AC-output brick: never feed a DC machine. Beware "~" used as "approximately" or as a range dash (100~240V), and old Japanese plates where "50-60~" means cycles.',
    published(
      'instrument manual appendix E, manualshive.com bnc/525 p. 39 (IEC 417 numbers listed); accessory manual symbol table, manualslib.es/manual/631210 p. 11 and esmanual.top/manual/631212 p. 81 (IEC 60417 numbers listed); Unicode character database (names checked with python unicodedata)',
      'symbol list or its meaning',
    ),
  ),
  symbol(
    'both direct and alternating current',
    'note',
    '',
    'IEC 60417-5033',
    'Input takes either; old "universal" AC/DC sets may have a live chassis.',
    published(
      'instrument manual appendix E, manualshive.com bnc/525 p. 39 (IEC 417 numbers listed); live chassis: memory: common practice',
      'symbol list or its meaning',
    ),
  ),
  symbol(
    'three-phase alternating current',
    'note',
    '',
    'IEC 60417-5032-1 (IEC 617-2 02-02-06)',
    'Not a household single-phase supply: stop.',
    published(
      'instrument manual appendix E, manualshive.com bnc/525 p. 39 (IEC 417 numbers listed); -1 number: memory: IEC 60417',
      'symbol list or its meaning',
    ),
  ),
  symbol(
    'class II equipment',
    'class II',
    '⧈; 回; ▣',
    'IEC 60417-5172',
    'Double or reinforced insulation: no earth needed, two-pin lead is correct. Says nothing about voltage. NOT the same as the words "Class 2".',
    published(
      'instrument manual appendix E, manualshive.com bnc/525 p. 39 (IEC 417 numbers listed); accessory manual symbol table, manualslib.es/manual/631210 p. 11 and esmanual.top/manual/631212 p. 81 (IEC 60417 numbers listed); device manual, manualslib.mx/manual/40208 p. 5; Unicode character database (names checked with python unicodedata)',
      'symbol list or its meaning',
    ),
  ),
  symbol(
    'class II with functional earth',
    'note',
    '',
    'IEC 60417-6092',
    'Three-pin inlet on a class II supply; the earth is functional. Keep the earth lead.',
    fromMemory('IEC 60417', 'not looked up'),
  ),
  symbol(
    'class III equipment',
    'note',
    '',
    'IEC 60417-5180',
    'Machine to be fed only from safety extra-low voltage: its input is not mains.',
    published(
      'device manual, manualslib.mx/manual/40208 p. 5 for the meaning (Schutzklasse III); number: memory: IEC 60417',
      'symbol list or its meaning',
    ),
  ),
  symbol(
    'class I (no symbol of its own on old plates)',
    'note',
    '',
    'IEC 60417-5019 at terminal',
    'Earthed: a two-pin lead or adapter removes the protection.',
    published(
      'instrument manual appendix E, manualshive.com bnc/525 p. 39 (IEC 417 numbers listed)',
      'symbol list or its meaning',
    ),
  ),
  symbol(
    'protective earth',
    'note',
    '',
    'IEC 60417-5019',
    'Terminal must be connected to protective earth.',
    published(
      'instrument manual appendix E, manualshive.com bnc/525 p. 39 (IEC 417 numbers listed); accessory manual symbol table, manualslib.es/manual/631210 p. 11 and esmanual.top/manual/631212 p. 81 (IEC 60417 numbers listed); meter manual symbol list, manualshive.com kmb/smc-133 p. 4 (meanings without numbers); Unicode character database (names checked with python unicodedata); incompliancemag.com digital edition inc1201 p. 21 (number and meaning)',
      'symbol list or its meaning',
    ),
  ),
  symbol(
    'earth, ground',
    'note',
    '⏚',
    'IEC 60417-5017',
    'Earth terminal where neither 5018 nor 5019 is required; by itself not proof of protective earth.',
    published(
      'instrument manual appendix E, manualshive.com bnc/525 p. 39 (IEC 417 numbers listed); accessory manual symbol table, manualslib.es/manual/631210 p. 11 and esmanual.top/manual/631212 p. 81 (IEC 60417 numbers listed); product-help.schneider-electric.com PowerLogic ION7400, IEC 61010-1 symbols; Unicode character database (names checked with python unicodedata)',
      'symbol list or its meaning',
    ),
  ),
  symbol(
    'functional earth',
    'note',
    '',
    'IEC 60417-5018',
    'Earth for function, not for safety.',
    published(
      'product-help.schneider-electric.com PowerLogic ION7400, IEC 61010-1 symbols; incompliancemag.com digital edition inc1201 p. 21 (number and meaning)',
      'symbol list or its meaning',
    ),
  ),
  symbol(
    'frame or chassis',
    'note',
    '⏊',
    'IEC 60417-5020',
    'Chassis connection, not protective.',
    published(
      'instrument manual appendix E, manualshive.com bnc/525 p. 39 (IEC 417 numbers listed); incompliancemag.com digital edition inc1201 p. 21 (number and meaning)',
      'symbol list or its meaning',
    ),
  ),
  symbol(
    'equipotentiality',
    'note',
    '',
    'IEC 60417-5021',
    'Bonding point.',
    published(
      'instrument manual appendix E, manualshive.com bnc/525 p. 39 (IEC 417 numbers listed)',
      'symbol list or its meaning',
    ),
  ),
  symbol(
    'polarity of d.c. power connector',
    'note',
    '',
    'IEC 60417-5926',
    'The sign joined to the dot is the centre (tip), the sign joined to the open ring (C shape) is the sleeve. Two drawings exist, one per polarity. No drawing = polarity unknown.',
    published(
      'accessory manual symbol table, manualslib.es/manual/631210 p. 11 and esmanual.top/manual/631212 p. 81 (IEC 60417 numbers listed); device manual, manualslib.mx/manual/40208 p. 5; reading rule: originalpower.com FAQ 98',
      'symbol list or its meaning',
    ),
  ),
  symbol(
    'for indoor use only',
    'note',
    '⌂',
    'IEC 60417-5957',
    'Dry indoor use; no electrical match meaning.',
    published(
      'accessory manual symbol table, manualslib.es/manual/631210 p. 11 and esmanual.top/manual/631212 p. 81 (IEC 60417 numbers listed); netzteil-ratgeber.de, Kennzeichnungen von Netzteilen; Unicode character database (names checked with python unicodedata)',
      'symbol list or its meaning',
    ),
  ),
  symbol(
    'caution, risk of electric shock',
    'note',
    '⚡',
    'IEC 60417-6042 on equipment; ISO 7010-W012 on signs and labels',
    'Hazardous voltage behind the cover: mains work for a qualified electrician.',
    published(
      'meaning listed without number: manualsonline.com bench-supply manual p. 4; W012 = warning, electricity (yellow triangle, black arrow, dangerous voltage): learnemc.com question of 6 Feb 2023 and safetydecals.com; 6042: memory: IEC 60417; Unicode character database (names checked with python unicodedata)',
      'symbol list or its meaning',
    ),
  ),
  symbol(
    'dangerous voltage',
    'note',
    '⚡',
    'IEC 60417-5036',
    'High voltage; capacitors may stay charged.',
    fromMemory('IEC 60417', 'not looked up'),
  ),
  symbol(
    'caution; general warning',
    'note',
    '⚠',
    'ISO 7000-0434 (A and B forms); ISO 7010 W001 on signs',
    'Read the manual before connecting. Nothing about voltage.',
    published(
      'meter manual symbol list, manualshive.com kmb/smc-133 p. 4 (meanings without numbers) for the meaning; number: memory: ISO 7000; Unicode character database (names checked with python unicodedata)',
      'symbol list or its meaning',
    ),
  ),
  symbol(
    'refer to instruction manual',
    'note',
    '',
    'ISO 7000-1641',
    'A fact missing on the plate may be in the manual.',
    published(
      'meter manual symbol list, manualshive.com kmb/smc-133 p. 4 (meanings without numbers) for the meaning; number: memory: ISO 7000',
      'symbol list or its meaning',
    ),
  ),
  symbol(
    'safety isolating transformer',
    'note',
    '⎔',
    'IEC 60417-5222 group; drawn in a shield',
    'Output separated from mains to safety standard (SELV). Its absence on an old brick does not prove the contrary.',
    published(
      'netzteil-ratgeber.de, Kennzeichnungen von Netzteilen for two overlapping circles = protective separation; number DOUBTFUL: memory: IEC 61558-1 / IEC 60417',
      'symbol list or its meaning',
    ),
  ),
  symbol(
    'safety isolating transformer, short-circuit proof',
    'note',
    '',
    'IEC 60417-5220 or 5224',
    'Survives a shorted output (inherently, or by a cut-out). Number DOUBTFUL.',
    fromMemory('IEC 61558-1', 'not looked up'),
  ),
  symbol(
    'safety isolating transformer, non-short-circuit proof',
    'note',
    '',
    'IEC 60417-5223',
    'Needs an outside fuse of the stated rating on the output. Number DOUBTFUL.',
    fromMemory('IEC 61558-1', 'not looked up'),
  ),
  symbol(
    'fail-safe safety isolating transformer',
    'note',
    '',
    'IEC 60417-5946 or 5947',
    'Fails open, not dangerous, after a fault: one-shot. Number DOUBTFUL.',
    fromMemory('IEC 61558-2-6', 'not looked up'),
  ),
  symbol(
    'fuse',
    'fuse',
    '⏛',
    'IEC 60417-5016',
    'Fuse value follows: a current after it is a fuse rating, not an output current (T2A, F500mA, T160mAL 250V).',
    published(
      'number: memory: IEC 60417; Unicode character database (names checked with python unicodedata)',
      'symbol list or its meaning',
    ),
  ),
  symbol(
    'thermal link (thermal fuse)',
    'note',
    '',
    'drawn as a fuse with a temperature, e.g. 130C or "tf"',
    'One-shot inside the transformer: a dead primary with a good cord often means this. Number not verified.',
    fromMemory('IEC 61558-1, IEC 60691', 'not looked up'),
  ),
  symbol(
    'on / off / standby',
    'note',
    '⏽; ⭘; ⏻; ⏼',
    'IEC 60417-5007, 5008, 5009, 5010',
    'A standby switch does not disconnect the mains.',
    published(
      'instrument manual appendix E, manualshive.com bnc/525 p. 39 (IEC 417 numbers listed) for 5007 and 5008; Unicode character database (names checked with python unicodedata); 5009, 5010: memory: IEC 60417; standby: manualsonline.com bench-supply manual p. 4',
      'symbol list or its meaning',
    ),
  ),
  symbol(
    'battery; positioning of cell',
    'note',
    '',
    'IEC 60417-5001, 5002',
    'Not an external power rating.',
    published(
      'accessory manual symbol table, manualslib.es/manual/631210 p. 11 and esmanual.top/manual/631212 p. 81 (IEC 60417 numbers listed)',
      'symbol list or its meaning',
    ),
  ),
  symbol(
    'Class 2 (words)',
    'note',
    '',
    'NEC Article 725 power limit',
    'North American limited-power output (usually not over 100 VA). It is a power class, not insulation class II, and applies to a 120 V input.',
    fromMemory('NEC 725.121, UL 1310', 'not looked up'),
  ),
  symbol(
    'LPS (words)',
    'note',
    '',
    'limited power source',
    'Output power and current limited (100 VA, 8 A, up to 30 V); no voltage meaning.',
    published(
      'emc-pstc archive msg71442 (mail-archive.com) for 100 VA, 8 A, 30 V; memory: IEC 60950-1 clause 2.5',
      'symbol list or its meaning',
    ),
  ),
  symbol(
    'SELV (word)',
    'note',
    '',
    'safety extra-low voltage',
    'Output at an extra-low, separated voltage; no voltage meaning.',
    published(
      'device manual, manualslib.mx/manual/40208 p. 5 describes it for class III',
      'symbol list or its meaning',
    ),
  ),
  symbol(
    'efficiency mark',
    'note',
    '',
    'Roman numeral III, IV, V, VI in a circle',
    'No-load and efficiency level of an external supply. IV or more: very likely switching and regulated, but check.',
    published(
      'level V wording: yhypoweradapter.store.bossgoo.com news 185178; inference: memory: common practice',
      'symbol list or its meaning',
    ),
  ),
  symbol(
    'separate collection (crossed bin)',
    'note',
    '🗑',
    'EN 50419',
    'No electrical meaning; roughly dates the brick after 2005.',
    published(
      'netzteil-ratgeber.de, Kennzeichnungen von Netzteilen; date: memory: WEEE directive',
      'symbol list or its meaning',
    ),
  ),
  symbol(
    'PSE in diamond or circle',
    'note',
    '',
    'Japan, Electrical Appliance and Material Safety Act',
    'Made for the Japanese market: expect AC 100 V unless the plate gives a wider range.',
    fromMemory('DENAN Act', 'not looked up'),
  ),
  symbol(
    'postal mark in triangle or circle',
    'note',
    '〒',
    'Japan before 2001 (electrical appliance control law)',
    'Older Japanese market brick: expect AC 100 V, 50/60 Hz.',
    fromMemory(
      'Electrical Appliance and Material Control Act; Unicode character database (names checked with python unicodedata)',
      'not looked up',
    ),
  ),
  symbol(
    'CCC',
    'note',
    '',
    'China compulsory certification',
    'Chinese market: expect 220 V 50 Hz unless wider.',
    fromMemory('common practice', 'not looked up'),
  ),
  symbol(
    'VDE, GS, KEMA, SEMKO, DEMKO, NEMKO, FIMKO, BSI marks',
    'note',
    '',
    'European test marks',
    'Hint of a 220 to 240 V market only.',
    fromMemory('common practice', 'not looked up'),
  ),
  symbol(
    'UL, CSA, ETL marks',
    'note',
    '',
    'North American test marks',
    'Hint of a 120 V market only; the printed input decides.',
    fromMemory('common practice', 'not looked up'),
  ),
  symbol(
    'recognised component (reversed UR)',
    'note',
    '',
    'UL component recognition',
    'Open-frame part, not a finished brick: needs an enclosure.',
    fromMemory('common practice', 'not looked up'),
  ),
  symbol(
    'ta / tmax / tc',
    'note',
    '',
    'ambient or case temperature',
    '"ta 40" is degrees C, not amperes.',
    fromMemory('IEC 61558-1', 'not looked up'),
  ),
  symbol(
    'IP20, IPX4',
    'note',
    '',
    'IEC 60529 enclosure code',
    'Digits are not volts.',
    fromMemory('IEC 60529', 'not looked up'),
  ),
  symbol(
    'duty (S3, KB, INT, 15 min)',
    'note',
    '',
    'intermittent rating',
    'Rated only for short use: not for continuous feeding of a machine.',
    fromMemory('IEC 60034-1, IEC 61558-1', 'not looked up'),
  ),
])

export const plateSymbolsTable = table<PlateSymbol>({
  name: 'plate-symbols',
  title: 'Symbols of rating plates',
  intro:
    'Signs printed on supplies and machines, what they tell, and the characters that stand for them where there are any.',
  rows: plateSymbols,
  id: ({ name }) => [name],
  columns: [
    { key: 'name', title: 'Symbol' },
    { key: 'characters', title: 'Typed as', between: ' ' },
    { key: 'standard', title: 'Standard' },
    { key: 'meaning', title: 'Read as', of: ({ meaning }) => (meaning === 'note' ? 'noted, not judged' : meaning) },
    { key: 'tells', title: 'What it tells' },
  ],
})
