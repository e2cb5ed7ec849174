import { frozen } from './frozen.js'
import type { HazardLanguage } from './hazardWords.js'
import { commonPractice, type Source } from './source.js'

/** Parts of the sentence that an output is not isolated, by language: each of the first before each of the others. */
interface Denied {
  readonly language: HazardLanguage
  /** words that deny, before an adjective */
  readonly not: readonly string[]
  /** what may stand between, or before the denial */
  readonly how: readonly string[]
  readonly isolated: readonly string[]
  /** "NO", "WITHOUT", before a noun, or behind it */
  readonly no?: readonly string[]
  readonly isolation?: readonly string[]
  /** the denial behind: "ISOLATED: NO" */
  readonly after: readonly string[]
  /** whole phrases */
  readonly joined: readonly string[]
}

const list = (text: string): string[] => text.split('; ')

const languages: readonly Denied[] = [
  {
    language: 'en',
    not: list('NOT; NON; UN; NEVER; ISNT'),
    how: list('GALVANICALLY; ELECTRICALLY; MAINS; LINE; SAFELY'),
    isolated: list('ISOLATED; INSULATED; SEPARATED; ISOLATING'),
    no: list('NO; WITHOUT; LACKS; ZERO'),
    isolation: list('ISOLATION; INSULATION; SEPARATION; ISOLATING TRANSFORMER; MAINS ISOLATION'),
    after: list('NO; NONE; NOT; FALSE'),
    joined: list(
      'NON ISO; GALVANICALLY CONNECTED; GALVANICALLY COUPLED; MAINS POTENTIAL; LINE POTENTIAL; MAINS REFERENCED; LINE REFERENCED; CONNECTED DIRECTLY TO MAINS; DIRECTLY CONNECTED TO MAINS; DIRECTLY CONNECTED TO THE MAINS; DIRECT MAINS CONNECTION; SHOCK HAZARD OUTPUT; OUTPUT SHOCK HAZARD; SHOCK HAZARD AT OUTPUT; SHOCK HAZARD ON OUTPUT; OUTPUT LIVE; OUTPUTS LIVE; OUTPUT MAY BE LIVE; HOT OUTPUT; OUTPUT HOT; LIVE SECONDARY; LIVE NEUTRAL ON OUTPUT; MAINS ON OUTPUT; MAINS VOLTAGE ON OUTPUT; OUTPUT TERMINALS LIVE; LIVE OUTPUT TERMINALS; ONE POLE OF MAINS ON CHASSIS; CHASSIS CONNECTED TO ONE SIDE OF THE MAINS; USE ISOLATION TRANSFORMER; USE ISOLATING TRANSFORMER; USE AN ISOLATION TRANSFORMER; USE AN ISOLATING TRANSFORMER; ONLY WITH ISOLATING TRANSFORMER; ONLY WITH ISOLATION TRANSFORMER; ISOLATING TRANSFORMER REQUIRED; ISOLATION TRANSFORMER REQUIRED; REQUIRES ISOLATION TRANSFORMER; REQUIRES ISOLATING TRANSFORMER',
    ),
  },
  {
    language: 'de',
    not: list('NICHT; UN; NIE; NICHT SICHER'),
    how: list('GALVANISCH; ELEKTRISCH; VOM NETZ; NETZ; SICHER; VON NETZ'),
    isolated: list('GETRENNT*; ISOLIERT*; ENTKOPPELT*'),
    no: list('KEINE; OHNE; KEINERLEI; FEHLENDE'),
    isolation: list(
      'TRENNUNG; ISOLATION; ISOLIERUNG; POTENTIALTRENNUNG; POTENZIALTRENNUNG; GALVANISCHE TRENNUNG; NETZTRENNUNG',
    ),
    after: list('NEIN; KEINE; NICHT'),
    joined: list(
      'GALVANISCH VERBUNDEN; GALVANISCH GEKOPPELT; DIREKT AM NETZ; NETZPOTENTIAL; NETZPOTENZIAL; AUSGANG UNTER SPANNUNG; CHASSIS UNTER NETZSPANNUNG; CHASSIS UNTER SPANNUNG; GEHÄUSE UNTER SPANNUNG; GEHÄUSE UNTER NETZSPANNUNG; AUSGANG NETZVERBUNDEN; NETZVERBUNDEN*; NUR MIT TRENNTRAFO*; NUR MIT TRENNTRANSFORMATOR*; TRENNTRAFO ERFORDERLICH; TRENNTRANSFORMATOR ERFORDERLICH; STROMSCHLAGGEFAHR AM AUSGANG',
    ),
  },
  {
    language: 'fr',
    not: list('NON; PAS; N EST PAS; NE SONT PAS; JAMAIS'),
    how: list('GALVANIQUEMENT; ÉLECTRIQUEMENT; DU SECTEUR; SORTIE'),
    isolated: list('ISOLÉ*; SÉPARÉ*'),
    no: list('SANS; PAS D; AUCUNE; ABSENCE D; PAS DE'),
    isolation: list(
      'ISOLATION; ISOLEMENT; SÉPARATION; SÉPARATION GALVANIQUE; ISOLATION GALVANIQUE; ISOLEMENT GALVANIQUE',
    ),
    after: list('NON; AUCUNE'),
    joined: list(
      'SORTIE RELIÉE AU SECTEUR; SORTIE SOUS TENSION; CHÂSSIS SOUS TENSION; CHÂSSIS EST SOUS TENSION; POTENTIEL DU SECTEUR; POTENTIEL SECTEUR; AVEC TRANSFORMATEUR D ISOLEMENT UNIQUEMENT; UNIQUEMENT AVEC TRANSFORMATEUR D ISOLEMENT',
    ),
  },
  {
    language: 'es',
    not: list('NO; NO ESTÁ; SIN ESTAR'),
    how: list('GALVÁNICAMENTE; ELÉCTRICAMENTE; SALIDA'),
    isolated: list('AISLAD*; SEPARAD*'),
    no: list('SIN; NINGÚN; NO TIENE'),
    isolation: list('AISLAMIENTO; AISLACIÓN; SEPARACIÓN; AISLAMIENTO GALVÁNICO; SEPARACIÓN GALVÁNICA'),
    after: list('NO'),
    joined: list(
      'SALIDA CONECTADA A LA RED; SALIDA BAJO TENSIÓN; CHASIS BAJO TENSIÓN; CHASIS CON TENSIÓN; POTENCIAL DE RED; SOLO CON TRANSFORMADOR DE AISLAMIENTO',
    ),
  },
  {
    language: 'it',
    not: list('NON; NON È'),
    how: list('GALVANICAMENTE; ELETTRICAMENTE; USCITA'),
    isolated: list('ISOLAT*; SEPARAT*'),
    no: list('SENZA; NESSUN; NESSUNA; PRIVO DI; PRIVA DI'),
    isolation: list('ISOLAMENTO; SEPARAZIONE; ISOLAMENTO GALVANICO; SEPARAZIONE GALVANICA'),
    after: list('NO'),
    joined: list(
      'USCITA COLLEGATA ALLA RETE; USCITA SOTTO TENSIONE; TELAIO SOTTO TENSIONE; POTENZIALE DI RETE; SOLO CON TRASFORMATORE DI ISOLAMENTO',
    ),
  },
  {
    language: 'pt',
    not: list('NÃO; NÃO É; NÃO ESTÁ'),
    how: list('GALVANICAMENTE; ELETRICAMENTE; SAÍDA'),
    isolated: list('ISOLAD*; SEPARAD*'),
    no: list('SEM; NENHUM; NENHUMA'),
    isolation: list('ISOLAMENTO; ISOLAÇÃO; SEPARAÇÃO; ISOLAÇÃO GALVÂNICA; ISOLAMENTO GALVÂNICO; SEPARAÇÃO GALVÂNICA'),
    after: list('NÃO'),
    joined: list(
      'SAÍDA LIGADA À REDE; SAÍDA SOB TENSÃO; CHASSI SOB TENSÃO; POTENCIAL DA REDE; SOMENTE COM TRANSFORMADOR DE ISOLAÇÃO',
    ),
  },
  {
    language: 'nl',
    not: list('NIET; ON; NIET VAN HET'),
    how: list('GALVANISCH; ELEKTRISCH; NET; VAN HET NET; VAN NET'),
    isolated: list('GESCHEIDEN; GEÏSOLEERD*; GEISOLEERD*'),
    no: list('GEEN; ZONDER'),
    isolation: list('SCHEIDING; ISOLATIE; GALVANISCHE SCHEIDING; NETSCHEIDING'),
    after: list('NEE; NIET; GEEN'),
    joined: list(
      'GALVANISCH VERBONDEN; NETPOTENTIAAL; UITGANG ONDER SPANNING; CHASSIS STAAT ONDER SPANNING; CHASSIS ONDER SPANNING; CHASSIS ONDER NETSPANNING; ALLEEN MET SCHEIDINGSTRANSFORMATOR; ALLEEN MET SCHEIDINGSTRAFO',
    ),
  },
  {
    language: 'sv',
    not: list('EJ; INTE; ICKE; O'),
    how: list('GALVANISKT; ELEKTRISKT; NÄT'),
    isolated: list('ISOLERAD*; ISOLERAT; SKILD*; SKILT; ÅTSKILD*; AVSKILD*; SEPARERAD*'),
    no: list('INGEN; UTAN; SAKNAR'),
    isolation: list('ISOLERING; ISOLATION; GALVANISK ISOLERING; GALVANISK ISOLATION; NÄTSEPARATION; SKYDDSSEPARATION'),
    after: list('NEJ; EJ'),
    joined: list(
      'GALVANISKT FÖRBUNDEN; NÄTPOTENTIAL; UTGÅNG SPÄNNINGSFÖRANDE; CHASSI SPÄNNINGSFÖRANDE; SPÄNNINGSFÖRANDE CHASSI; ENDAST MED SKILJETRANSFORMATOR; ENDAST MED ISOLERTRANSFORMATOR',
    ),
  },
  {
    language: 'da',
    not: list('IKKE; U; EJ'),
    how: list('GALVANISK; ELEKTRISK; NET; FRA NETTET'),
    isolated: list('ISOLERET; ADSKILT; SKILT'),
    no: list('INGEN; UDEN; MANGLER'),
    isolation: list('ISOLATION; ISOLERING; ADSKILLELSE; GALVANISK ADSKILLELSE; GALVANISK ISOLATION'),
    after: list('NEJ; IKKE'),
    joined: list(
      'GALVANISK FORBUNDET; NETPOTENTIALE; UDGANG UNDER SPÆNDING; CHASSIS UNDER SPÆNDING; KUN MED SKILLETRANSFORMER; KUN MED SKILLETRANSFORMATOR',
    ),
  },
  {
    language: 'no',
    not: list('IKKE; U; EI'),
    how: list('GALVANISK; ELEKTRISK; NETT; FRA NETTET'),
    isolated: list('ISOLERT*; ATSKILT; ADSKILT; SKILT'),
    no: list('INGEN; UTEN; MANGLER'),
    isolation: list('ISOLASJON; ISOLERING; GALVANISK SKILLE; ATSKILLELSE; GALVANISK ISOLASJON'),
    after: list('NEI; IKKE'),
    joined: list(
      'GALVANISK FORBUNDET; NETTPOTENSIAL; UTGANG UNDER SPENNING; CHASSIS UNDER SPENNING; KUN MED SKILLETRANSFORMATOR',
    ),
  },
  {
    language: 'fi',
    not: list('EI; EI OLE'),
    how: list('GALVAANISESTI; SÄHKÖISESTI; VERKOSTA'),
    isolated: list('EROTETTU*; ERISTETTY*; ERISTETTYÄ'),
    no: list('EI; ILMAN'),
    isolation: list('EROTUSTA; ERISTYSTÄ; GALVAANISTA EROTUSTA; VERKKOEROTUSTA'),
    after: list('EI'),
    joined: list(
      'EROTTAMATON*; VERKKOPOTENTIAALI*; YHTEYDESSÄ VERKKOON; LÄHTÖ JÄNNITTEINEN; VAIN EROTUSMUUNTAJAN KANSSA',
    ),
  },
  {
    language: 'pl',
    not: list('NIE; NIE JEST'),
    how: list('GALWANICZNIE; ELEKTRYCZNIE; OD SIECI'),
    isolated: list('IZOLOWAN*; ODIZOLOWAN*; ODSEPAROWAN*; SEPAROWAN*; ODDZIELON*'),
    no: list('BEZ; BRAK'),
    isolation: list('IZOLACJI; SEPARACJI; IZOLACJI GALWANICZNEJ; SEPARACJI GALWANICZNEJ; ODDZIELENIA'),
    after: list('NIE; BRAK'),
    joined: list(
      'NIEODIZOLOWAN*; NIESEPAROWAN*; POTENCJAŁ SIECI; WYJŚCIE POD NAPIĘCIEM; TYLKO Z TRANSFORMATOREM SEPARACYJNYM',
    ),
  },
  {
    language: 'cs',
    not: list('NE; NENÍ'),
    how: list('GALVANICKY; ELEKTRICKY; OD SÍTĚ'),
    isolated: list('ODDĚLEN*; IZOLOVÁN*; IZOLOVAN*; NEODDĚLEN*'),
    no: list('BEZ; ŽÁDNÁ; CHYBÍ'),
    isolation: list('IZOLACE; ODDĚLENÍ; GALVANICKÉHO ODDĚLENÍ; GALVANICKÉ IZOLACE'),
    after: list('NE'),
    joined: list('GALVANICKY SPOJEN*; POTENCIÁL SÍTĚ; VÝSTUP POD NAPĚTÍM; POUZE S ODDĚLOVACÍM TRANSFORMÁTOREM'),
  },
  {
    language: 'sk',
    not: list('NIE JE; NE'),
    how: list('GALVANICKY; ELEKTRICKY; OD SIETE'),
    isolated: list('ODDELEN*; IZOLOVAN*; NEODDELEN*'),
    no: list('BEZ'),
    isolation: list('IZOLÁCIE; ODDELENIA; GALVANICKÉHO ODDELENIA'),
    after: list('NIE'),
    joined: list('GALVANICKY SPOJEN*'),
  },
  {
    language: 'hu',
    not: list('NEM; NINCS'),
    how: list('GALVANIKUSAN; HÁLÓZATTÓL; A HÁLÓZATTÓL; ELEKTROMOSAN'),
    isolated: list('LEVÁLASZTOTT; LEVÁLASZTVA; ELVÁLASZTOTT; ELVÁLASZTVA; SZIGETELT; SZIGETELVE; LEVÁLASZTÁS'),
    after: list('NEM; NINCS; NÉLKÜL'),
    joined: list(
      'HÁLÓZATI POTENCIÁL*; GALVANIKUS LEVÁLASZTÁS NÉLKÜL; SZIGETELÉS NÉLKÜL; CSAK LEVÁLASZTÓ TRANSZFORMÁTORRAL',
    ),
  },
  {
    language: 'ru',
    not: list('НЕ; НЕ ИМЕЕТ'),
    how: list('ГАЛЬВАНИЧЕСКИ; ЭЛЕКТРИЧЕСКИ; ОТ СЕТИ'),
    isolated: list('ИЗОЛИРОВАН*; РАЗВЯЗАН*; ОТДЕЛЕН*; ОТДЕЛЁН*; НЕ ИЗОЛИРОВАН*'),
    no: list('БЕЗ; НЕТ; НЕ ИМЕЕТ; ОТСУТСТВУЕТ'),
    isolation: list('РАЗВЯЗКИ; ИЗОЛЯЦИИ; ГАЛЬВАНИЧЕСКОЙ РАЗВЯЗКИ; ГАЛЬВАНИЧЕСКОЙ ИЗОЛЯЦИИ; РАЗВЯЗКА'),
    after: list('НЕТ; ОТСУТСТВУЕТ'),
    joined: list(
      'СВЯЗАНО С СЕТЬЮ; СВЯЗАН С СЕТЬЮ; СВЯЗЬ С СЕТЬЮ; ПОТЕНЦИАЛ СЕТИ; ПОД ПОТЕНЦИАЛОМ СЕТИ; ВЫХОД ПОД НАПРЯЖЕНИЕМ СЕТИ; ТОЛЬКО С РАЗДЕЛИТЕЛЬНЫМ ТРАНСФОРМАТОРОМ; ИЗОЛЯЦИЯ ОТСУТСТВУЕТ; ГАЛЬВАНИЧЕСКАЯ РАЗВЯЗКА ОТСУТСТВУЕТ; ГАЛЬВАНИЧЕСКИ СВЯЗАН*',
    ),
  },
  {
    language: 'uk',
    not: list('НЕ'),
    how: list('ГАЛЬВАНІЧНО; ЕЛЕКТРИЧНО; ВІД МЕРЕЖІ'),
    isolated: list('ІЗОЛЬОВАН*; РОЗВ’ЯЗАН*; ВІДДІЛЕН*; ВІДОКРЕМЛЕН*'),
    no: list('БЕЗ; НЕМАЄ'),
    isolation: list('РОЗВ’ЯЗКИ; ІЗОЛЯЦІЇ; ГАЛЬВАНІЧНОЇ РОЗВ’ЯЗКИ'),
    after: list('НЕМАЄ; НІ'),
    joined: list('НЕІЗОЛЬОВАН*; ПОТЕНЦІАЛ МЕРЕЖІ; ПІД НАПРУГОЮ МЕРЕЖІ'),
  },
  {
    language: 'tr',
    not: list('NOT'),
    how: list('GALVANİK; ELEKTRİKSEL; ŞEBEKEDEN'),
    isolated: list('İZOLE; YALITIMLI; AYRILMIŞ; YALITILMIŞ; İZOLASYONLU'),
    after: list('DEĞİL*; HAYIR; YOK'),
    joined: list(
      'YALITILMAMIŞ; İZOLE EDİLMEMİŞ; AYRILMAMIŞ; İZOLASYONSUZ; YALITIMSIZ; YALITIM YOK; İZOLASYON YOK; ŞEBEKE POTANSİYELİ*',
    ),
  },
  {
    language: 'ro',
    not: list('NU ESTE; NU; NE'),
    how: list('GALVANIC; ELECTRIC; DE LA REȚEA; DE REȚEA'),
    isolated: list('IZOLAT*; SEPARAT*; NEIZOLAT*'),
    no: list('FĂRĂ; LIPSĂ'),
    isolation: list('IZOLARE; IZOLAȚIE; SEPARARE; IZOLARE GALVANICĂ; SEPARARE GALVANICĂ'),
    after: list('NU'),
    joined: list('POTENȚIALUL REȚELEI'),
  },
  {
    language: 'hr',
    not: list('NIJE; NE'),
    how: list('GALVANSKI; ELEKTRIČNO; OD MREŽE'),
    isolated: list('IZOLIRAN*; ODVOJEN*; NEIZOLIRAN*'),
    no: list('BEZ; NEMA'),
    isolation: list('IZOLACIJE; ODVAJANJA; GALVANSKOG ODVAJANJA; GALVANSKE IZOLACIJE'),
    after: list('NE; NEMA'),
    joined: list('POD NAPONOM MREŽE; GALVANSKI SPOJEN*'),
  },
  {
    language: 'bg',
    not: list('НЕ Е; НЕ'),
    how: list('ГАЛВАНИЧНО; ОТ МРЕЖАТА'),
    isolated: list('ИЗОЛИРАН*; РАЗДЕЛЕН*; НЕИЗОЛИРАН*'),
    no: list('БЕЗ; НЯМА'),
    isolation: list('ИЗОЛАЦИЯ; ГАЛВАНИЧНА ИЗОЛАЦИЯ; ГАЛВАНИЧНО РАЗДЕЛЯНЕ'),
    after: list('НЕ; НЯМА'),
    joined: [],
  },
  {
    language: 'el',
    not: list('ΜΗ; ΔΕΝ ΕΙΝΑΙ; ΌΧΙ'),
    how: list('ΓΑΛΒΑΝΙΚΑ; ΗΛΕΚΤΡΙΚΑ; ΑΠΌ ΤΟ ΔΊΚΤΥΟ'),
    isolated: list('ΑΠΟΜΟΝΩΜΕΝ*; ΜΟΝΩΜΕΝ*; ΔΙΑΧΩΡΙΣΜΕΝ*'),
    no: list('ΧΩΡΙΣ; ΚΑΜΙΑ'),
    isolation: list('ΑΠΟΜΟΝΩΣΗ; ΜΟΝΩΣΗ; ΓΑΛΒΑΝΙΚΗ ΑΠΟΜΟΝΩΣΗ'),
    after: list('ΌΧΙ'),
    joined: [],
  },
  {
    language: 'ja',
    not: list('非; 未; 不'),
    how: [],
    isolated: list('絶縁; 隔離; 分離'),
    after: list(
      'なし; 無し; 無; されていない; していない; されていません; していません; ではない; ではありません; されておりません',
    ),
    joined: list(
      '商用電源に接続; 電源電位; 一次側と接続; 一次側に接続; 感電の恐れ出力; 絶縁トランスが必要; 絶縁トランスを使用',
    ),
  },
  {
    language: 'zh',
    not: list('非; 未; 不; 无; 無; 没有; 沒有'),
    how: list('电气; 与市电'),
    isolated: list('隔离; 隔離; 绝缘; 絕緣; 分离; 分離'),
    after: list('无; 無; 否; 没有'),
    joined: list(
      '与市电相连; 與市電相連; 与电网相连; 输出带电; 輸出帶電; 市电电位; 热底板; 须用隔离变压器; 需使用隔离变压器; 必须使用隔离变压器',
    ),
  },
  {
    language: 'ko',
    not: list('비; 미; 무'),
    how: [],
    isolated: list('절연; 분리'),
    after: list('되지않음; 안됨; 없음; 아님; 되어있지않음; 되지않은; 안된'),
    joined: list('전원 전위; 출력 감전 위험; 절연 변압기 필요'),
  },
]

const plain = (word: string): string => word.replaceAll('*', '')

/** Every way the parts of a language say that something is not isolated. */
function phrasesOf({ not, how, isolated, no = [], isolation = [], after, joined }: Denied): string[] {
  const adjectives = isolated.flatMap((word) => [
    ...not.flatMap((one) => [
      `${one} ${word}`,
      ...how.flatMap((way) => [`${one} ${way} ${word}`, `${way} ${one} ${word}`]),
    ]),
    ...after.map((one) => `${plain(word)} ${one}`),
  ])
  const nouns = isolation.flatMap((word) => [
    ...no.map((one) => `${one} ${word}`),
    ...after.map((one) => `${word} ${one}`),
  ])
  return [...new Set([...adjectives, ...nouns, ...joined])]
}

const source: Source = commonPractice(
  'A denial and a word for isolation',
  'every denial of a language before, or behind, every word it has for isolated; put together, not looked up',
)

/** Ways to say that something is not isolated from the mains, by language. */
export const isolationDenied: readonly { language: HazardLanguage; words: readonly string[]; source: Source }[] =
  frozen(languages.map((one) => ({ language: one.language, words: phrasesOf(one), source })))
