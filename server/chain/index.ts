import { charging } from './charging.js'
import { converter } from './converter.js'
import { cord } from './cord.js'
import { dcPlug } from './dcPlug.js'
import { earthing } from './earthing.js'
import { fuse } from './fuse.js'
import { hazardWords } from './hazardWords.js'
import { inlet } from './inlet.js'
import { isolation } from './isolation.js'
import { leadDrop } from './leadDrop.js'
import { leakage } from './leakage.js'
import { mainsFrequency } from './mainsFrequency.js'
import { mainsVoltage } from './mainsVoltage.js'
import { outputCurrent } from './outputCurrent.js'
import { outputKind } from './outputKind.js'
import { outputVoltage } from './outputVoltage.js'
import { pins } from './pins.js'
import { polarity } from './polarity.js'
import { socket } from './socket.js'
import { speed } from './speed.js'
import { starting } from './starting.js'

/** Topics between the wall and the supply, in chain order. */
export const mainsTopics = [
  mainsVoltage,
  mainsFrequency,
  speed,
  converter,
  starting,
  leakage,
  earthing,
  socket,
  cord,
  inlet,
  fuse,
] as const

/** Topics between the supply and the machine, in chain order. */
export const pairTopics = [
  isolation,
  charging,
  hazardWords,
  outputKind,
  outputVoltage,
  outputCurrent,
  polarity,
  dcPlug,
  pins,
  leadDrop,
] as const

/** Every topic, from the wall to the machine. */
export const topics = [...mainsTopics, ...pairTopics] as const

export type TopicName = (typeof topics)[number]['name']

/** In the order of the power chain. */
export const topicNames = topics.map(({ name }) => name)
