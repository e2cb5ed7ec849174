import { z } from 'zod'
import { mainsOf } from '../tables/mains.js'
import { socketLetters } from '../tables/socketLetters.js'
import { drawingKey } from './drawingKey.js'
import { type Fact, look, measure } from './fact.js'
import { choice, number, thing } from './kinds.js'
import { leastTaken } from './leastTaken.js'

const countryValue = z.string().refine((value) => /^[A-Za-z]{2}$/.test(value) && mainsOf(value) !== undefined, {
  error: (issue) =>
    `site.country must be two letters of ISO 3166-1 that are listed, such as DE or JP (GET /api/mains lists all); received ${JSON.stringify(String(issue.input).slice(0, 40))}`,
})

const country = {
  kind: 'country',
  link: 'source',
  address: 'country',
  label: 'Country',
  question: 'In which country will it be used?',
  hint: 'A name or a two-letter code.',
  ahead: true,
  findOut: [look('The country tells the voltage, the frequency and the sockets that are usual there.')],
  value: countryValue,
  schema: countryValue.nullish(),
} satisfies Fact<string>

const socketValue = z
  .string()
  .transform((value) => value.trim().toUpperCase())
  .refine((value) => (socketLetters as readonly string[]).includes(value), {
    error: (issue) =>
      `site.socket must be a letter from A to O; received ${JSON.stringify(String(issue.input).slice(0, 40))}`,
  })

/** What a socket of each letter looks like from the front. */
const socketShapes: Record<(typeof socketLetters)[number], string> = {
  A: 'two flat slots',
  B: 'two flat slots and a round earth hole',
  C: 'two round holes, no earth',
  D: 'three large round holes in a triangle',
  E: 'two round holes, an earth pin standing out',
  F: 'round recess, two earth clips at its rim',
  G: 'three rectangular slots',
  H: 'three holes in a V',
  I: 'two slanted slots, a third upright',
  J: 'three round holes close together, flat hexagon',
  K: 'two round holes and a half-round earth hole',
  L: 'three round holes in a row',
  M: 'three very large round holes in a triangle',
  N: 'three round holes, hexagonal recess',
  O: 'three round holes, the earth one wider apart',
}

const socket = {
  kind: 'choice',
  link: 'socket',
  address: 'socket',
  label: 'Socket',
  question: 'Which socket is in the wall?',
  hint: 'By its letter or its shape.',
  ahead: true,
  findOut: [look('Compare the holes and the rim of the socket with the drawings; put nothing into it.')],
  choices: socketLetters.map((letter) => ({
    value: letter as string,
    label: `${letter}: ${socketShapes[letter]}`,
    drawing: drawingKey('socket', letter),
    sockets: [letter],
  })),
  value: socketValue,
  schema: socketValue.nullish(),
} satisfies Fact<string>

/** Where it will be used. */
export const place = thing('Site', {
  country,
  voltageV: number({
    unit: 'V',
    min: leastTaken.voltageV,
    max: 1000,
    typed: { min: 50 },
    link: 'source',
    address: 'mains',
    label: 'Mains voltage',
    question: 'What voltage does the socket give?',
    hint: 'Measured, or if no country is given; of a transformer, inverter or generator by its plate.',
    ahead: true,
    findOut: [
      look('The country tells the nominal voltage of the wall; of any other source its own plate tells it.'),
      measure('The voltage at the socket itself is measured by a qualified person.', 'mains'),
    ],
  }),
  frequencyHz: number({
    unit: 'Hz',
    min: leastTaken.frequencyHz,
    max: 1000,
    link: 'source',
    address: 'hz',
    label: 'Mains frequency',
    question: 'What frequency does the mains have?',
    hint: 'If no country is given; of an inverter or generator by its plate.',
    ahead: true,
    findOut: [
      look(
        'The country tells it; where a country has two, ask the network’s operator. Of an inverter or a generator its own plate tells it.',
      ),
    ],
  }),
  socket,
  source: choice({
    choices: [
      { value: 'wall', label: 'The wall: one live conductor and a neutral' },
      { value: 'two-live', label: 'The wall: two live conductors' },
      { value: 'isolating-transformer', label: 'An isolating transformer' },
      { value: 'site-transformer', label: 'A site transformer, its middle earthed' },
      { value: 'shaver-outlet', label: 'A shaver outlet' },
      { value: 'inverter-sine', label: 'An inverter with a sine' },
      { value: 'inverter-stepped', label: 'An inverter with steps, a “modified sine”' },
      { value: 'generator', label: 'A generator' },
    ],
    link: 'source',
    address: 'source',
    label: 'Source of the mains',
    none: 'The wall',
    question: 'What stands behind the socket?',
    findOut: [
      look(
        'A socket for 240 V in a country of 120 V has two live conductors. A qualified person finds it out by measuring each pole to earth: 0 V and all of it, or half on each.',
      ),
    ],
  }),
  residualCurrentA: number({
    unit: 'A',
    min: 0.001,
    max: 10,
    link: 'source',
    address: 'rcd',
    label: 'Residual-current device, rated residual current',
    question: 'What residual current is the device before the socket rated for?',
    hint: 'As 30 mA.',
    findOut: [
      look('From its print, beside IΔn: 0.03 A is 30 mA. A ground-fault interrupter of class A counts as 5 mA.'),
    ],
  }),
  othersLeakA: number({
    unit: 'A',
    min: 0,
    max: 10,
    link: 'source',
    address: 'othersleak',
    label: 'Leakage to earth of all else on that device',
    question: 'How much leaks to earth of all else that hangs on the residual-current device?',
    hint: '0 where nothing else does.',
    findOut: [
      look(
        'By adding up what each has: as tested, or 2π f C V of its capacitors from line to earth. Computers and printers have 1 mA to 3.5 mA each.',
      ),
    ],
  }),
})
