import { frozen } from './frozen.js'
import type { PlateLanguage } from './plateWords.js'
import { fromMemory, type Source } from './source.js'
import { table } from './table.js'

/** What words of a plate tell of the thing itself, beside its figures. */
export type Saying =
  | 'regulated'
  | 'unregulated'
  | 'gives a current'
  | 'switch-mode'
  | 'transformer'
  | 'electronic transformer'
  | 'class 0'
  | 'double square'
  | 'three-phase'
  | 'turns with the mains'
  | 'either kind'
  | 'mains of either kind'
  | 'sets itself'
  | 'taken back'
  | 'selector'
  | 'any switch'
  | 'output'
  | 'switched output'
  | 'other voltages when asked'
  | 'link opened'
  | 'link bridged'

/** Wordings of one language, as patterns of regular expressions; case does not matter. */
export interface PlateSaying {
  readonly saying: Saying
  readonly language: PlateLanguage | 'any'
  readonly patterns: readonly string[]
  readonly source: Source
}

const memory = fromMemory('Rating plates', 'wording as it is remembered, not looked up')

const says = (saying: Saying, language: PlateSaying['language'], ...patterns: string[]): PlateSaying => ({
  saying,
  language,
  patterns,
  source: memory,
})

/** Patterns that may stand at no other letter. */
const whole = (saying: Saying, language: PlateSaying['language'], ...words: string[]): PlateSaying =>
  says(saying, language, ...words.map((word) => `(?<!\\p{L})(?:${word})(?!\\p{L})`))

/** The same, and not after a hyphen: "non-regulated" is not "regulated". */
const apart = (saying: Saying, language: PlateSaying['language'], ...words: string[]): PlateSaying =>
  says(saying, language, ...words.map((word) => `(?<![\\p{L}-])(?:${word})(?!\\p{L})`))

