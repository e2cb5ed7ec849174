import { frozen } from './frozen.js'
import { commonPractice, type Source } from './source.js'
import { table } from './table.js'

/**
 * What a word that stands unread may change: a denial or a condition takes away what the figures promise, a state says that the thing is
 * not as it was made, a setting that more than one voltage can be had, an isolation word speaks of what parts the output from the mains, a polarity word of the signs on the plug,
 * a live word says that something can be touched at mains potential, a mains word names a conductor of the mains, a joined word what may be joined to it, a manner word that the output is
 * no plain supply, a charging word that what is printed charges a battery, a chemistry word which.
 */
export type TellingKind =
  | 'denial'
  | 'condition'
  | 'state'
  | 'setting'
  | 'isolation'
  | 'polarity'
  | 'live'
  | 'mains'
  | 'joined'
  | 'manner'
  | 'charging'
  | 'chemistry'

/** Words of one kind, in any language. `*` at the end stands for letters that go on. */
export interface TellingWords {
  readonly kind: TellingKind
  readonly words: readonly string[]
  readonly source: Source
}

const practice = commonPractice(
  'Words that change what figures mean',
  'left unread they may turn what was read into its opposite, so they are told even where they stand alone',
)

const words = (kind: TellingKind, text: string): TellingWords => ({ kind, words: text.split('; '), source: practice })

