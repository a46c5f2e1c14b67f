/** Sections that the engine finds for a job, for notes on sizes. */
import { ladderReport } from '../choice/ladder/report'
import { DRYNESS, GRADES, KINDS, type LadderAsked, type LadderReport } from '../choice/ladder/types'
import type { Quantity } from '../data/quantity'
import type { ShopSheetContent } from '../data/shop-schema'
import { FOOT, PSF } from '../data/units'
import type { Args } from './args'
import { once } from './once'

/** A job by its arguments; a beam of 16 ft under a heated room's roof where they say nothing. */
export function ladderOfArgs(args: Args, sheet: ShopSheetContent): LadderReport {
  const span = args.feet('ft', 16)
  const asked: LadderAsked = {
    kind: args.word('kind', KINDS, 'beam'),
    span,
    width: args.feet('every', 8),
    slope: args.number('slope', 8) / 12,
    height: 9 * FOOT,
    bears: args.word('bears', ['roof', 'roof-slate', 'rooms', 'deck', 'storage'], 'roof'),
    snow: args.number('snow', 40) * PSF,
    lives: args.word('lives', ['heated', 'unheated', 'weather'], 'heated'),
    dryness: args.word('dry', DRYNESS, 'green'),
    grade: args.word('grade', Object.keys(GRADES), 'no1'),
    surface: 'full-sawn',
    loads: '',
    wood: args.wood().id,
    ...resting(span)
  }
  return once(args.reference, 'ladder', asked, () => {
    const found = ladderReport(asked, args.reference, sheet)
    if ('problems' in found) throw new Error(`a note's ladder is refused: ${found.problems.map((p) => p.field).join()}`)
    return found
  })
}

/** The slots for point loads want a weight and a place even where none is used. */
const resting = (span: number) => ({
  point1: 1000,
  at1: span / 2,
  point2: 1000,
  at2: span / 2,
  point3: 1000,
  at3: span / 2,
  point4: 1000,
  at4: span / 2
})

/** `{{ladder section wood=.. ft=..}}` */
export function ladderFigure(args: Args, sheet: ShopSheetContent): Quantity {
  const what = args.word('of', ['section', 'used', 'volume'])
  const { lines, asked } = ladderOfArgs(args, sheet)
  const found = lines.find((l) => l.wood === asked.wood)?.[what]
  if (!found) throw new Error(`no ${what} of ${asked.wood} passes`)
  return found
}
