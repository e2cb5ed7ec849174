import { frozen } from './frozen.js'
import type { HazardLanguage } from './hazardWords.js'
import type { PlateLanguage } from './plateWords.js'
import { fromMemory, type Source } from './source.js'
import { table } from './table.js'

/** ISO 639-1. */
export type StopLanguage = Exclude<PlateLanguage, 'any'> | HazardLanguage

/** Words of someone at the bench that say a fault is there, by what they tell of. */
interface StopWords {
  readonly about: 'burning' | 'arcing' | 'bursting' | 'leaking' | 'heat' | 'shock' | 'tripping'
  readonly language: StopLanguage
  /** small letters without accents; `*` stands for any ending; Japanese, written without spaces, is looked for anywhere */
  readonly words: readonly string[]
  readonly source: Source
}

const everyday = fromMemory('Everyday words', 'what people write down of a smell, a sound or a look inside')

const row = (language: StopWords['language'], about: StopWords['about'], words: string): StopWords =>
  frozen({ about, language, words: frozen(words.split('; ')), source: everyday })

/** What is a stop wherever it is written down as seen, heard or smelt, unless it is denied. */
export const stopWords: readonly StopWords[] = frozen([
  row(
    'en',
    'burning',
    'smok*; smoul*; smolder*; burn; burns; burning; burned; burnt; scorch*; singed; charred; char; fire; on fire; flame; flames; acrid; fishy; smell of fish; smells of fish; melting; melted; ozone',
  ),
  row(
    'en',
    'arcing',
    'arc; arcs; arcing; arced; spark; sparks; sparking; sparked; crackl*; sizzl*; hissing; flash inside; blue flash; corona',
  ),
  row('en', 'bursting', 'burst; bursting; bulg*; swollen; exploded; explosion; vented; bang; popped; cracked; blown'),
  row(
    'en',
    'leaking',
    'leak; leaks; leaked; leaking; leaky; crust; crusted; corroded; corrosion; electrolyte; green fur; white powder; acid',
  ),
  row(
    'en',
    'heat',
    'too hot; very hot; red hot; hot to the touch; hot to touch; gets hot; got hot; getting hot; runs hot; burning hot; overheat*; glowing red; stays bright; stayed bright; still bright',
  ),
  row(
    'en',
    'shock',
    'shock; shocks; shocked; shocking; electrocut*; tingl*; zap; zaps; zapped; zapping; jolt; jolted; prickl*; pins and needles; bit me; bites; stung; feels live; case is live; chassis is live; live case; live chassis',
  ),
  row('en', 'tripping', 'tripped; trips; breaker went; fuse blew; blew'),
  row(
    'de',
    'burning',
    'rauch; raucht; rauchte; geraucht; qualm*; brand; brennt; brannte; verbrannt*; verschmort*; schmor*; geschmort; versengt; angebrannt; feuer; flamme; flammen; brandgeruch; fischig; nach fisch; geschmolzen; ozon; verkohlt*',
  ),
  row('de', 'arcing', 'funke*; lichtbogen; knister*; prassel*; zischt; zischen; uberschlag'),
  row('de', 'bursting', 'geplatzt; platzt; gewolbt; aufgeblaht; explodiert; knall; geknallt; gerissen; durchgebrannt'),
  row('de', 'leaking', 'ausgelaufen*; undicht; lauft aus; kruste; korrodiert*; korrosion; grunspan; saure'),
  row('de', 'heat', 'zu heiß; zu heiss; sehr heiß; sehr heiss; uberhitzt; bleibt hell; blieb hell; immer noch hell'),
  row('de', 'shock', 'schlag bekommen; stromschlag; kribbelt; kribbeln; elektrisiert'),
  row('de', 'tripping', 'ausgelost; rausgeflogen; herausgeflogen; sicherung geflogen; sicherung raus'),
  row(
    'fr',
    'burning',
    'fume; fumee; brule; brulee; brulait; roussi; feu; flamme; flammes; carbonise*; odeur de poisson; fondu; ozone',
  ),
  row('fr', 'arcing', 'arc; etincelle; etincelles; crepite*; gresille*; siffle'),
  row('fr', 'bursting', 'eclate; gonfle; bombe; explose; explosion; detonation; fele; fissure; claque'),
  row('fr', 'leaking', 'fuite; fuit; coule; corrode*; corrosion; croute; acide'),
  row('fr', 'heat', 'trop chaud; tres chaud; brulant; reste allumee; reste vive'),
  row('fr', 'shock', 'decharge electrique; picote*; chataigne'),
  row('fr', 'tripping', 'disjoncte; a saute'),
  row(
    'es',
    'burning',
    'humo; humea; quemado; quemada; quema; chamuscado; fuego; llama; llamas; huele a pescado; derretido; ozono',
  ),
  row('es', 'arcing', 'arco; chispa; chispas; chisporrote*; crepita*'),
  row('es', 'bursting', 'reventado; reventada; hinchado; hinchada; exploto; explosion; agrietado; fundido'),
  row('es', 'leaking', 'fuga; sulfatado; sulfatada; corroido; corrosion; costra; acido; derramado'),
  row('es', 'heat', 'demasiado caliente; muy caliente; sigue brillante'),
  row('es', 'shock', 'calambre; hormigueo; descarga electrica'),
  row('es', 'tripping', 'salto el diferencial; salto el automatico'),
  row('it', 'burning', 'fumo; fuma; bruciato; bruciata; brucia; fuoco; fiamma; fiamme; odore di pesce; fuso; ozono'),
  row('it', 'arcing', 'arco; scintilla; scintille; crepita*; sfrigola*'),
  row('it', 'bursting', 'scoppiato; scoppiata; gonfio; gonfia; esploso; botto; incrinato; saltato'),
  row('it', 'leaking', 'perdita; perde; colato; corroso; corrosione; crosta; acido'),
  row('it', 'heat', 'troppo caldo; molto caldo; rovente'),
  row('it', 'shock', 'scossa; formicolio'),
  row('it', 'tripping', 'scattato; salvavita'),
  row(
    'nl',
    'burning',
    'rook; rookt; rookte; brandt; verbrand*; brandlucht; schroei*; geschroeid; vuur; vlam; vlammen; vislucht; gesmolten; ozon',
  ),
  row('nl', 'arcing', 'vonk; vonken; vonkt; vlamboog; knetter*; sist'),
  row('nl', 'bursting', 'gebarsten; gesprongen; opgezwollen; bol; ontploft; knal; doorgebrand'),
  row('nl', 'leaking', 'lek; lekt; gelekt; uitgelopen; korst; gecorrodeerd; corrosie; zuur'),
  row('nl', 'heat', 'te heet; heel heet; gloeiend heet; blijft fel'),
  row('nl', 'shock', 'schok; tintelt; tinteling'),
  row('nl', 'tripping', 'uitgeslagen; stop gesprongen'),
  row(
    'ru',
    'burning',
    'дым*; задым*; гарь; гарью; гари; паленым; паленой; палит; горелым; горелой; сгорел*; подгорел*; пригорел*; возгор*; воспламен*; обугл*; огонь; пламя; оплав*; расплав*; плавится; озон*',
  ),
  row('ru', 'arcing', 'искр*; дуга; треск*; трещит; потрескив*; шипит; шипение; зашипел*'),
  row('ru', 'bursting', 'взорвал*; взрыв*; лопнул*; вздул*; вздут*; хлопок; хлопнул*; бахнул*; треснул*'),
  row('ru', 'leaking', 'потек*; течет; течь; протек*; вытек*; коррози*; окислен*; окислил*; электролит*; кислот*'),
  row(
    'ru',
    'heat',
    'слишком горяч*; очень горяч*; сильно греется; горяч* на ощупь; перегрев*; перегрел*; раскал*; обжига*; горит ярко',
  ),
  row(
    'ru',
    'shock',
    'ударил* током; удар* током; током ударил*; бьет током; бьется током; током бьет; ток бьет; дернул* током; щипл*; щипет; пощип*; покалыв*',
  ),
  row('ru', 'tripping', 'выбил*; вышибл*; сработал* узо; сработал* автомат; узо сработал*; автомат сработал*'),
  row('ja', 'burning', '煙; けむり; 焦げ; こげ; 焼け; 燃え; 発火; 炎; 火が; 異臭; 溶け; オゾン'),
  row('ja', 'arcing', '火花; スパーク; アーク; 放電; バチ; パチ; ジジ'),
  row('ja', 'bursting', '破裂; 爆発; 膨ら; 膨張; 亀裂; ひび割れ'),
  row('ja', 'leaking', '液漏れ; 漏液; 腐食; 緑青; 電解液'),
  row('ja', 'heat', '熱い; 熱く; 高温; 過熱; 発熱; 明るいまま'),
  row('ja', 'shock', '感電; ビリビリ; びりびり; ビリッ; しびれ; 痺れ'),
  row('ja', 'tripping', 'ブレーカーが落; ブレーカが落; 遮断; ヒューズが切; ヒューズが飛'),
])

