/** Figures of a whole option, judged as a brief judges it: one timber of a given wood, cut, size, length and place. */
import { readAnswers } from '../choice/answers'
import * as figures from '../choice/figures'
import { type Judged, judgeAll } from '../choice/judge'
import type { Context } from '../choice/rule'
import type { Quantity } from '../data/quantity'
import type { ShopSheetContent } from '../data/shop-schema'
import type { Args } from './args'
import { once } from './once'

const FIGURES: Readonly<Record<string, figures.FigureOf>> = {
  gap: figures.gapFigure,
  housing: figures.housingFigure,
  swing: figures.swingFigure,
  twist: figures.twistFigure,
  checks: figures.checksFigure,
  face: figures.faceFigure,
  length: figures.lengthFigure,
  log: figures.logFigure,
  weight: figures.weightFigure,
  delivered: figures.deliveredFigure,
  durability: figures.durabilityFigure,
  service: (_o, facts, reference) => figures.serviceMoistureFigure(facts, reference)
}

interface Found {
  readonly lead: Judged
  readonly context: Context
}

/** The option that the arguments name, with its job. @throws Error where the shop has no such option. */
export function jobOf(args: Args, sheet: ShopSheetContent): Found {
  const wood = args.wood()
  const heart = args.word('heart', ['boxed', 'free'], 'boxed')
  const dry = args.word('dry', ['green', 'air', 'kiln', 'rfv'], 'green')
  const given = {
    project: 'beams',
    role: 'looks',
    exposure: args.exposure('lives', 'heated'),
    place: args.placeId(),
    size: args.section('size', '8x8'),
    stick: args.feet('ft', 16)
  }
  const { reference } = args
  const all = once(reference, 'job', given, () => {
    const { answers, problems } = readAnswers(given)
    if (problems.length > 0) throw new Error(`a note's job is refused: ${JSON.stringify(problems)}`)
    return judgeAll(answers, sheet, reference)
  })
  const lead = all.judged.find(({ facts: { option } }) => {
    return option.species === wood.id && option.heart === heart && option.seasoning === dry
  })
  if (!lead) throw new Error(`a note asks for ${dry} ${heart} ${wood.id}, which is no option`)
  return { lead, context: all.context }
}

/** `{{job gap wood=.. heart=.. dry=.. size=.. ft=.. place=.. lives=..}}` */
export function jobFigure(args: Args, sheet: ShopSheetContent): Quantity {
  const what = args.text('of')
  const figure = Object.hasOwn(FIGURES, what) ? FIGURES[what] : undefined
  if (!figure) throw new Error(`{{job}} knows ${Object.keys(FIGURES).join(', ')}, not "${what}"`)
  const { lead, context } = jobOf(args, sheet)
  return figure(lead.facts, context.facts, args.reference)
}
