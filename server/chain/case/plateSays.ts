import { plateLimits } from '../../tables/plateLimits.js'
import { usbFixedVoltages } from '../../tables/usbPower.js'
import { isWide } from './plateWindow.js'
import type { VoltageWindow } from './request.js'
import type { Rail } from './situation.js'

/** What a supply's plate says in words about what is inside it; null where it says nothing, or two things. */
export interface PlateSays {
  technology: 'switch-mode' | 'transformer' | null
  regulated: boolean | null
}

const unregulatedWords =
  /\bunreg(?:ulated)?\b|unstabili[sz]|\bungeregelt|(?:non|not|nicht|no|ikke|inte|niet)[- ]?(?:r[ée]gul|stabili[sz]|geregel|gestab)|ongeregeld|onstabil|nestabili|非安定/iu
const everyUnregulatedWord = new RegExp(unregulatedWords, 'giu')
/** What gives a current rather than a voltage: nothing holds the voltage while the machine draws little. */
const currentSourceWords =
  /\bbatter(?:y|ies)\s+charger|\bfor\s+charging\b|batterie-?lade|ladeger[äa]t\s+f[üu]r|chargeur\s+(?:de\s+|pour\s+)?(?:batterie|accu)|cargador\s+de\s+bater|\bconstant[- ]current|konstantstrom|\bLED\s+driver/iu
const regulatedWords =
  /(?<![\p{L}-])(?:regulated|stabili[sz]ed|stabilisiert|geregelt|r[ée]gul[ée]e?|stabilis[ée]e?|regulad[ao]|stabilizzat[ao]|gestabiliseerd|stabilizovan\p{L}*)(?!\p{L})|安定化/iu
const switchModeWords =
  /\bswitch(?:ed|ing)?[- ]?mode\b|\bswitching\b|\bSMPS\b|schaltnetzteil|[àa] d[ée]coupage|conmutad|chavead|スイッチング|开关电源|импульсн/iu
const transformerWords =
  /transformer\b|\btrafo\b|transformator|transformateur|transformador|trasformatore|変圧器|トランス/iu
const electronicTransformer =
  /electronic\s+transformer|elektronische[rs]?\s+(?:trafo|transformator)|transformateur\s+[ée]lectronique|trasformatore\s+elettronico|transformador\s+electr[óo]nico|电子变压器|電子變壓器|電子トランス/iu

/**
 * Words on a supply's plate that tell how it works. Only these words count; figures are the plate reader's.
 * A unit that takes a wide range without a selector is no plain transformer, whatever it is called.
 */
export function plateSays(label: string | null | undefined, windows: readonly VoltageWindow[]): PlateSays {
  if (!label) return { technology: null, regulated: null }
  const text = label.slice(0, plateLimits.mostCharacters.value)
  const unregulated = unregulatedWords.test(text) || currentSourceWords.test(text)
  const regulated = regulatedWords.test(text.replace(everyUnregulatedWord, ' '))
  const switchMode = switchModeWords.test(text)
  const transformer = transformerWords.test(text) && !electronicTransformer.test(text) && !windows.some(isWide)
  return {
    technology: switchMode === transformer ? null : switchMode ? 'switch-mode' : 'transformer',
    regulated: unregulated === regulated ? null : regulated,
  }
}

/** Whether a plate calls its unit an electronic transformer: a chopper for low-voltage lamps, tens of kilohertz with gaps. */
export const saysElectronicTransformer = (label: string | null | undefined): boolean =>
  label != null && electronicTransformer.test(label.slice(0, plateLimits.mostCharacters.value))

const classZeroWords = /(?:\bclass|classe|clase|klasse|クラス|класс)\s?0(?!\d|[.,]\d)/iu

/** Whether a plate names class 0 or 0I: basic insulation, and an earth that the flex and the inlet do not carry. */
export const saysClassZero = (label: string | null | undefined): boolean =>
  label != null && classZeroWords.test(label.slice(0, plateLimits.mostCharacters.value))

const printed = (rail: Rail): string => String(Math.abs(rail.voltageV)).replace('.', '[.,]')

/**
 * Whether outputs that were read from a plate may be given one at a time rather than side by side: the positions of a switch,
 * "9/12 V", "9 V or 12 V", "5 V 3 A/9 V 2 A", with no sign before the second; or the fixed voltages of a USB source, which gives 5 V
 * until it is asked for another. Nobody can tell "5 V/12 V" of a switch from that of two outputs.
 */
export function mayBePositions(label: string | null | undefined, rails: readonly Rail[]): boolean {
  if (areUsbVoltages(rails)) return true
  const text = label?.slice(0, plateLimits.mostCharacters.value) ?? ''
  // a switch of the input stands beside mains voltages
  const outputs = text.slice(Math.max(0, text.search(outputWord)))
  if (
    areSettings(rails) ||
    (rails.length > 1 && rails.every(({ voltageV }) => voltageV > 0) && switchWords.test(outputs))
  )
    return true
  return rails.some((rail, index) => {
    const next = rails[index + 1]
    if (!next || rail.voltageV <= 0 || next.voltageV <= 0) return false
    const current = '(?:[^\\d+\\n/]{0,6}\\d+(?:[.,]\\d+)?\\s*m?A)?'
    const between = `(?:\\s*V)?${current}[^\\d+\\n/]{0,6}(?:/|\\bor\\b|\\boder\\b|\\bou\\b)\\s*`
    return new RegExp(`(?<![\\d.,+])${printed(rail)}${between}${printed(next)}(?![\\d]|[.,]\\d)`, 'iu').test(text)
  })
}