/** Words that matter even where one alone is left unread. Denials and the words for the polarity stand in the table of polarity words, too. */
export const tellingWords: readonly TellingWords[] = frozen([
  words(
    'denial',
    'NOT; NO; NON; NEVER; NONE; WITHOUT; EXCEPT; UNLESS; CANNOT; CANT; DONT; ISNT; FORBIDDEN; PROHIBITED; NICHT; KEIN*; OHNE; NIE; NIEMALS; AUSSER; VERBOTEN; NEIN; PAS; SANS; JAMAIS; SAUF; INTERDIT*; AUCUN*; SIN; NUNCA; PROHIBID*; NINGUN*; EXCEPTO; SENZA; MAI; VIETATO; ECCETTO; NAO; SEM; PROIBID*; EXCETO; GEEN; NIET; ZONDER; NOOIT; VERBODEN; BEHALVE; EJ; INTE; ICKE; UTAN; ALDRIG; FÖRBJUD*; IKKE; UDEN; UTEN; ALDRI; FORBUDT; EI; EIVAT; ILMAN; ÄLÄ; KIELLETTY; BEZ; BRAK; ZABRONION*; NELZE; NENÍ; ZAKÁZÁN*; ŽÁDN*; NEM; TILOS; NÉLKÜL; NINCS; НЕ; НЕТ; БЕЗ; НЕЛЬЗЯ; ЗАПРЕЩ*; КРОМЕ; НЕМАЄ; НІ; ЗАБОРОН*; DEĞİL; YOK; YASAK*; HAYIR; NU; FĂRĂ; INTERZIS; NIJE; NEMA; ZABRANJENO; НЯМА; ΜΗ; ΔΕΝ; ΧΩΡΙΣ; ΌΧΙ; ΑΠΑΓΟΡ*; 不; 非; 未; 禁; 勿; 没有; 沒有; なし; ない; ません; 禁止; 不可; 않; 없; 금지; 아님',
  ),
  words(
    'condition',
    'DC ONLY; AC ONLY; ONLY DC; ONLY AC; NUR DC; NUR AC; NUR GLEICHSTROM; NUR GLEICHSPANNUNG; NUR WECHSELSTROM; NUR WECHSELSPANNUNG; MINIMUM LOAD; MIN LOAD; MINDESTLAST; CHARGE MINIMALE; CARGA MÍNIMA; CARICO MINIMO; MINIMALE BELASTING; ONLY WITH; ONLY WHEN; ONLY IF; ONLY FOR; ONLY ON; ONLY VIA; VIA; THROUGH; IF; UNTIL; MUST; REQUIRES; ONLY AFTER; SPECIAL; LIMITED TO; MAX LOAD; FORMERLY; C C; CC; NUR MIT; NUR BEI; NUR WENN; NUR FÜR; NUR ÜBER; NUR AN; MUSS; SEULEMENT; UNIQUEMENT; SOLO CON; SOLO PER; SOLO PARA; SOLAMENTE; SOMENTE; APENAS; ALLEEN; UITSLUITEND; ENDAST; BARA; KUN; BARE; VAIN; AINOASTAAN; TYLKO; WYŁĄCZNIE; POUZE; JEN; CSAK; ТОЛЬКО; ЛИШЬ; ТІЛЬКИ; ЛИШЕ; SADECE; YALNIZ*; NUMAI; DOAR; SAMO; ΜΌΝΟ; 仅限; 只能; 专用; 專用; 必须; 須; 専用; のみ; 限定; 전용; 반드시',
  ),
  words(
    'state',
    'DAMAGE; CABLE CUT; CORD CUT; LEAD CUT; PLUG CUT; WIRE CUT; CUT CABLE; CUT CORD; CUT LEAD; PLUG CUT OFF; BURNT; BURNED; SCORCHED; CRACKED; FRAYED; FAULTY; DEAD; LEAKING; LEAKED; MELTED; CORRODED; RECALL*; FOR SPARES; SPARES ONLY; FOR PARTS; NOT WORKING; KAPUTT; BESCHÄDIGT; WASSERSCHADEN; KABELBRUCH; VERBRANNT; GESCHMOLZEN; DEFEKT*; RÜCKRUF; ENDOMMAGÉ*; CASSÉ*; BRÛLÉ*; EN PANNE; HORS SERVICE; DÉFECTUEU*; RAPPEL; DAÑAD*; ROTO; ROTA; QUEMAD*; AVERIAD*; DEFECTUOS*; ROTTO; ROTTA; DANNEGGIAT*; BRUCIAT*; GUAST*; DIFETTOS*; DANIFICAD*; QUEIMAD*; AVARIAD*; DEFEITUOS*; KAPOT; BESCHADIGD*; VERBRAND; TRASIG; SKADAD; SKADET; BESKADIGET; ØDELAGT; ØYDELAGT; RIKKI; VIALLI*; VAURIO*; USZKODZON*; ZEPSUT*; SPALON*; POŠKOZEN*; POŠKODEN*; VADN*; ROZBIT*; HIBÁS; SÉRÜLT; LEÉGETT; СЛОМАН*; НЕИСПРАВ*; ПОВРЕЖД*; СГОРЕЛ*; НЕ РАБОТАЕТ; ЗЛАМАН*; ПОШКОДЖ*; НЕСПРАВН*; ПОВРЕДЕН*; BOZUK; ARIZALI; HASARLI; YANIK; STRICAT*; DETERIORAT*; POKVAREN*; OŠTEĆEN*; ΧΑΛΑΣΜΕΝ*; ΕΛΑΤΤΩΜΑΤ*; 损坏; 損壞; 故障; 破損; 焼損; 断線; 進水; 进水; 고장; 파손; 손상; 침수',
  ),
  words(
    'state',
    'DEFECT*; BROKEN; DAMAGED; MODIFIED; MODIFICATION; CONVERTED; ALTERED; REWIRED; REPAIRED; REBUILT; CHANGED; BYPASSED; BRIDGED; REMOVED; DISABLED; DISCONNECTED; REPLACED; HIGHER; LOWER; OFF LOAD; UNLOADED; OPEN CIRCUIT; NOW; SET TO; SET AT; SET FOR; DANGER; DANGEROUS; LETHAL; GEFAHR; LEBENSGEFAHR; JETZT; NUNMEHR; EINGESTELLT AUF; GESTELLT AUF; MAINTENANT; RÉGLÉ SUR; AHORA; AJUSTADO A; ADESSO; ORA; IMPOSTATO SU; REGOLATO SU; AGORA; AJUSTADO PARA; INGESTELD OP; INSTÄLLD PÅ; INDSTILLET TIL; INNSTILT PÅ; NYT; TERAZ; USTAWION*; NYNÍ; NASTAVEN*; MOST; ТЕПЕРЬ; СЕЙЧАС; УСТАНОВЛЕНО НА; ŞİMDİ; 现为; 現為; 现在; 設定; UMGEBAUT; GEÄNDERT; VERÄNDERT; ÜBERBRÜCKT; REPARIERT; LEERLAUF*; MODIFIÉ*; DANGER DE MORT; À VIDE; MODIFICAD*; PELIGRO; EN VACÍO; MODIFICAT*; PERICOLO; A VUOTO; PERIGO; GEWIJZIGD; GEVAAR; ÄNDRAD; OMBYGGD; FARA; LIVSFARA; ÆNDRET; OMBYGGET; FARE; ENDRET; MUUTETTU; VAARA; ZMIENION*; PRZEROBION*; NIEBEZPIECZ*; UPRAVEN*; NEBEZPEČ*; MÓDOSÍT*; VESZÉLY*; ПЕРЕДЕЛ*; ИЗМЕНЕН*; ОПАСНО*; НЕБЕЗПЕЧ*; TEHLİKE*; 改造; 改装; 危险; 危險; 危険; 空载; 무부하; 위험; 개조',
  ),
  words(
    'setting',
    'ADJUSTABLE; VARIABLE; SWITCHABLE; SELECTABLE; UMSCHALTBAR; EINSTELLBAR; RÉGLABLE; COMMUTABLE; AJUSTABLE; CONMUTABLE; REGOLABILE; COMMUTABILE; COMUTÁVEL; AJUSTÁVEL; INSTELBAAR; OMSCHAKELBAAR; STÄLLBAR; OMKOPPLINGSBAR; SÄÄDETTÄVÄ; REGULOWAN*; PŘEPÍNATELN*; РЕГУЛИРУЕМ*; ПЕРЕКЛЮЧАЕМ*; AYARLI; 可调; 可調; 可変; 切替; 가변',
  ),
  words(
    'isolation',
    'ISOLAT*; INSULAT*; UNISOLAT*; POTENTIAL; GALVANIC*; SEPARATED FROM; CONNECTED TO MAINS; ISOLIER*; GETRENNT; TRENNUNG; POTENTIALFREI*; POTENZIAL*; GALVANISCH*; ISOLÉ*; ISOLEMENT; GALVANIQUE*; AISLAD*; AISLAMIENTO; GALVÁNIC*; ISOLAMENTO; ISOLAD*; GESCHEIDEN; SCHEIDING; GEÏSOLEERD; GALVANISK*; ISOLERAD*; ISOLERET; ISOLERT; ADSKILT; EROTETTU; ERISTETTY; GALVAANI*; IZOLOWAN*; IZOLACJ*; SEPARACJ*; GALWANICZN*; IZOLOVÁN*; ODDĚLEN*; GALVANICK*; SZIGETEL*; LEVÁLASZT*; GALVANIKUS*; ИЗОЛ*; РАЗВЯЗ*; ГАЛЬВАН*; ІЗОЛЬ*; РОЗВ*; İZOLE; İZOLASYON; YALITIM*; YALITIL*; IZOLAT; IZOLARE; IZOLIRAN*; ODVOJEN*; ИЗОЛИРАН*; ΑΠΟΜΟΝ*; ΜΟΝΩΣ*; 隔离; 隔離; 绝缘; 絕緣; 絶縁; 절연',
  ),
  words(
    'polarity',
    'REVERS*; INVERTED; POLARITY; OPPOSITE; SWAPPED; CROSSED; UMGEKEHRT; VERTAUSCHT; VERPOLT; UMPOLBAR; POLARITÄT; INVERSÉ*; RÉVERSIBLE; POLARITÉ; INVERTID*; INVERSA; POLARIDAD*; INVERTIT*; POLARITA; POLARIDADE; OMGEKEERD; OMGEDRAAID; POLARITEIT; OMVÄND*; OMKASTAD; POLARITET; OMVENDT; REVERSERT; KÄÄNTEINEN; NAPAISUUS; ODWRO*; BIEGUNOWO*; OPAČN*; OBRÁCEN*; FORDÍTOTT; POLARITÁS; ОБРАТН*; НАОБОРОТ; ПОЛЯРНОСТ*; ЗВОРОТН*; ПОЛЯРНІСТ*; TERS; KUTUP*; INVERSAT*; POLARITATE*; 极性相反; 反接; 极性; 極性; 逆極性; 極性反転; 극성',
  ),
  words(
    'live',
    'LIVE; HOT; ENERGIZED; ENERGISED; MAINS POTENTIAL; LINE POTENTIAL; UNTER SPANNUNG; UNTER NETZSPANNUNG; SPANNUNGSFÜHREND*; STROMFÜHREND*; SOUS TENSION; BAJO TENSIÓN; CON TENSIÓN; SOTTO TENSIONE; SOB TENSÃO; ENERGIZAD*; ONDER SPANNING; ONDER NETSPANNING; SPÄNNINGSFÖRANDE; STRÖMFÖRANDE; UNDER SPÆNDING; SPÆNDINGSFØRENDE; UNDER SPENNING; SPENNINGSFØRENDE; JÄNNITTEINEN; JÄNNITTEIS*; POD NAPIĘCIEM; POD NAPĚTÍM; POD NAPÄTÍM; FESZÜLTSÉG ALATT; ПОД НАПРЯЖЕНИЕМ; ПІД НАПРУГОЮ; ПОД НАПРЕЖЕНИЕ; GERİLİM ALTINDA; SUB TENSIUNE; POD NAPONOM; ΥΠΌ ΤΆΣΗ; 带电; 帶電; 充電部; 활선',
  ),
  words(
    'mains',
    'MAINS; LINE; NEUTRAL; PHASE; PRIMARY; NETZ; NETZSPANNUNG; NETZLEITER; NETZSEITE; NULLLEITER; NEUTRALLEITER; AUSSENLEITER; PRIMÄR*; SECTEUR; NEUTRE; RÉSEAU; PRIMAIRE; RED; FASE; NEUTRO; PRIMARIO; RETE; REDE; PRIMÁRIO; LICHTNET; NETSPANNING; NUL; PRIMAIR; NÄT; NÄTET; NÄTSPÄNNING; NOLLA; NOLLEDARE; NETTET; NETTSPENNING; NETSPÆNDING; VERKKOJÄNNITE*; VERKKOON; NOLLAJOHDIN; SIEĆ; SIECI; SIECIĄ; SÍŤ; SÍTĚ; SÍTÍ; SIEŤ; SIETE; HÁLÓZAT; HÁLÓZATTAL; NULLA; FÁZIS; СЕТЬ; СЕТИ; СЕТЬЮ; ФАЗА; ФАЗЕ; ФАЗОЙ; НОЛЬ; НУЛЬ; НУЛЕМ; МЕРЕЖА; МЕРЕЖІ; МЕРЕЖЕЮ; МРЕЖА; МРЕЖАТА; ŞEBEKE; FAZ; NÖTR; REȚEA; REȚEAUA; MREŽA; MREŽI; MREŽOM; ΔΊΚΤΥΟ; 市电; 市電; 电网; 電網; 火线; 火線; 零线; 零線; 商用電源; 一次側; 상용전원',
  ),
  words(
    'joined',
    'CASE; CASING; CABINET; CHASSIS; FRAME; COMMON; TIED; JOINED; CONNECTED; BONDED; BRIDGED TO; LINKED; SHARED; SECONDARY; GROUND; GROUNDED; GND; EARTH; EARTHED; GEHÄUSE; MASSE; VERBUNDEN; GEMEINSAM*; SEKUNDÄR*; ERDE; GEERDET; CHÂSSIS; BOÎTIER; RELIÉ*; CONNECTÉ*; COMMUN*; SECONDAIRE; TERRE; CHASIS; CARCASA; CONECTAD*; UNID*; COMÚN; SECUNDARI*; TIERRA; TELAIO; CARCASSA; COLLEGAT*; COMUNE; SECONDARIO; TERRA; MASSA; CHASSI; CARCAÇA; LIGAD*; COMUM; SECUNDÁRIO; BEHUIZING; VERBONDEN; GEMEENSCHAPPELIJK*; SECUNDAIR; AARDE; HÖLJE; FÖRBUND*; ANSLUT*; GEMENSAM*; JORD; JORDAD; FORBUND*; TILSLUTTET; FÆLLES; FELLES; TILKOBLET; KABINET*; RUNKO; KYTKETTY; YHTEINEN; YHDISTETTY; OBUDOWA; OBUDOWIE; POŁĄCZON*; WSPÓLN*; KOSTRA; SPOJEN*; SPOLEČN*; PŘIPOJEN*; HÁZ; KÖZÖS; ÖSSZEKÖT*; КОРПУС*; ШАССИ; СОЕДИНЕН*; СОЕДИНЁН*; СВЯЗАН*; ОБЩИЙ; ОБЩАЯ; ЗЕМЛЯ; ШАСІ; ЗʼЄДНАН*; СПІЛЬН*; ŞASİ; BAĞLI; ORTAK; ŞASIU; CONECTAT; COMUN; ŠASIJA; SPOJENO; ZAJEDNIČK*; ΣΑΣΊ; ΣΥΝΔΕΔΕΜΈΝ*; ΚΟΙΝΌ; 机壳; 機殼; 底板; 底盘; 外壳; 相连; 相連; 连接; 接続; 筐体; シャーシ; 共通; 섀시; 케이스; 공통',
  ),
  words(
    'charging',
    'CHARGE; CHARGING; CHG; RECHARGE; RECHARGING; LADEN; AUFLADEN; LADUNG; LADEBUCHSE; LADESPANNUNG; LADEANSCHLUSS; LADEEINGANG; LADESTROM; CHARGEMENT; RECHARGEMENT; CARGA; RECARGA; CARICA; RICARICA; CARREGAMENTO; OPLADEN; LADDNING; LADDA; OPLADNING; LADING; LATAUS; ŁADOWANI*; NABÍJEN*; NABÍJANI*; TÖLTÉS; TÖLTŐ*; ЗАРЯД; ЗАРЯДА; ЗАРЯДКА; ЗАРЯДЖАННЯ; ЗАРЕЖДАНЕ; ŞARJ; ΦΌΡΤΙΣΗ; ÎNCĂRCARE; PUNJENJE; LAADIMINE; ĮKROVIMAS; UZLĀDE; SẠC; טעינה; شحن; 充電; 充电; 充電用; 充电用; 충전',
  ),
  words(
    'chemistry',
    'NI MH; NIMH; NI CD; NICD; LI ION; LIION; LI PO; LIPO; LI POLYMER; LIFEPO4; LITHIUM; LEAD ACID; BLEI; BLEIAKKU*; PLOMB; PLOMO; PIOMBO; CHUMBO; LOODACCU*; НИКЕЛЬ*; СВИНЦОВ*; ЛИТИ*; ニッケル*; リチウム*; 镍氢; 镍镉; 鎳氫; 鋰電池; 锂电池; 锂离子; 铅酸; 니켈; 리튬',
  ),
  words(
    'manner',
    'PWM; PULSED; PULSATING; CHOPPED; HALF WAVE; HALFWAVE; PRECHARG*; PRE CHARG*; TRICKLE; FLOAT CHARG*; BOOST CHARG*; EQUALIZ*; EQUALIS*; GEPULST*; PULSIEREND*; VORLADUNG; ERHALTUNGSLAD*; PULSÉ*; PRÉCHARGE*; PULSAD*; PRECARGA; PULSANTE; PRECARICA; PRÉ CARGA; GEPULSTE; PULSERAD*; PULSERENDE; UNDERHÅLLSLADDN*; PULSUJĄC*; PULZN*; ИМПУЛЬСНЫЙ ТОК; ПУЛЬСИРУЮЩ*; ПОДЗАРЯД*; 脉动; 脈動; 涓流; 预充; トリクル; 脈流; 맥류',
  ),
])

export const tellingWordsTable = table<TellingWords>({
  name: 'telling-words',
  title: 'Words that matter alone',
  intro:
    'Words that may turn what was read into its opposite. One of them left unread keeps the verdict at care, and the topic it speaks of at unknown, until a person says that it does not matter.',
  rows: tellingWords,
  id: ({ kind, words }) => [kind, words[0] ?? ''],
  columns: [
    { key: 'words', title: 'Words', between: '; ', filled: true },
    { key: 'kind', title: 'Kind' },
  ],
})
