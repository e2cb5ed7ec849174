import { converter } from './converter.js'
import { cord } from './cord.js'
import { dcPlug } from './dcPlug.js'
import { earthing } from './earthing.js'
import { fuse } from './fuse.js'
import { inlet } from './inlet.js'
import { leadDrop } from './leadDrop.js'
import { mainsFrequency } from './mainsFrequency.js'
import { mainsVoltage } from './mainsVoltage.js'
import { outputCurrent } from './outputCurrent.js'
import { outputKind } from './outputKind.js'
import { outputVoltage } from './outputVoltage.js'
import { polarity } from './polarity.js'
import type { MainsTopic, PairTopic } from './situation.js'
import { socket } from './socket.js'

/** Topics between the wall and the supply, in chain order: they ask nothing of the machine. */
export const mainsTopics: readonly MainsTopic[] = [
  mainsVoltage,
  mainsFrequency,
  converter,
  earthing,
  socket,
  cord,
  inlet,
  fuse,
]

/** Topics between the supply and the machine, in chain order. */
export const pairTopics: readonly PairTopic[] = [outputKind, outputVoltage, outputCurrent, polarity, dcPlug, leadDrop]
