import { type MainsSource, mainsSourceRows } from '../tables/mainsSources.js'
import { say } from '../words/phrase.js'
import { byQualified } from './action.js'
import type { MainsSituation } from './case/situation.js'
import { caution, type Judgement, stop, unknown } from './judgement.js'

/** Whether the voltage of a source does not follow from that of the wall. */
export const hasOwnVoltage = (source: MainsSource | null): boolean =>
  mainsSourceRows.some((row) => row.source === source && row.own !== 'nothing')

/** Whether its frequency does not either. */
export const hasOwnFrequency = (source: MainsSource | null): boolean =>
  mainsSourceRows.some((row) => row.source === source && row.own === 'voltage and frequency')

/**
 * What stands behind the socket where it is no wall with one live conductor and a neutral. Only what speaks against it is a judgement; what
 * it does to fuse-link, switch and residual-current device is told with it.
 */
export function sourceJudgements(situation: MainsSituation): Judgement[] {
  const row = mainsSourceRows.find(({ source }) => source === situation.site.source)
  if (!row) return []
  const outcome = outcomeOn(row.source, situation)
  const { supply, device } = situation
  const findOut =
    outcome !== unknown
      ? []
      : [
          ...(supply.technology === null
            ? [
                say`Find out whether the ${supply.called} has a transformer on the mains or is switch-mode, and enter it.`,
              ]
            : []),
          ...(motorOpen(supply, device)
            ? [say`Find out what kind of motor turns in the machine, or that none does, and enter it.`]
            : []),
        ]
  return [
    outcome(() => ({
      title: say`It is fed by ${row.says}`,
      why: row.wrong,
      working: [],
      action: [...findOut, byQualified(row.wants)],
      sources: [...row.sources],
    })),
  ]
}

function outcomeOn(
  source: Exclude<MainsSource, 'wall'>,
  { supply, device, converter }: MainsSituation,
): typeof caution {
  if (source === 'shaver-outlet') return stop
  if (source !== 'inverter-stepped') return caution
  // a stepped wave heats iron: that of a converter as that of a supply
  if (
    supply.technology === 'transformer' ||
    device?.turns ||
    converter?.kind === 'isolating' ||
    converter?.kind === 'autotransformer'
  )
    return stop
  if (converter) return unknown
  return supply.technology === 'switch-mode' && !motorOpen(supply, device) ? caution : unknown
}

/** Whether a motor hangs on the mains inside a machine is not known until it was told. */
const motorOpen = (supply: MainsSituation['supply'], device: MainsSituation['device']): boolean =>
  supply.called === 'machine' && (device === null || device.motor === null)