const outputWord =
  /output|ausgang|sortie|salida|uscita|sa[íi]da|uitgang|utg[åa]ng|udgang|utgang|l[äa]ht[öo]|wyj[śs]cie|v[ýy]stup|kimenet|выход|出力|输出|輸出|출력|o\/p/iu

/** Three voltages or more of a slide switch: rising multiples of 1.5 V from 6 V or less, all with the same current. */
const areSettings = (rails: readonly Rail[]): boolean =>
  rails.length > 2 &&
  (rails[0]?.voltageV ?? 0) <= 6 &&
  rails.every(
    ({ voltageV, currentA }, index) =>
      voltageV > (rails[index - 1]?.voltageV ?? 0) && voltageV % 1.5 === 0 && currentA === rails[0]?.currentA,
  )

/** The first fixed voltage of USB, 5 V, with others of them, one at least that every such source has (12 V is optional), and no other. */
function areUsbVoltages(rails: readonly Rail[]): boolean {
  const offered = rails.map(({ voltageV, voltageMaxV }) =>
    usbFixedVoltages.find((fixed) => voltageMaxV === null && fixed.voltageV === voltageV),
  )
  const [first] = usbFixedVoltages
  return (
    first !== undefined &&
    offered.every((fixed) => fixed !== undefined) &&
    offered.includes(first) &&
    offered.some((fixed) => fixed !== first && fixed?.always)
  )
}

const eitherKind =
  /(?<!\p{L})(?:AC\s*(?:\/|&|\+|or|and|oder|und|ou|et|o|of|eller|tai|lub|nebo|vagy|или|または|或|또는)\s*DC|DC\s*(?:\/|&|or|oder|ou|o|of|eller|tai|lub|nebo|vagy|или|または|或|또는)\s*AC)(?!\p{L})|交直両用|交直流两用|交直流/iu

/** Whether a machine's plate says that it takes AC as well as DC. */
export const saysEitherKind = (label: string | null | undefined): boolean =>
  label != null && eitherKind.test(label.slice(0, plateLimits.mostCharacters.value))

const printedHertz = /(?<![\d.,])(\d{2})(?:\s*(?:Hz)?\s*[/-]\s*(\d{2}))?\s*(?:Hz|c\/s|cps|cycles?|Гц|ヘルツ|赫兹)/giu
/** Frequencies that a mains has [Hz]. */
const mainsHertz = { least: 45, most: 65 }

/** Frequencies of a mains that stand on a plate, whatever the voltage beside them [Hz]. */
export function hertzOn(label: string | null | undefined): number[] {
  const text = label?.slice(0, plateLimits.mostCharacters.value) ?? ''
  const found = [...text.matchAll(printedHertz)].flatMap(([, one, other]) => [one, other])
  return [...new Set(found.map(Number))].filter((hz) => hz >= mainsHertz.least && hz <= mainsHertz.most)
}

const setsItself =
  /auto[- ]?(?:select|rang|sens|switch|volt|adjust)|self[- ]?(?:select|adjust)|automatic(?:ally)?\s+(?:voltage|rang|switch|select)|automatische\s+(?:umschaltung|anpassung)|s[ée]lection\s+automatique|commutation\s+automatique|selecci[óo]n\s+autom[áa]tica|selezione\s+automatica|sele[çc][ãa]o\s+autom[áa]tica|bivolt\s+autom[áa]tico|автоматическ\p{L}*\s+(?:переключ|выбор)|自動切[替換]|自动(?:切换|转换|选择)|자동\s*(?:전환|선택)/iu

/** Whether a plate says that its unit finds the mains voltage itself, so that there is no selector to set. */
export const saysSetsItself = (label: string | null | undefined): boolean =>
  (label ?? '')
    .slice(0, plateLimits.mostCharacters.value)
    .split(/[\n.]/)
    .some((line) => setsItself.test(line) && !takenBack.test(line))

/** In one line with the words for it: it has none, it is switched off, or other models have it. */
const takenBack =
  /(?<!\p{L})(?:no|not|non|without|off|disabled|manual\p{L}*|only|models?|never|kein\p{L}*|nicht|ohne|aus|nur|sans|pas|sin|senza|sem|n[ãa]o|niet|geen|zonder|ikke|inte|utan|ei|nie|bez|ne|не|нет|без|nem|değil)(?!\p{L})|[非不无無]|なし|ない|없음|아님/iu

const switchWords =
  /(?<!\p{L})(?:select(?:able|or)?|slide\s+switch|switchable|multi[- ]?voltage|adjustable|variable|umschaltbar|einstellbar|w[äa]hlbar|schiebeschalter|s[ée]lectionnable|commutable|r[ée]glable|seleccionable|conmutable|ajustable|regulable|selezionabile|commutabile|regolabile|selecion[áa]vel|ajust[áa]vel|instelbaar|omschakelbaar|omkopplingsbar|st[äa]llbar|justerbar|valittava|s[äa]{1,2}dett[äa]v[äa]|prze[łl][ąa]czan\p{L}*|regulowan\p{L}*|p[řr]ep[íi]nateln\p{L}*|voliteln\p{L}*|v[áa]laszthat[óo]|переключаем\p{L}*|регулируем\p{L}*)(?!\p{L})|切替|切換|可変|可调|可調|可切换|전환|가변/iu
