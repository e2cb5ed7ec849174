import { frozen } from './frozen.js'
import { commonPractice, published, type Source } from './source.js'

interface Limit {
  readonly value: number
  readonly source: Source
}

const limit = (value: number, title: string, detail: string, from = commonPractice): Limit => ({
  value,
  source: from(title, detail),
})

/** Bounds by which the reader of rating plates tells a mains voltage and refuses what no plate of this kind says. */
export const plateLimits = frozen({
  /** a voltage from here up is a mains voltage where the plate has no word for it [V] */
  leastMainsV: limit(90, 'IEC 60038, table 1', '100 V, the lowest public supply voltage in use, less 10 %', published),
  /** a range of one region's mains begins here or above; a lower end may be misread [V] */
  leastRangeV: limit(
    85,
    'Rule of this project',
    '85 V, the lowest end printed for supplies of all mains, 100 V less 15 %',
  ),
  /** highest over lowest voltage from which a range is one for all mains [1] */
  leastWideRange: limit(2, 'Rule of this project', 'true wide ranges begin at 110-240 V, 2.18'),
  /** a voltage up to here is an output where the plate has no word for it [V] */
  mostLowV: limit(75, 'Rule of this project', 'between the two the plate is not read, as it fits neither'),
  /** [V] */
  mostV: limit(
    1000,
    'Directive 2014/35/EU, article 1',
    'upper bound of low voltage for alternating current',
    published,
  ),
  /** [A] */
  mostA: limit(200, 'Rule of this project', 'no plug-in or cord-connected supply gives or takes more'),
  /** [W] or [VA] */
  mostW: limit(20000, 'Rule of this project', 'no plug-in or cord-connected supply gives or takes more'),
  /** [Hz] */
  leastHz: limit(15, 'Rule of this project', 'below 16.7 Hz, the lowest frequency of a public supply'),
  /** [Hz] */
  mostHz: limit(1000, 'Rule of this project', 'above 400 Hz, the highest mains frequency, of aircraft'),
  /** between these two no public supply runs, so a figure read there is another thing's [Hz] */
  topOfPowerHz: limit(110, 'Rule of this project', 'above 100 Hz, the upper end of old plates for "40 to 100 cycles"'),
  /** [Hz] */
  leastAircraftHz: limit(300, 'Rule of this project', 'below 360 Hz, the lowest frequency of aircraft supplies'),
  /** a switched supply gives multiples of this, in the place of cells [V] */
  cellV: limit(1.5, 'IEC 60086-1', 'nominal voltage of a zinc or alkaline cell, remembered'),
  /** the lowest setting of a switched supply is at most this [V] */
  mostFirstSettingV: limit(
    6,
    'Rule of this project',
    'four cells; supplies with settings seen begin at 1.5, 3 or 4.5 V',
  ),
  /** least settings that are told from separate outputs */
  leastSettings: limit(3, 'Rule of this project', 'two voltages side by side may as well be two outputs'),
  /** how many voltages after a title the same figures may stand once more */
  mostTitleReach: limit(3, 'Rule of this project', 'a title, the mains, the output'),
  /** rails read from one plate; more is not a plate */
  mostRails: limit(24, 'Rule of this project', 'twice the rails of the largest computer supplies'),
  /** characters read from one text; what follows is reported unread */
  mostCharacters: limit(
    20000,
    'Rule of this project',
    'fifty times the longest plate seen, and several pages of a data sheet',
  ),
  /** words, figures and signs read from one text; what follows is reported unread */
  mostTokens: limit(
    1500,
    'Rule of this project',
    'ten times the longest plate seen, and more than a page of a data sheet',
  ),
  /** highest over lowest voltage of one range among several, "100-120/200-240V" [1] */
  widestPartRange: limit(1.6, 'Rule of this project', '90-132 V and 180-264 V, the widest halves seen, have 1.47'),
  /** two mains voltages joined by a dash are settings from this ratio on [1] */
  leastSettingsRatio: limit(
    1.7,
    'Rule of this project',
    '127-220 V is printed for a selector as well as for a range: taken for the former',
  ),
  /** … up to this one; true wide ranges begin at 110-240 V, 2.18 [1] */
  mostSettingsRatio: limit(
    2,
    'Rule of this project',
    '110-220 V is printed for a selector as well as for a range: taken for the former',
  ),
  /** the higher setting of such a pair is at most this; beyond, a plate states what its supply tolerates [V] */
  mostSettingV: limit(250, 'Rule of this project', 'the highest setting seen on selectors'),
  /** least voltage of one of several like windings; less is a cell [V] */
  leastWindingV: limit(3, 'Rule of this project', 'cells have 1.2 to 1.5 V, windings of supplies 5 V and more'),
  /** most like windings of a transformer */
  mostWindings: limit(4, 'Rule of this project', 'more of the same are cells'),
  /** over volts times amperes from here on, printed watts belong to another thing [1] */
  powerDenied: limit(
    1.25,
    'Rule of this project',
    'rated watts may be those at the upper end of the mains, 1.1 squared times the rated ones',
  ),
  /** sizes of coaxial plugs [mm] */
  leastPlugMm: limit(2, 'Rule of this project', '2.35 mm, the smallest plug listed'),
  mostPlugMm: limit(8.1, 'Rule of this project', '8.0 mm, the largest plug listed'),
  leastBoreMm: limit(0.6, 'Rule of this project', '0.7 mm, the smallest bore listed'),
  mostBoreMm: limit(5.6, 'Rule of this project', '5.5 mm, the largest bore listed'),
  /** a lone size from here up may be that of a phone plug [mm] */
  leastPhonePlugMm: limit(2.5, 'Rule of this project', 'phone plugs have 2.5, 3.5 and 6.3 mm'),
  /** how far printed watts may lie from volts times amperes [1] */
  powerAgreement: limit(1.06, 'Rule of this project', 'rounding of two figures printed with two digits'),
} as const)

/** Rated voltages of fuse-links, switches and appliance couplers; beside the mains a plate is for, they name such a part [V]. */
export const componentVoltages = frozen({
  valuesV: [125, 250] as readonly number[],
  source: published('IEC 60127-2 and IEC 60320-1', 'rated voltages 250 V, in North American practice also 125 V'),
} as const)

/**
 * Voltages and frequencies that public supplies have or had. A single figure on a plate that is none of them may be misread: it is
 * doubted until a person confirms it.
 */
export const mainsVoltages = frozen({
  valuesV: [
    100, 105, 110, 112, 115, 117, 118, 120, 125, 127, 130, 145, 150, 200, 208, 210, 215, 220, 225, 230, 234, 235, 240,
    245, 250, 260, 277, 347, 380, 400, 415, 440, 460, 480, 500, 575, 600, 660, 690,
  ] as readonly number[],
  source: commonPractice(
    'Nominal and nameplate voltages of public supplies',
    'IEC 60038 table 1, ANSI C84.1 nameplates, and the steps printed on the voltage selectors of old sets',
  ),
} as const)

export const mainsFrequencies = frozen({
  valuesHz: [16, 16.7, 25, 40, 42, 50, 60, 400] as readonly number[],
  source: commonPractice('Frequencies of public, railway, aircraft and former supplies', 'rule of this project'),
} as const)
