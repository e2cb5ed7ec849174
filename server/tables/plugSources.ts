import { commonPractice, fromMemory, published, type Source } from './source.js'

const museum = (page: string, address: string): Source =>
  published('Museum of Plugs and Sockets (plugsocketmuseum.nl)', `page ${page}, ${address}`)
const wikipedia = (article: string, detail: string): Source => published(`Wikipedia, "${article}"`, detail)
const worldStandards = (letter: string): Source => published('World Standards', `page on type ${letter}`)

export const museumEuroplug = museum('Europlug', 'Europlug1.html')
export const museumContour = museum('CEE 7/17', 'CEE-7-17_plugs.html')
export const museumHybrid = museum('E/F hybrid plugs', 'EFhybrid.html')
export const museumFrench = museum('French plugs', 'French1.html')
export const museumSwiss = museum('Swiss', 'Swiss1.html')
export const museumItalian = museum('Italian', 'Italian1.html')
export const museumIsraeli = museum('Israeli', 'Israeli1.html')
export const museumThai = museum('Thai', 'Thai_3polePlugs.html')
export const museumIec = museum('IEC 60906-1', 'IEC60906-1.html')

export const wikipediaEuroplug = wikipedia('Europlug', 'citing EN 50075:1990')
export const wikipediaEurostecker = wikipedia('Eurostecker (de)', 'sockets that take it')
export const wikipediaCee7 = wikipedia('AC power plugs and sockets', 'section CEE 7')
export const wikipediaFrench = wikipedia('AC power plugs and sockets', 'section CEE 7/5 and 7/6')
export const wikipediaSchuko = wikipedia('CEE 7 standard AC plugs and sockets', 'CEE 7/3 and 7/4')
export const wikipediaBs546 = wikipedia('AC power plugs and sockets', 'text on BS 546')
export const wikipediaBs1363 = wikipedia('AC power plugs and sockets: British and related types', 'BS 1363')
export const wikipediaNema = wikipedia('AC power plugs and sockets', 'text on NEMA 1-15')
export const wikipediaJapan = wikipedia('Housing in Japan', 'section on electricity')
export const wikipediaAustralia = wikipedia('AS/NZS 3112', 'with the Argentine and Chinese forms')
export const wikipediaTypeI = wikipedia('AC power plugs and sockets', 'section on type I')
export const wikipediaDanish = wikipedia('AC power plugs and sockets', 'text on Danish plugs')
export const wikipediaStecker = wikipedia('Stecker-Typ K (de)', 'Danish plugs and sockets')
export const wikipediaItalian = wikipedia('CEI 23-50 (de)', 'forms and sizes')
export const wikipediaIec = wikipedia('IEC 60906-1', 'with NBR 14136')

export const swissSellers = published(
  'morvantrading.co.uk, "The SEV 1011 Swiss standard"',
  'and givenonline.com, "Swiss SEV 1011"',
)
export const worldStandardsH = worldStandards('H')
export const worldStandardsO = worldStandards('O')
export const plugAndCable = published('plugandcable.com', 'plugs of the USA and Canada')
export const techwalla = published('techwalla.com', 'on outlets of 100 V and 120 V')
export const patTesting = published('pat-testing.info', 'page on the BS 1363 plug')
export const saintLucia = published('BS 1363-1:1995 + A4:2012', 'abstract of the Saint Lucia Bureau of Standards')
export const toughLeads = published('toughleads.co.uk', 'European sockets')
export const wallSwitches = published('wall-switchs.com', 'page 8772, on E and F')
export const kyAutomation = published('kyautomation.com (2026-05-22)', 'European plugs')
export const gufosaggio = published(
  'gufosaggio.net',
  'on German and Italian plugs: must be forced, and the earth is left out',
)
export const pinogiunta = published(
  'pinogiunta.com',
  'on the Italian plug: the centre contact keeps it out of other sockets',
)
export const powercords = published('powercords.co.uk and cncords.com', 'pages on plug standards')
export const forcedShutters = published('200stran.ru, text of Wikipedia on BS 1363', 'shutters opened with a tool')

export const nema = fromMemory('NEMA WD 6', 'blade shapes and ratings')
export const jis = fromMemory('JIS C 8303', 'same forms as NEMA 1-15 and 5-15')
export const gb1002 = fromMemory('GB 1002 and GB 2099.1', 'blade shapes and ratings')
export const bs546 = fromMemory('BS 546', '5 A: 5.1 mm pins on 19.1 mm; 15 A: on 25.4 mm')
export const bs1363 = fromMemory('BS 1363', 'rectangular pins and shutters')
export const bs1363Converter = fromMemory('BS 1363-5', 'converter plugs')
export const bs4573 = fromMemory('BS 4573', 'rating and dimensions')
export const swiss = fromMemory('SN 441011', '4 mm pins')
export const cei = fromMemory('CEI 23-50', 'pin sizes and combined sockets')
export const danish = fromMemory('DS 60884-2-D1', 'half-round earth pin')
export const nbr = fromMemory('NBR 14136', 'pin and hole sizes, mating of the two sizes')
export const is1293 = fromMemory('IS 1293', 'combined sockets')
export const australia = fromMemory('AS/NZS 3112', 'slanted flat pins')
export const shapesDiffer = fromMemory('IEC TR 60083', 'the plug and socket systems differ in shape')
export const rewirableSold = fromMemory("Wholesalers' catalogues", 'rewirable plugs of this type are sold in parts')
export const earthOftenMissing = commonPractice(
  'Earth holes in older outlets',
  'often not wired where earthing is not customary',
)