/** Words that deny what follows them in a clause; `*` stands for any ending. */
export const denials = frozen({
  words: frozen(
    'no; not; none; never; nothing; without; neither; nor; nil; kein*; nicht; nichts; ohne; nie; weder; pas; sans; aucun*; rien; ni; jamais; sin; nada; ningun*; nunca; non; senza; nessun*; niente; ne; mai; geen; niet; niets; zonder; nooit; noch; не; нет; без; ни; ничего'.split(
      '; ',
    ),
  ),
  /** carry a denial on to the next word */
  joiners: frozen('or; nor; oder; noch; ou; ni; o; of; или; ни'.split('; ')),
  /** behind another denial take it back: "not without smoke" */
  without: frozen('without; ohne; sans; sin; senza; zonder; без'.split('; ')),
  /** behind a word of a language without spaces, and perhaps what is said to happen to it: none of it */
  behind: frozen(
    ['は', 'も', 'が', ''].flatMap((particle) =>
      [
        'なし',
        '無し',
        'ない',
        '無い',
        'なかった',
        'ありません',
        '出ない',
        '出ていない',
        '出ていません',
        '出ません',
        '出なかった',
        'しない',
        'していない',
        'しません',
        'しなかった',
        '見えない',
        '感じない',
      ].map((none) => `${particle}${none}`),
    ),
  ),
  /** end a clause, beside commas and full stops */
  turns: frozen(
    'but; yet; then; except; though; however; only; just; aber; doch; dann; nur; sondern; mais; puis; seulement; pero; luego; sino; ma; poi; solo; maar; dan; alleen; но; а; однако; зато; только; потом'.split(
      '; ',
    ),
  ),
  source: everyday,
})

export const stopWordsTable = table<StopWords>({
  name: 'stop-words',
  title: 'Words that are a stop',
  intro:
    'What is written down of a smell, a sound or a look inside stops a job where one of these words stands in it undenied: “no smoke” is none, “smoke” is one. They are from memory; a word that is missing is no sign that nothing is wrong.',
  rows: stopWords,
  id: ({ language, about }) => [language, about],
  language: ({ language }) => language,
  columns: [
    { key: 'words', title: 'Words', between: '; ', filled: true },
    { key: 'language', title: 'Language', as: 'language' },
    { key: 'about', title: 'Tells of' },
  ],
})
