import { type LampString, type StringState, stringAt } from './lampString.js'
import { type RectifierPoint, rectifierCurve, rectifierLoad } from './rectifierLoad.js'
import { judgeStart, operatingPoint, type StartJudgement } from './seriesLamp.js'

/** One load behind one choice of lamps. */
export interface LoadBehindLamps {
  /** a steady draw [V rms]; null where there is no point at which it runs */
  loadV: number | null
  /** the lamps there; null likewise */
  lamp: StringState | null
  /** the same load as a rectifier with a capacitor; null where it runs down */
  rectifier: RectifierPoint | null
  judged: StartJudgement
}

export interface LampOption {
  shortA: number
  shortK: number
  idle: LoadBehindLamps
  rated: LoadBehindLamps
  /** most a rectifier with a capacitor can draw [W] */
  rectifierCeilingW: number
}

/**
 * What a load sees behind these lamps, idling and at its rating.
 *
 * @param mainsV        [V rms], more than 0 and at most the string's `maxV`
 * @param load          idle and rated power [W], 0 or more; least voltage [V rms] or null
 * @param assuredShare  part of the mains at which any unit made for it must run
 * @param dropV         of the two diodes that conduct [V]
 * @throws RangeError outside those ranges, NaN included
 * @source load line, {@link rectifierCurve}
 */
export function lampOption(
  string: LampString,
  mainsV: number,
  load: { idleW: number; ratedW: number; minimumV: number | null },
  assuredShare: number,
  dropV: number,
): LampOption {
  const curve = rectifierCurve(string, mainsV, dropV)
  const behind = (powerW: number): LoadBehindLamps => {
    if (powerW === 0) {
      const starts = load.minimumV === null || load.minimumV <= mainsV
      return {
        loadV: mainsV,
        lamp: stringAt(string, 0),
        rectifier: null,
        judged: starts ? { starts: true, reason: 'holds' } : { starts: false, reason: 'below-minimum' },
      }
    }
    const point = operatingPoint(string, mainsV, { kind: 'constant-power', powerW })
    const runs = point.state === 'runs'
    const rectifier = rectifierLoad(curve, powerW).point ?? null
    const judged = judgeStart({
      mainsV,
      loadV: runs ? point.loadV : undefined,
      rectifierLoadV: rectifier ? (rectifier.busV + dropV) / Math.SQRT2 : undefined,
      minimumV: load.minimumV,
      assuredShare,
    })
    return { loadV: runs ? point.loadV : null, lamp: runs ? point.lamp : null, rectifier, judged }
  }
  const shorted = stringAt(string, mainsV)
  return {
    shortA: shorted.currentA,
    shortK: shorted.filamentK,
    idle: behind(load.idleW),
    rated: behind(load.ratedW),
    rectifierCeilingW: Math.max(...curve.map((point) => point.loadW)),
  }
}
