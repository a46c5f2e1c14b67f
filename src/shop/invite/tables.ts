/**
 * What links of version 2 leave out because both ends know it. FROZEN: one changed character here and every link made
 * before turns to noise. Anything new needs a new version of the link, with tables of its own beside these.
 */

/** Woods by their place in this list. One that is not in it travels by its id. */
export const WOODS_2 = [
  'alaska-yellow-cedar',
  'american-beech',
  'american-chestnut',
  'atlantic-white-cedar',
  'baldcypress',
  'black-cherry',
  'black-locust',
  'black-walnut',
  'douglas-fir',
  'douglas-fir-interior',
  'eastern-hemlock',
  'eastern-redcedar',
  'eastern-white-pine',
  'engelmann-spruce',
  'giant-sequoia',
  'grand-fir',
  'hickory',
  'incense-cedar',
  'lodgepole-pine',
  'longleaf-pine',
  'northern-white-cedar',
  'ponderosa-pine',
  'port-orford-cedar',
  'red-oak',
  'red-pine',
  'red-spruce',
  'redwood',
  'sitka-spruce',
  'southern-pine',
  'sugar-maple',
  'tamarack',
  'western-hemlock',
  'western-larch',
  'western-redcedar',
  'western-white-pine',
  'white-ash',
  'white-fir',
  'white-oak',
  'white-spruce',
  'yellow-poplar'
] as const

export const GRADES_2 = ['Select Structural', 'No.1', 'No.2'] as const
export const SEASONINGS_2 = ['green', 'air', 'kiln', 'rfv'] as const
export const CHARGES_2 = ['board-foot', 'timber-percent', 'frame-percent', 'sum'] as const
export const WORK_2 = ['joinery', 'raising', 'finish', 'engineering', 'freight'] as const
export const FREE_2 = ['usual', 'request', 'no'] as const

/** A common series of sizes, in inches: a sheet that saws just these carries none of them. */
export const SIZES_2: readonly (readonly [number, number])[] = [
  ...[6, 8, 10, 12].map((d) => [6, d] as const),
  ...[8, 10, 12, 14, 16].map((d) => [8, d] as const),
  ...[10, 12, 14, 16].map((d) => [10, d] as const),
  ...[12, 14, 16, 18].map((d) => [12, d] as const),
  ...[14, 16, 18].map((d) => [14, d] as const),
  ...[16, 20].map((d) => [16, d] as const)
]

/** Text that the packer may point back to: words of shops and their notes, then answers as they are written. Commonest last. */
export const DICTIONARY_2 =
  'appointment weather kept dry standing dead salvaged reclaimed local sawmill sawn to order minimum order delivery ' +
  'available on request, please call or write; telephone email @ www. .com .net .org invented Sample shop ' +
  'Timber Framing Timberworks Timber Frames Woodworks Sawmill & Sons Joinery Company Inc. LLC Street Road ' +
  'free of heart centre, boxed heart, kiln-dried, air-dried, green, planed, rough sawn, knots, clear, checks, ' +
  'Timbers are raised within a month of cutting, or kept wrapped and stickered. Prices are for the timber alone. ' +
  'longer lengths only long lead time from our own woods from the mountains Douglas-fir pine oak larch cedar hemlock ' +
  '"baton-rouge-la""portland-or""seattle-wa""burlington-vt""-ny""-pa""-me""-nh""-ma""-mi""-mn""-wi""-co""-id""-mt"' +
  '"weather","ground","roofed","unheated","heated","sheltered","usual","holding","house","barn","porch","pergola",' +
  '"beams","looks","mid","painted","grey","pale","dark","clear","tight","small","never","rather-not","fine","few",' +
  '"regular","seldom","w6","w13","w104","w26","w52","months","year","weeks","next-year","first-winter","at-once",' +
  '"lowest","quality","fair","must","no-matter","rather","any","some","unsure","none",' +
  '"spring","summer","autumn","king","king-struts","queen","truss":"king","budgetSum":"none","begins":"winter",' +
  '"role":"structure","details":"usual","depthLimit":"none","size":"none","resin":"rather-not","upkeep":"seldom",' +
  '"knots":"some","checks":"some","joints":"small","finish":"clear","stands":"w52","waits":"weeks",' +
  '"heating":"first-winter","budget":"fair","local":"rather","order":["durability","movement","cost","look",' +
  '"stoutness","time","local"],"exposure":"heated","place":"project":"great-room","pavilion","carries":"truss",' +
  '"beam","floor","span":4876.8,"spacing":3657.6,"count":4,"slope":0.6666666666666666,"snow":1436.4,' +
  '"postHeight":3048,"stick":6096,0.75,0.5,"0,0,0,],[,1],[,2],[,3.5],[4.5,0,1],[["i",["b",["a",{"'
