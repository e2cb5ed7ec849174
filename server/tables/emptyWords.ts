import { frozen } from './frozen.js'
import { fromMemory, type Source } from './source.js'
import type { StopLanguage } from './stopWords.js'
import { table } from './table.js'

/** Words that stand where something should be told, and tell nothing. */
interface EmptyWords {
  /** nobody did it, or nobody knows why */
  readonly about: 'nobody' | 'not known'
  readonly language: StopLanguage
  /** small letters without accents; `*` stands for any ending; of languages without spaces, looked for anywhere */
  readonly words: readonly string[]
  readonly source: Source
}

const everyday = fromMemory('Everyday words', 'what people write where they have nothing to write')

const row = (language: StopLanguage, about: EmptyWords['about'], words: string): EmptyWords =>
  frozen({ about, language, words: frozen(words.split('; ')), source: everyday })

/** What names no tester and no cause. */
export const emptyWords: readonly EmptyWords[] = frozen([
  row(
    'en',
    'nobody',
    'nobody; no one; noone; no body; none; not yet; not tested; untested; unknown; tbd; pending; later; to do; todo',
  ),
  row('de', 'nobody', 'niemand*; keiner; noch nicht; ungepruft; offen'),
  row('fr', 'nobody', 'personne; pas encore; aucun; non teste'),
  row('es', 'nobody', 'nadie; todavia no; aun no; ninguno'),
  row('it', 'nobody', 'nessuno; non ancora'),
  row('nl', 'nobody', 'nog niet; nog niemand'),
  row('pt', 'nobody', 'ninguem; ainda nao; nenhum'),
  row('da', 'nobody', 'ingen; ikke endnu'),
  row('no', 'nobody', 'ikke enna'),
  row('sv', 'nobody', 'inte annu'),
  row('fi', 'nobody', 'ei kukaan; ei viela'),
  row('pl', 'nobody', 'nikt; jeszcze nie'),
  row('cs', 'nobody', 'nikdo; jeste ne'),
  row('sk', 'nobody', 'nikto; este nie'),
  row('hu', 'nobody', 'senki; meg nem'),
  row('ro', 'nobody', 'nimeni; inca nu'),
  row('tr', 'nobody', 'hic kimse; kimse; henuz degil'),
  row('el', 'nobody', 'κανεις; κανενας; οχι ακομα'),
  row('bg', 'nobody', 'никой; още не'),
  row('ru', 'nobody', 'никто; никем; еще не; пока не'),
  row('uk', 'nobody', 'ніхто; ще не'),
  row('ar', 'nobody', 'لا احد; لا أحد; ليس بعد'),
  row('he', 'nobody', 'אף אחד; עדיין לא'),
  row('zh', 'nobody', '没有人; 沒有人; 没人; 还没; 還沒; 未测; 未測'),
  row('ja', 'nobody', '誰も; だれも; まだ; 未検査; 未定'),
  row('ko', 'nobody', '아무도; 아직; 미정'),
  row(
    'en',
    'not known',
    'unknown; dont know; don t know; do not know; don t understand; no idea; not known; not sure; unsure; not clear; unclear; no cause*; cause unknown; cause not found; not found; nothing found; found nothing; none; nothing; ignore*; ignoring; whatever; never mind; nevermind; does not matter; doesn t matter; no reason; just because; dunno; who knows; no clue; mystery; skip; skipped; continue; carry on; go on; test; testing; asdf*; later; to do; todo; tbd; pending',
  ),
  row(
    'de',
    'not known',
    'unbekannt*; weiss nicht; weiß nicht; keine ahnung; unklar*; keine ursache; nichts gefunden; nicht gefunden; egal; ignorier*; weiter; spater',
  ),
  row(
    'fr',
    'not known',
    'inconnu*; sais pas; ne sais; aucune idee; pas trouve; rien trouve; aucune cause; peu importe; ignore*',
  ),
  row('es', 'not known', 'desconocid*; no se; no lo se; ni idea; no encontrad*; nada encontrado; da igual; ignorar'),
  row('it', 'not known', 'sconosciut*; non so; non lo so; nessuna idea; non trovat*; nessuna causa; ignora*'),
  row('nl', 'not known', 'onbekend; weet niet; weet ik niet; geen idee; niet gevonden; geen oorzaak; negeer*; negeren'),
  row('pt', 'not known', 'desconhecid*; nao sei; nenhuma ideia; nao encontrad*; ignorar'),
  row('da', 'not known', 'ukendt; ved ikke; ved det ikke; ingen anelse; ikke fundet; ingen arsag; ignorer*'),
  row('no', 'not known', 'ukjent; vet ikke; vet det ikke; ingen anelse; ikke funnet; ingen arsak; ignorer*'),
  row('sv', 'not known', 'okand*; vet inte; vet ej; ingen aning; hittade inget; ingen orsak; ignorera*'),
  row('fi', 'not known', 'tuntematon; en tieda; ei tietoa; ei loytynyt; ei syyta'),
  row('pl', 'not known', 'nieznan*; nie wiem; nie wiadomo; brak przyczyny; nie znaleziono; ignoruj*'),
  row('cs', 'not known', 'neznam*; nevim; nevime; nenalezen*; bez priciny; ignorovat'),
  row('sk', 'not known', 'neviem; nevieme; nenajden*; bez priciny'),
  row('hu', 'not known', 'ismeretlen; nem tudom; nem tudni; nincs ok; nem talalt*'),
  row('ro', 'not known', 'necunoscut*; nu stiu; nu se stie; nu am gasit; fara cauza'),
  row('tr', 'not known', 'bilinmiyor; bilmiyorum; bilinmeyen; neden yok; bulunamadi'),
  row('el', 'not known', 'αγνωστ*; δεν ξερω; δεν γνωριζω; δεν βρεθηκε'),
  row('bg', 'not known', 'неизвестн*; не знам; не е намерен*'),
  row(
    'ru',
    'not known',
    'неизвестн*; не знаю; не знаем; непонятн*; не понятно; не нашел; не найден*; без причин*; неважно',
  ),
  row('uk', 'not known', 'невідом*; не знаю; не знаємо; незрозуміл*; не знайшов; не знайден*'),
  row('ar', 'not known', 'غير معروف; مجهول; لا اعرف; لا أعرف; لا ادري'),
  row('he', 'not known', 'לא ידוע; לא יודע; לא יודעת; לא נמצא'),
  row('zh', 'not known', '不知道; 未知; 不明; 不清楚; 没找到; 沒找到; 忽略'),
  row('ja', 'not known', '不明; わからない; 分からない; わかりません; 分かりません; 知らない; 未知; 無視'),
  row('ko', 'not known', '모름; 모르겠; 모른다; 알 수 없; 불명; 무시'),
])

export const emptyWordsTable = table<EmptyWords>({
  name: 'empty-words',
  title: 'Words that tell nothing',
  intro:
    'Where a cause or a tester is asked for, these stand for none: a stop stays one, and a gate stays open. They are from memory.',
  rows: emptyWords,
  id: ({ language, about }) => [language, about],
  language: ({ language }) => language,
  columns: [
    { key: 'words', title: 'Words', between: '; ', filled: true },
    { key: 'language', title: 'Language', as: 'language' },
    { key: 'about', title: 'Tells' },
  ],
})
