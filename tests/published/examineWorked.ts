import type { CheckRequest } from '../../server/chain/case/request.js'
import type { ReadingSeen } from '../../server/examine/examineRequest.js'

/**
 * Worked cases from public sources: what was seen, what it turned out to be, and what found it. The cause and the examination are
 * those that the source tells of, in the words of the tables; several where the source leaves open which of them.
 */
export interface Worked {
  id: string
  story: string
  seen: string[]
  check: Partial<CheckRequest>
  readings?: ReadingSeen[]
  turnedOut: string[]
  foundBy: string[]
  source: string
}

const linear = { technology: 'transformer' } as const
const switching = { technology: 'switch-mode' } as const
const dc = (voltageV: number, currentA: number | null = null) => ({ kind: 'dc' as const, voltageV, currentA })
const ac = (voltageV: number, currentA: number | null = null) => ({ kind: 'ac' as const, voltageV, currentA })

export const worked: readonly Worked[] = [
  {
    id: 'W01',
    story: 'The 5 V line of a minicomputer supply stood at 8.5 V on the dummy load: a fault of its regulator.',
    seen: [],
    check: { arrangement: 'supply-only', supply: { ...linear, outputs: [dc(5, 10)] } },
    readings: [{ key: 'output-1', value: 8.5, unit: 'V', state: 'loaded' }],
    turnedOut: ['pass-shorted'],
    foundBy: ['load-steps'],
    source: 'ana-3.lcs.mit.edu/~jnc/cctalk/1997-April/0014.html',
  },
  {
    id: 'W02',
    story: '5 V open, 2.5 V under load, black picture: the brick was worn out, the computer whole.',
    seen: ['output-collapses'],
    check: { supply: { outputs: [dc(5, 1.5), ac(9, 1)] } },
    turnedOut: ['brick-worn'],
    foundBy: ['load-steps'],
    source: 'rasterirq.com/2019/02/my-first-c64-breadbin',
  },
  {
    id: 'W03',
    story: '12 V at 0.9 V with three cards in: a shorted bypass capacitor on one, found by taking cards out.',
    seen: ['rail-missing'],
    check: { supply: { ...linear, outputs: [dc(12, 3), dc(5, 10)] } },
    turnedOut: ['rail-shorted-machine'],
    foundBy: ['outputs-ohms'],
    source: 'cholla.mmto.arizona.edu/computers/multibus/callan/evil.html',
  },
  {
    id: 'W04',
    story: 'A derived 13 V line dead after an hour and a half: a shorted tantalum, its series resistor browned.',
    seen: ['rail-missing'],
    check: { arrangement: 'built-in', device: { mains: linear } },
    turnedOut: ['feed-resistor', 'rail-shorted-machine'],
    foundBy: ['outputs-ohms', 'look-inside'],
    source: 'groups.io/g/TekScopes/message/125737',
  },
  {
    id: 'W05',
    story: 'Blank screen, the current as usual: a dead logic array, found by trying chips in a good board.',
    seen: ['blank-screen'],
    check: { supply: { outputs: [dc(5, 1.5), ac(9, 1)] } },
    turnedOut: ['logic-dead'],
    foundBy: ['swap-socketed'],
    source: 'portcommodore.com/rcarlsen/cbm/c64/one case history.txt',
  },
  {
    id: 'W06',
    story:
      'Nothing on either output of a brick after its cord was renewed: a fuse open, and the joints of a big inductor cracked.',
    seen: ['output-none'],
    check: { supply: { ...switching, outputs: [dc(5, 4), ac(9, 1)] } },
    turnedOut: ['fuse-open', 'rail-fuse-open', 'heavy-joint'],
    foundBy: ['fuse-look', 'rail-fuse', 'wiggle'],
    source: 'blog.tynemouthsoftware.co.uk/2014/10/commodore-128-repair-part-1-psu.html',
  },
  {
    id: 'W07',
    story:
      'A monitor takes 5 W, tries to start and shuts down: three shorted diodes on the outputs, found by resistance.',
    seen: ['output-pulses'],
    check: { arrangement: 'built-in', device: { mains: switching } },
    turnedOut: ['output-diode-shorted'],
    foundBy: ['outputs-ohms'],
    source: 'zeta-services.tv/targa-1985-monitor-gaming',
  },
  {
    id: 'W08',
    story:
      'A keyboard clamps the bench supply at its limit: the protection diode against reversed polarity, found warm.',
    seen: ['current-too-much'],
    check: { arrangement: 'machine-only', device: { label: '9V DC 300mA' } },
    turnedOut: ['protection-diode-shorted'],
    foundBy: ['input-ohms', 'feel-heat'],
    source: 'hackaday.com/2022/07/16/restoring-5-busted-synthesizer-made-easy-thanks-to-thermal',
  },
  {
    id: 'W09',
    story: 'Trips the 30 mA device of a new house, no fault: four 0.1 µF capacitors to earth.',
    seen: ['trips-plugged-in'],
    check: { arrangement: 'built-in', device: { mains: { ...linear, protectionClass: 'I' } } },
    turnedOut: ['y-by-design'],
    foundBy: ['leakage-sum'],
    source: 'forum.vcfed.org thread 71589 post-868104',
  },
  {
    id: 'W10',
    story:
      'Trips after hours; the device was blamed and taken out, then a filter capacitor burst. Found by a faint smell.',
    seen: ['trips-later'],
    check: {},
    turnedOut: ['y-warm', 'y-leaky'],
    foundBy: ['look-inside'],
    source: 'electronicsweekly.com blog “Bursting capacitors and humility”, Mar 2009',
  },
  {
    id: 'W11',
    story: 'A pop and much smoke after five minutes, and it went on working: the filter capacitor in clear resin.',
    seen: ['bang-smoke'],
    check: { arrangement: 'built-in', device: { mains: switching } },
    turnedOut: ['x-cracked'],
    foundBy: ['look-inside'],
    source: 'public repository page “A Macintosh Story”',
  },
  {
    id: 'W12',
    story: 'Takes longer and longer to start, then never: the start capacitor dried.',
    seen: ['slow-start'],
    check: { arrangement: 'built-in', device: { mains: switching } },
    turnedOut: ['control-capacitor-dry'],
    foundBy: ['esr-control'],
    source: 'sprow.co.uk/bbc/howto.htm',
  },
  {
    id: 'W13',
    story: 'The standby output falls from 5 V to 2 V with the board on it: swollen capacitors.',
    seen: ['output-collapses'],
    check: { supply: { ...switching, outputs: [dc(5, 2)] } },
    turnedOut: ['output-capacitor-esr', 'brick-worn'],
    foundBy: ['load-steps', 'look-inside'],
    source: 'swiat-owocow.pl/810.html',
  },
  {
    id: 'W14',
    story: 'A unit for 120 V on 230 V, a bang, a red part in pieces: the varistor, and the fuse most likely.',
    seen: ['overvoltage-mains', 'bang-smoke'],
    check: { arrangement: 'built-in', device: { mains: switching, label: '120V 60Hz' } },
    turnedOut: ['varistor-shorted'],
    foundBy: ['look-inside'],
    source: 'makerv2.webteractive.co/forums/threads/possible-capacitor-identification.277194',
  },
  {
    id: 'W15',
    story: 'A shock between computer and radiator, half the mains on the meter: no earth.',
    seen: ['tingle'],
    check: { arrangement: 'built-in', device: { mains: { ...switching, protectionClass: 'I' } } },
    turnedOut: ['filter-no-earth'],
    foundBy: ['case-loaded'],
    source: 'licn.typepad.com/my_weblog/safety',
  },
  {
    id: 'W16',
    story: 'An adapter without output: the thermal fuse under the tape of its primary.',
    seen: ['lamp-dark'],
    check: { arrangement: 'plug-in', supply: linear },
    turnedOut: ['thermal-fuse-open'],
    foundBy: ['pin-to-pin'],
    source: 'forum.allaboutcircuits.com/threads/wall-wart-mystery-component.9382',
  },
  {
    id: 'W17',
    story:
      'A regulator brick gives nothing into a small load: its overvoltage protection was firing; found by destroying it.',
    seen: ['output-none'],
    check: { supply: { ...switching, outputs: [dc(-15, 5)] } },
    turnedOut: ['crowbar-fired', 'crowbar-feedback-open'],
    foundBy: ['crowbar-again', 'peak-hold'],
    source: 'classiccmp list message 2UVSHJDWOFTPZ6SHXDMRR4P7LU7PBHL2',
  },
  {
    id: 'W18',
    story: 'The 12 V of a disk drive is low and its motors stand: a shorted tantalum.',
    seen: ['output-low'],
    check: { arrangement: 'built-in', device: { mains: linear } },
    turnedOut: ['overload-pulls'],
    foundBy: ['unload', 'regulator-in-out'],
    source: 'disk-drive repair notes, fix1541.txt',
  },
  {
    id: 'W19',
    story: '10 Ω between 5 V and ground of a large board: only 0.5 A, and perhaps no fault.',
    seen: ['current-too-much'],
    check: { arrangement: 'machine-only', device: { label: '5V DC 2A' } },
    readings: [{ key: 'input-1', value: 10, unit: 'Ω' }],
    turnedOut: ['reading-normal'],
    foundBy: ['ohms-against-plate', 'feel-heat'],
    source: 'ana-3.lcs.mit.edu/~jnc/cctalk/2004-December/0047.html',
  },
  {
    id: 'W20',
    story: 'The lamp of a console lights on another’s adapter, nothing works: its plate says AC.',
    seen: ['ac-into-dc'],
    check: { supply: { outputs: [ac(9, 1)] }, device: { label: '9V DC 850mA' } },
    turnedOut: ['half-wave-runs'],
    foundBy: ['plate-kind'],
    source: 'salzmafia.com/blog/2010/03/06/thrift-store-sega-genesis',
  },
  {
    id: 'W21',
    story: 'The AC line of a brick is dead, its 5 V right: a fuse, opened by a shorted chip in the computer.',
    seen: ['rail-missing'],
    check: { supply: { ...switching, outputs: [dc(5, 4), ac(9, 1)] } },
    turnedOut: ['rail-fuse-open'],
    foundBy: ['rail-fuse'],
    source: 'portcommodore.com/rcarlsen/cbm/c128/PS REPAIR/repair.txt',
  },
  {
    id: 'B20',
    story:
      'Set to 110 V and met 220 V, a pop and smoke: fuse-link, inrush resistor, varistors, rectifier, the two doubler capacitors, in that order.',
    seen: ['selector-wrong'],
    check: { supply: switching },
    turnedOut: ['fuse-open', 'doubler-string'],
    foundBy: ['fuse-look'],
    source: 'blog.templaro.com/?p=1573',
  },
  {
    id: 'C02',
    story: 'A shock between case and radiator: the filter capacitors divide the mains by two.',
    seen: [],
    check: { arrangement: 'built-in', device: { mains: { ...switching, protectionClass: 'I' } } },
    readings: [{ key: 'case', value: 115, unit: 'V' }],
    turnedOut: ['filter-no-earth'],
    foundBy: ['case-loaded'],
    source: 'licn.typepad.com/my_weblog/safety',
  },
  {
    id: 'C04',
    story:
      '80 V between hand and case of a portable: the capacitor of a class II supply, which a loading meter pulls down.',
    seen: ['tingle'],
    check: { supply: { ...switching, protectionClass: 'II' } },
    turnedOut: ['class-two-capacitor'],
    foundBy: ['case-loaded'],
    source: 'spy.macrumors.com/threads/electric-shock-tingle-on-my-ipad-4th-gen-when-charging.1509657',
  },
  {
    id: 'C09',
    story: 'A receiver trips the ground-fault outlet switched off: 0.136 µF to the chassis is 6 mA.',
    seen: ['trips-plugged-in'],
    check: { site: { country: 'US' }, arrangement: 'built-in', device: { mains: linear } },
    turnedOut: ['y-by-design'],
    foundBy: ['leakage-sum'],
    source: 'mailman.qth.net/pipermail/r-390/2005-October/036203.html',
  },
  {
    id: 'E04',
    story:
      'The lamp stays bright: output transistors, bias, rectifier, reservoir capacitors, shorted turns, in that order.',
    seen: ['lamp-bright'],
    check: { arrangement: 'built-in', device: { mains: { ...linear, pictureTube: false } } },
    turnedOut: ['output-short-beyond', 'secondary-diode-shorted'],
    foundBy: ['secondary-diodes', 'outputs-ohms'],
    source: 'diyaudio.com/community/threads/failed-the-series-light-bulb-test.419282/post-7837515',
  },
  {
    id: 'E14',
    story: 'Pop, white smoke and stench after 25 minutes, and it still works: the mains filter capacitor.',
    seen: ['bang-smoke'],
    check: { arrangement: 'built-in', device: { mains: switching } },
    turnedOut: ['x-cracked'],
    foundBy: ['look-inside'],
    source: 'groups.google.com/g/comp.sys.apple2/c/JkKcoBqflbI',
  },
  {
    id: 'A15',
    story: 'Sound boxes hum on a switchable adapter that gives 14 V with 600 mV of ripple at its 9 V setting.',
    seen: ['hum-in-sound'],
    check: { supply: { ...linear, outputs: [dc(9, 0.5)] } },
    readings: [{ key: 'ripple-1', value: 0.6, unit: 'V' }],
    turnedOut: ['unregulated-ripple', 'reservoir-dry'],
    foundBy: ['ripple'],
    source: 'community.guitartalk.co.za/d/6802-cheap-wall-wart-power-supplies',
  },
  {
    id: 'A20',
    story: 'A 12 V 2 A transformer unit reads 16 V open: unregulated, or a fault; measure it under load.',
    seen: [],
    check: { supply: { ...linear, outputs: [dc(12, 2)] } },
    readings: [{ key: 'output-1', value: 16.1, unit: 'V', state: 'open' }],
    turnedOut: ['unregulated-open'],
    foundBy: ['load-steps'],
    source: 'technibble.com/forums/threads/electronics-question.82234',
  },
]
