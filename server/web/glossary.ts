import type { Phrase } from '../words/phrase.js'
import { prose } from '../words/prose.js'
import { unbroken } from './parts/unbroken.js'

/** One word of the trade, in two sentences of our own. */
export interface Word {
  word: string
  /** other words for it, and abbreviations */
  also: readonly string[]
  text: Phrase
}

const word = (text: string, name: string, ...also: string[]): Word => ({
  word: name,
  also,
  text: prose(unbroken(text)),
})

/** Every word that is explained, by its name in addresses and in `+term('…')`. */
export const glossary = {
  'protection-class': word(
    'How a unit keeps its user from a shock: class I by an earth, class II by double insulation, class III by taking extra-low voltage only. It is printed on the plate, or told from the inlet.',
    'Class of protection',
  ),
  'class-i': word(
    'A unit whose touchable metal is joined to the protective earth of the mains. Every link from the wall to its case must carry that earth, or one fault inside puts mains on the metal.',
    'Class I',
    'earthed unit',
  ),
  'class-ii': word(
    'A unit with double or reinforced insulation, marked with a square inside a square. It needs no earth, and none is to be added by hand.',
    'Class II',
    'double insulated',
  ),
  'class-iii': word(
    'A unit fed by extra-low voltage only, up to 50\u00a0V. It must never meet the mains itself.',
    'Class III',
  ),
  inlet: word(
    'The socket in the unit that a removable mains cord plugs into, with pins that stand in the unit. Its shape has a number from IEC 60320: C14 is the usual one with three flat pins, C8 the figure of eight.',
    'Inlet',
    'appliance inlet',
  ),
  connector: word(
    'The end of a cord that goes into a unit’s inlet. It has the odd number of its pair: C13 goes into C14.',
    'Connector',
  ),
  'cord-set': word(
    'A mains cord with a wall plug moulded on at one end and a connector at the other. It is bought whole, with its own voltage and current rating, and changed whole.',
    'Cord set',
    'mains cord, power cord',
  ),
  'captive-flex': word(
    'A mains cord that cannot be pulled out of the unit. Its plug is not to be cut off by hand: changing it is work for a qualified person.',
    'Captive flex',
    'fixed cord',
  ),
  'fuse-link': word(
    'The part that melts and is replaced, as opposed to the holder it sits in. Rated current, speed, voltage and breaking capacity all belong to it, and all four must suit.',
    'Fuse-link',
    'fuse',
  ),
  gate: word(
    'A limit on how soon and how late a fuse-link may melt at a certain multiple of its rated current. A standard sets a handful of them, and every link of a kind passes between.',
    'Gate',
    'time-current gate',
  ),
  characteristic: word(
    'How quickly a fuse-link melts, given as a letter: FF very quick, F quick, M medium, T time-lag, TT long time-lag. A slower letter lets a switch-on pulse pass, and holds on longer in a fault.',
    'Characteristic',
    'speed of a fuse-link',
  ),
  'breaking-capacity': word(
    'The largest current a fuse-link can interrupt at its rated voltage without bursting. L, E and H on the cap stand for low, enhanced and high.',
    'Breaking capacity',
    'interrupting rating',
  ),
  'melting-i2t': word(
    'The square of the current times the time that melts a fuse-link in a pulse too short for heat to leave it. A switch-on pulse must stay well below it if the link is to survive many of them.',
    'Melting I²t',
    'pre-arcing I²t',
  ),
  inrush: word(
    'The short, high current at the moment of switching on, as capacitors charge or a transformer magnetises. It can be ten to a hundred times the running current and is over within a fraction of a second.',
    'Inrush',
    'switch-on surge',
  ),
  'prospective-fault-current': word(
    'The current that would flow at a place if line and neutral were joined there by a bar. The fuse-link must be able to interrupt it.',
    'Prospective fault current',
    'available fault current',
  ),
  earth: word(
    'The conductor that joins touchable metal to the ground of the building, green-and-yellow in present cords. It carries current only when something has failed, which is why nobody notices when it is missing.',
    'Earth',
    'protective earth, ground, PE',
  ),
  rcd: word(
    'A switch in the installation that trips when current leaves by another way than it came, through a person for example. It limits how long a shock lasts, not how strong it is, and sees nothing behind an isolating transformer.',
    'Residual current device',
    'RCD, GFCI, earth-leakage switch',
  ),
  regulated: word(
    'Said of a supply that holds its output voltage whatever the machine draws. An unregulated one stands well above its plate when little is drawn.',
    'Regulated',
    'stabilised',
  ),
  unregulated: word(
    'Said of a supply whose output rises and falls with the load and with the mains. The plate names the voltage at full load; with nothing connected it may be half as high again.',
    'Unregulated',
  ),
  'switch-mode': word(
    'A supply that rectifies the mains first and converts it at a high frequency: light for its power, often for 100\u00a0V to 240\u00a0V. It does not mind the mains frequency.',
    'Switch-mode supply',
    'switching supply',
  ),
  'transformer-supply': word(
    'A supply in which the mains goes straight into an iron-cored transformer: heavy for its power, for one voltage or a few. Too low a frequency or too high a voltage saturates the iron and burns the winding.',
    'Transformer supply',
    'linear supply',
  ),
  'flux-ratio': word(
    'How hard the iron of a transformer is driven here against how hard it was built to be: volts over hertz here, over volts over hertz on the plate. Above 1 it runs hotter, well above 1 it saturates.',
    'Flux ratio',
    'volts per hertz',
  ),
  'nominal-voltage': word(
    'The voltage a network is called by, such as 230\u00a0V. What comes out of the wall lies in a band around it.',
    'Nominal voltage',
  ),
  'tolerance-band': word(
    'The lowest and the highest voltage the mains may have in normal times at a place. A supply has to stand its top and work at its bottom.',
    'Tolerance band',
  ),
  'voltage-selector': word(
    'A switch, plug or link on a unit that sets it for one mains voltage out of several. Set too low for the mains it destroys the unit at once.',
    'Voltage selector',
  ),
  autotransformer: word(
    'A transformer with one winding that input and output share. It changes the voltage and isolates nothing: its output is as dangerous to touch as the mains.',
    'Autotransformer',
  ),
  'isolating-transformer': word(
    'A transformer whose output winding has no connection to the mains. One touch to its output then finds no way to earth, but two do, and it switches off the help of the residual current device.',
    'Isolating transformer',
  ),
  'electronic-converter': word(
    'A light travel converter that cuts pieces out of the sine instead of lowering it. It is for heaters and lamps, and destroys a power supply.',
    'Electronic converter',
    'phase-cut converter',
  ),
  'rating-plate': word(
    'The label on which the maker states what a unit takes and gives. It is a promise about the unit as it left the factory.',
    'Rating plate',
    'type plate, name plate',
  ),
  rail: word(
    'One output of a supply, or one voltage a machine wants, with its sign and current. A supply with +5\u00a0V, +12\u00a0V and −12\u00a0V has three.',
    'Rail',
  ),
  polarity: word(
    'Which contact of a direct-current plug is plus: the centre or the sleeve. It is drawn as two circles with their signs, and proved by a meter only.',
    'Polarity',
    'centre positive, centre negative',
  ),
  'dc-plug': word(
    'The round plug on a supply’s lead, a sleeve around a bore. Its size is outside diameter by bore, and says nothing certain about voltage or polarity.',
    'Low-voltage plug',
    'barrel plug, coaxial plug',
  ),
  bore: word(
    'The hole in the middle of a low-voltage plug, which goes over the pin of the jack. Tenths of a millimetre decide whether it fits, is loose or breaks the pin.',
    'Bore',
  ),
  'dummy-load': word(
    'A resistor that stands in for the machine while a supply is proved. It shows whether the voltage holds under load, and costs nothing when it does not.',
    'Dummy load',
  ),
  'series-lamp': word(
    'A tungsten lamp in the line conductor ahead of the unit under test. A healthy unit leaves it dark or dim; a short puts the mains on the lamp, which lights up and limits the current.',
    'Series lamp',
    'dim-bulb tester',
  ),
  'cold-resistance': word(
    'What a lamp’s filament measures when it is cold, a tenth or less of what it has when lit. That is why a dark lamp limits little and a bright one limits much.',
    'Cold resistance',
  ),
  reforming: word(
    'Bringing the insulating layer of an old electrolytic capacitor back by raising its voltage slowly through a resistor. Leakage is watched, and a capacitor that keeps leaking is replaced.',
    'Reforming',
    're-ageing',
  ),
  leakage: word(
    'The current that flows where none should: through the layer of a capacitor, or from the mains to touchable metal. A little is normal and has limits.',
    'Leakage',
  ),
  'x-y-capacitor': word(
    'Capacitors of a mains filter: X stands between line and neutral, Y from a mains conductor to earth or to the output. Old ones of paper in clear resin crack and fail with smoke.',
    'X and Y capacitors',
  ),
  bulk: word(
    'The large capacitor behind the mains rectifier of a switch-mode supply. It keeps hundreds of volts after the plug is pulled, and is measured before anything is touched.',
    'Bulk capacitor',
    'reservoir capacitor',
  ),
  'current-limit': word(
    'The most a bench supply will deliver, set by hand before it is switched on. At a first power-up it is set just above what the machine should draw, so that a fault is fed no more.',
    'Current limit',
  ),
  'off-load': word(
    'With nothing connected to the output. A voltage measured so is the highest the machine will ever meet.',
    'Off load',
    'no load, open circuit',
  ),
  'power-factor': word(
    'Real power in watts over volts times amperes, 1 at best. A supply without correction has 0.5 to 0.7, so it takes more amperes than its watts suggest.',
    'Power factor',
  ),
  awg: word(
    'A North American number for the size of a wire: the higher the number, the thinner the wire. Three numbers up halve the copper.',
    'American wire gauge',
    'AWG',
  ),
} as const satisfies Record<string, Word>
