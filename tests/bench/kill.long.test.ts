import { it } from 'vitest'
import { surviveKills } from './kills.js'

it('loses no acknowledged write when the process is killed 40 times while it writes', { timeout: 300_000 }, () =>
  surviveKills(40),
)