export const plateSayings: readonly PlateSaying[] = frozen([
  apart('regulated', 'en', 'regulated', 'stabili[sz]ed'),
  apart('regulated', 'de', 'stabilisiert', 'geregelt'),
  apart('regulated', 'fr', 'r[ée]gul[ée]e?', 'stabilis[ée]e?'),
  apart('regulated', 'es', 'regulad[ao]'),
  apart('regulated', 'it', 'stabilizzat[ao]'),
  apart('regulated', 'nl', 'gestabiliseerd'),
  apart('regulated', 'cs', 'stabilizovan\\p{L}*'),
  says('regulated', 'ja', '安定化'),

  says(
    'unregulated',
    'en',
    '\\bunreg(?:ulated)?\\b',
    'unstabili[sz]',
    '(?:non|not|no)[- ]?(?:regul|stabili[sz])',
    '(?:regulat|stabili[sz])(?:ed|ion)\\s*[:=]\\s*(?:no|none)\\b',
  ),
  says(
    'unregulated',
    'de',
    '\\bungeregelt',
    'nicht[- ]?(?:stabilis|geregel|regul)',
    '(?:stabilisiert|geregelt)\\s*[:=]\\s*nein\\b',
  ),
  says('unregulated', 'fr', 'non[- ]?(?:r[ée]gul|stabilis)'),
  says('unregulated', 'es', 'no[- ]?(?:regul|e?stabili)'),
  says('unregulated', 'it', 'non[- ]?(?:regol|stabiliz)'),
  says('unregulated', 'nl', 'ongeregeld', 'niet[- ]?(?:geregel|gestab)'),
  says('unregulated', 'da', 'ikke[- ]?(?:regul|stabilis)', 'onstabil'),
  says('unregulated', 'sv', 'inte[- ]?(?:regul|stabilis)'),
  says('unregulated', 'cs', 'nestabili'),
  says('unregulated', 'ja', '非安定'),

  says(
    'gives a current',
    'en',
    '\\bbatter(?:y|ies)\\s+charger',
    '\\bfor\\s+charging\\b',
    '\\bconstant[- ]current',
    '\\bLED\\s+driver',
  ),
  says('gives a current', 'de', 'batterie-?lade', 'ladeger[äa]t\\s+f[üu]r', 'konstantstrom'),
  says('gives a current', 'fr', 'chargeur\\s+(?:de\\s+|pour\\s+)?(?:batterie|accu)'),
  says('gives a current', 'es', 'cargador\\s+de\\s+bater'),

  says('switch-mode', 'en', '\\bswitch(?:ed|ing)?[- ]?mode\\b', '\\bswitching\\b', '\\bSMPS\\b'),
  says('switch-mode', 'de', 'schaltnetzteil'),
  says('switch-mode', 'fr', '[àa] d[ée]coupage'),
  says('switch-mode', 'es', 'conmutad'),
  says('switch-mode', 'pt', 'chavead'),
  says('switch-mode', 'ja', 'スイッチング'),
  says('switch-mode', 'zh', '开关电源'),
  says('switch-mode', 'ru', 'импульсн'),

  says('transformer', 'en', 'transformer\\b'),
  says('transformer', 'de', '\\btrafo\\b', 'transformator'),
  says('transformer', 'fr', 'transformateur'),
  says('transformer', 'es', 'transformador'),
  says('transformer', 'it', 'trasformatore'),
  says('transformer', 'ja', '変圧器', 'トランス'),

  says('electronic transformer', 'en', 'electronic\\s+transformer'),
  says('electronic transformer', 'de', 'elektronische[rs]?\\s+(?:trafo|transformator)'),
  says('electronic transformer', 'fr', 'transformateur\\s+[ée]lectronique'),
  says('electronic transformer', 'it', 'trasformatore\\s+elettronico'),
  says('electronic transformer', 'es', 'transformador\\s+electr[óo]nico'),
  says('electronic transformer', 'zh', '电子变压器', '電子變壓器'),
  says('electronic transformer', 'ja', '電子トランス'),

  says('class 0', 'en', '\\bclass\\s?0(?!\\d|[.,]\\d)'),
  says('class 0', 'de', '\\bklasse\\s?0(?!\\d|[.,]\\d)'),
  says('class 0', 'fr', '\\bclasse\\s?0(?!\\d|[.,]\\d)'),
  says('class 0', 'es', '\\bclase\\s?0(?!\\d|[.,]\\d)'),
  says('class 0', 'ja', 'クラス\\s?0(?!\\d|[.,]\\d)'),
  says('class 0', 'ru', 'класс\\s?0(?!\\d|[.,]\\d)'),

  says('double square', 'any', '[⧈回▣]'),

  says('three-phase', 'any', '(?:^|[^\\d.,])3\\s?(?:N\\s?)?(?:[~∼](?!\\s?\\d{1,2}(?:\\D|$))|PH\\b|[- ]?phase)'),
  says('three-phase', 'en', 'three[- ]phase'),
  says('three-phase', 'de', 'drehstrom'),
  says('three-phase', 'fr', 'triphas'),
  says('three-phase', 'es', 'trif[aá]s'),

  says('turns with the mains', 'en', 'motor', 'synchron', 'turntable', 'clock', 'gramophone', 'phono'),
  says('turns with the mains', 'de', 'uhr\\b', 'plattenspieler'),
  says('turns with the mains', 'fr', 'horloge'),

  whole(
    'either kind',
    'any',
    'AC\\s*(?:\\/|&|\\+|or|and|oder|und|ou|et|o|of|eller|tai|lub|nebo|vagy|или|または|或|또는)\\s*DC',
    'DC\\s*(?:\\/|&|or|oder|ou|o|of|eller|tai|lub|nebo|vagy|или|または|或|또는)\\s*AC',
  ),
  says('either kind', 'ja', '交直両用'),
  says('either kind', 'zh', '交直流两用', '交直流'),

  says(
    'mains of either kind',
    'any',
    '\\d{3}\\s*V?\\s*(?:≂|AC\\s*[-/+&]\\s*DC|DC\\s*[-/+&]\\s*AC|~\\s*[/+&]?\\s*[=⎓]|[=⎓]\\s*[/+&]?\\s*~)',
    '(?:≂|AC\\s*[-/+&]\\s*DC|DC\\s*[-/+&]\\s*AC|~\\s*[/+&]?\\s*[=⎓])\\s*\\d{3}\\s*V?',
  ),
  whole(
    'mains of either kind',
    'de',
    '(?:GW|GS)\\s*[-/+]\\s*WS',
    'WS\\s*[-/+]\\s*(?:GW|GS)',
    'Gleich- (?:und|oder) Wechselstrom',
  ),
  whole('mains of either kind', 'fr', 'courants? continus? (?:et|ou) alternatifs?', 'alternatif (?:et|ou) continu'),

  says(
    'sets itself',
    'en',
    'auto[- ]?(?:select|rang|sens|switch|volt|adjust)',
    'self[- ]?(?:select|adjust)',
    'automatic(?:ally)?\\s+(?:voltage|rang|switch|select)',
  ),
  says('sets itself', 'de', 'automatische\\s+(?:umschaltung|anpassung)'),
  says('sets itself', 'fr', 's[ée]lection\\s+automatique', 'commutation\\s+automatique'),
  says('sets itself', 'es', 'selecci[óo]n\\s+autom[áa]tica'),
  says('sets itself', 'it', 'selezione\\s+automatica'),
  says('sets itself', 'pt', 'sele[çc][ãa]o\\s+autom[áa]tica', 'bivolt\\s+autom[áa]tico'),
  says('sets itself', 'ru', 'автоматическ\\p{L}*\\s+(?:переключ|выбор)'),
  says('sets itself', 'ja', '自動切[替換]'),
  says('sets itself', 'zh', '自动(?:切换|转换|选择)'),
  says('sets itself', 'ko', '자동\\s*(?:전환|선택)'),

  whole(
    'taken back',
    'en',
    'no',
    'not',
    'non',
    'without',
    'off',
    'disabled',
    'manual\\p{L}*',
    'only',
    'models?',
    'never',
  ),
  whole('taken back', 'de', 'kein\\p{L}*', 'nicht', 'ohne', 'aus', 'nur'),
  whole('taken back', 'fr', 'sans', 'pas'),
  whole('taken back', 'es', 'sin'),
  whole('taken back', 'it', 'senza'),
  whole('taken back', 'pt', 'sem', 'n[ãa]o'),
  whole('taken back', 'nl', 'niet', 'geen', 'zonder'),
  whole('taken back', 'da', 'ikke'),
  whole('taken back', 'sv', 'inte', 'utan'),
  whole('taken back', 'fi', 'ei'),
  whole('taken back', 'pl', 'nie', 'bez'),
  whole('taken back', 'cs', 'ne'),
  whole('taken back', 'hu', 'nem'),
  whole('taken back', 'ru', 'не', 'нет', 'без'),
  whole('taken back', 'any', 'değil'),
  says('taken back', 'ja', 'なし', 'ない'),
  says('taken back', 'zh', '[非不无無]'),
  says('taken back', 'ko', '없음', '아님'),

  says('output', 'en', 'output', 'o\\/p'),
  says('output', 'de', 'ausgang'),
  says('output', 'fr', 'sortie'),
  says('output', 'es', 'salida'),
  says('output', 'it', 'uscita'),
  says('output', 'pt', 'sa[íi]da'),
  says('output', 'nl', 'uitgang'),
  says('output', 'sv', 'utg[åa]ng'),
  says('output', 'da', 'udgang', 'utgang'),
  says('output', 'fi', 'l[äa]ht[öo]'),
  says('output', 'pl', 'wyj[śs]cie'),
  says('output', 'cs', 'v[ýy]stup'),
  says('output', 'hu', 'kimenet'),
  says('output', 'ru', 'выход'),
  says('output', 'ja', '出力'),
  says('output', 'zh', '输出', '輸出'),
  says('output', 'ko', '출력'),

  whole(
    'switched output',
    'en',
    'select(?:able|or)?',
    'slide\\s+switch',
    'switchable',
    'multi[- ]?voltage',
    'adjustable',
    'variable',
  ),
  whole('switched output', 'de', 'umschaltbar', 'einstellbar', 'w[äa]hlbar', 'schiebeschalter'),
  whole('switched output', 'fr', 's[ée]lectionnable', 'commutable', 'r[ée]glable'),
  whole('switched output', 'es', 'seleccionable', 'conmutable', 'ajustable', 'regulable'),
  whole('switched output', 'it', 'selezionabile', 'commutabile', 'regolabile'),
  whole('switched output', 'pt', 'selecion[áa]vel', 'ajust[áa]vel'),
  whole('switched output', 'nl', 'instelbaar', 'omschakelbaar'),
  whole('switched output', 'sv', 'omkopplingsbar', 'st[äa]llbar', 'justerbar'),
  whole('switched output', 'fi', 'valittava', 's[äa]{1,2}dett[äa]v[äa]'),
  whole('switched output', 'pl', 'prze[łl][ąa]czan\\p{L}*', 'regulowan\\p{L}*'),
  whole('switched output', 'cs', 'p[řr]ep[íi]nateln\\p{L}*', 'voliteln\\p{L}*'),
  whole('switched output', 'hu', 'v[áa]laszthat[óo]'),
  whole('switched output', 'ru', 'переключаем\\p{L}*', 'регулируем\\p{L}*'),
  says('switched output', 'ja', '切替', '切換', '可変'),
  says('switched output', 'zh', '可调', '可調', '可切换'),
  says('switched output', 'ko', '전환', '가변'),

  says(
    'other voltages when asked',
    'any',
    '\\bUSB[- ]?(?:TYPE[- ]?)?C\\b',
    '\\bTYPE[- ]C\\b',
    '\\bUSB[- ]?PD\\b',
    '\\bPOWER DELIVERY\\b',
    '\\bPD\\s?3\\b',
    '\\bQUICK CHARGE\\b',
    '\\bQC\\s?[2-5](?:\\.\\d)?\\b',
  ),

  whole(
    'selector',
    'en',
    '(?:voltage|volts|mains|line)\\s*(?:voltage\\s*)?(?:selector|selection|change-?over|setting)(?:\\s*switch)?',
    '(?:voltage|ac)\\s+(?:select|switch)',
    '(?:set|check|adjust)\\s+(?:the\\s+)?selector',
    'selector(?=\\s+(?:is\\s+)?(?:set|switch|positions?|to|at|on)(?!\\p{L}))(?:\\s+switch)?',
  ),
  whole('selector', 'de', 'spannungs(?:w[äa]hl|umschalt)\\p{L}*', 'netz(?:spannungs)?umschalt\\p{L}*'),
  whole('selector', 'fr', '(?:s[ée]lecteur|commutateur|inverseur)\\s+de\\s+(?:tension|voltage)'),
  whole('selector', 'es', '(?:selector|conmutador)\\s+de\\s+(?:tensi[óo]n|voltaje|red)'),
  whole('selector', 'it', 'cambia\\s?tensione', '(?:selettore|commutatore)\\s+(?:di\\s+|della\\s+)?tensione'),
  whole('selector', 'pt', '(?:selec?tor|comutador)\\s+de\\s+(?:tens[ãa]o|voltagem)', 'chave\\s+sele[ct]+ora'),
  whole('selector', 'nl', 'spannings(?:kiez|keuze|schakel|omschakel)\\p{L}*'),
  whole('selector', 'sv', 'sp[äa]nnings(?:omkopplare|v[äa]ljare)\\p{L}*'),
  whole('selector', 'da', 'sp[æa]e?ndings(?:v[æa]e?lger|omskifter)\\p{L}*'),
  whole('selector', 'no', 'spennings(?:velger|vender|omkobler)\\p{L}*'),
  whole('selector', 'fi', 'j[äa]nnitte(?:en)?\\s?(?:valits|vaihtokytk)\\p{L}*', 'j[äa]nnitevalits\\p{L}*'),
  whole('selector', 'pl', '(?:prze[łl][ąa]cznik|wyb[óo]r)\\s+napi[ęe]cia'),
  whole('selector', 'cs', '(?:p[řr]ep[íi]na[čc]|voli[čc]|volba)\\s+nap[ěeäa]t[íi]'),
  whole('selector', 'hu', 'fesz[üu]lts[ée]g(?:v[áa]laszt|v[áa]lt|kapcsol)\\p{L}*'),
  whole('selector', 'ru', 'переключ\\p{L}*\\s+(?:сетевого\\s+)?(?:напряжени\\p{L}*|сети)', 'выбор\\s+напряжения'),
  whole('selector', 'uk', 'перемикач\\s+(?:мережі|напруги)'),
  whole('selector', 'bg', 'превключвател\\s+(?:на|за)\\s+напрежение\\p{L}*'),
  whole('selector', 'el', 'επιλογ\\p{L}*\\s+τάσ\\p{L}*'),
  whole('selector', 'hr', '(?:preklopnik|birač)\\s+napona'),
  whole('selector', 'ro', '(?:selector|comutator)\\s+(?:de\\s+)?tensiune'),
  whole('selector', 'tr', '(?:gerilim|voltaj)\\s+(?:seçi|anahtar)\\p{L}*'),
  says('selector', 'ja', '電圧(?:切[替換]|選択|設定)'),
  says('selector', 'zh', '[电電][压壓](?:转换|轉換|选择|選擇|切[换換])'),
  says('selector', 'ko', '전압\\s*(?:선택|전환|절환)'),
  whole('any switch', 'en', 'select(?:or)?', '(?:slide\\s+)?switch(?:ed|able)?', 'change-?over', 'set(?:ting)?'),
  whole('any switch', 'de', '(?:um|wahl|schiebe)?schalter', 'umschalt\\p{L}*', 'w[äa]hler'),
  whole('any switch', 'fr', 's[ée]lecteur', 'commutateur', 'inverseur', 'interrupteur'),
  whole('any switch', 'es', 'selector', 'conmutador', 'interruptor'),
  whole('any switch', 'it', 'selettore', 'commutatore', 'deviatore', 'interruttore'),
  whole('any switch', 'pt', 'selec?tor', 'comutador', 'chave', 'interruptor'),
  whole('any switch', 'nl', '(?:keuze|om)?schakelaar', 'omschakelbaar'),
  whole('any switch', 'sv', 'omkopplare', 'v[äa]ljare', 'str[öo]mst[äa]llare'),
  whole('any switch', 'da', 'omskifter', 'v[æa]e?lger', 'afbryder'),
  whole('any switch', 'no', 'omkobler', 'velger', 'bryter', 'vender'),
  whole('any switch', 'fi', 'valitsin', '(?:vaihto)?kytkin'),
  whole('any switch', 'pl', 'prze[łl][ąa]cz\\p{L}*'),
  whole('any switch', 'cs', 'p[řr]ep[íi]na[čc]\\p{L}*'),
  whole('any switch', 'hu', '[áa]?t?kapcsol\\p{L}*'),
  whole('any switch', 'ru', 'переключ\\p{L}*'),
  whole('any switch', 'uk', 'перемик\\p{L}*'),
  whole('any switch', 'bg', 'превключ\\p{L}*'),
  whole('any switch', 'el', 'διακόπτης', 'επιλογέας'),
  whole('any switch', 'hr', 'preklopnik', 'birač', 'prekidač'),
  whole('any switch', 'ro', 'comutator', 'întrerupător'),
  whole('any switch', 'tr', 'anahtar\\p{L}*', 'seçici', 'şalter'),
  whole('any switch', 'he', 'מתג', 'בורר'),
  whole('any switch', 'ar', 'مفتاح', 'محدد'),
  says('any switch', 'ja', '切[替換]', 'スイッチ'),
  says('any switch', 'zh', '转换', '轉換', '选择', '選擇', '切[换換]', '开关', '開關'),
  says('any switch', 'ko', '전환', '선택', '절환', '스위치'),
  says(
    'link opened',
    'en',
    '\\bblown\\b',
    '\\bburnt?\\b',
    '\\bburned\\b',
    '\\bopen(?:ed)?\\b',
    '\\bbroken\\b',
    '\\bmelted\\b',
  ),
  says('link opened', 'de', 'durchgebrannt', '\\bdefekt'),
  says('link opened', 'fr', 'grill[ée](?!\\p{L})'),
  says('link opened', 'es', 'fundido', 'saltad[oa]'),

  says(
    'link bridged',
    'en',
    '\\bfoil\\b',
    '\\bbridged?\\b',
    '\\bjumper',
    '\\bnail\\b',
    '\\bpaper\\s?-?clip',
    '\\bsoldered\\s+over',
    '\\b(?:copper|fuse|bare)\\s+wire',
    '\\bwire\\s+(?:around|across|instead)',
  ),
  says('link bridged', 'de', 'überbrückt', 'alufolie'),
  says('link bridged', 'fr', 'pont[ée](?!\\p{L})'),
  says('link bridged', 'es', 'puentead'),
])

export const plateSayingsTable = table<PlateSaying>({
  name: 'plate-sayings',
  title: 'Words that tell how a thing works',
  intro:
    'Beside its figures a plate may say that its output is regulated, that it takes AC as well as DC, that it finds the mains voltage itself, or that it has no earth. Each wording is a pattern; case does not matter.',
  rows: plateSayings,
  id: ({ saying, language }) => [saying, language],
  columns: [
    { key: 'saying', title: 'Says' },
    { key: 'language', title: 'Language', as: 'language' },
    { key: 'patterns', title: 'Wordings, as patterns', between: '; ', filled: true, names: true },
  ],
})
