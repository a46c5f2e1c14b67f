/** The section on what it costs: the bill of the leading option, and what a better wood adds to the timber and to the whole. */
import type { Quantity, Sentence } from '../../data/quantity'
import { WORK, type Work } from '../../data/shop-schema'
import { BOARD_FOOT, percent } from '../../data/units'
import { limit } from '../facts'
import type { Judged } from '../judge'
import type { Context } from '../rule'
import { ANSWERED, computed, middle, quantity, sentence } from '../say'
import type { CostLine, CostReport, OptionReport } from '../types'

const WORK_NAMES = {
  joinery: 'Joinery',
  raising: 'Raising',
  finish: 'Finish',
  engineering: 'Engineering',
  freight: 'Freight'
} as const

const value = (q: Quantity) => (typeof q.value === 'number' ? q.value : 0)

/** A share of money, marked as the prices that it comes from. */
const shareOf = (c: Context, share: number, inputs: Readonly<Record<string, Quantity>>, like: Quantity): Quantity =>
  quantity('percent', share, {
    ...computed(c.reference, 'times', inputs),
    mark: like.origin.mark,
    sources: like.origin.sources
  })

/** What `dearer` adds to `cheaper`: to the timber and to the whole, always both. */
function added(cheaper: OptionReport, dearer: OptionReport, c: Context) {
  const by = (of: 'timberCost' | 'jobCost') => {
    const [a, b] = [cheaper.figures[of], dearer.figures[of]]
    return shareOf(c, value(a) > 0 ? value(b) / value(a) - 1 : 0, { [dearer.short]: b, [cheaper.short]: a }, b)
  }
  return { timber: by('timberCost'), job: by('jobCost') }
}

function cheapestOf(reports: readonly OptionReport[]): OptionReport | undefined {
  return [...reports].sort((a, b) => value(a.figures.jobCost) - value(b.figures.jobCost))[0]
}

function linesOf(reports: readonly OptionReport[], c: Context): CostLine[] {
  const cheapest = cheapestOf(reports)
  return reports.map((report) => ({
    option: report.option.id,
    short: report.short,
    timber: middle(report.figures.timberCost),
    job: middle(report.figures.jobCost),
    adds: cheapest && report !== cheapest ? added(cheapest, report, c) : null
  }))
}

/** Against the sum that was named, or nothing where none was. */
function sumSays(total: Quantity, c: Context): Sentence[] {
  const sum = c.facts.budgetSum
  if (sum === null) return []
  const figures = { total, sum: quantity('money', sum, ANSWERED) }
  const high = total.high ?? value(total)
  const low = total.low ?? value(total)
  if (high <= sum) return [sentence('That is within your sum of {sum}, whichever way the quote comes out.', figures)]
  return [
    sentence(
      low <= sum
        ? 'Your sum of {sum} lies within that range: ask for a firm price before anything is cut.'
        : 'That is over your sum of {sum}.',
      figures
    )
  ]
}

/** The cost of one part of the work, with the sheet's rate that it comes from. */
function workFigure(part: Work, cost: number, { figures: f }: OptionReport, c: Context): Quantity {
  const charge = c.sheet.rates[part]
  const { mark, sources } = f.timberCost.origin
  const own = { mark, sources }
  const share = () => quantity('percent', percent(charge?.value ?? 0), own)
  const inputs: Record<string, Quantity> =
    charge?.by === 'board-foot'
      ? { amount: f.volume, rate: quantity('pricePerVolume', charge.value / BOARD_FOOT, own) }
      : charge?.by === 'timber-percent'
        ? { timber: f.timberCost, share: share() }
        : charge?.by === 'frame-percent'
          ? { share: share() }
          : {}
  return quantity('money', cost, { ...computed(c.reference, 'work-cost', inputs), ...own })
}

/**
 * What the leading option costs and what the others add. @param lead null where nothing passes @param woods the best
 * option of each wood that passes, as ranked
 */
export function costSection(
  lead: OptionReport | null,
  judged: Judged | null,
  woods: readonly OptionReport[],
  c: Context
): CostReport {
  const nothing = { bill: [], total: null, woods: [] }
  if (!lead || !judged) return { ...nothing, says: [sentence('No price is given for a choice that cannot be made.')] }
  const { figures: f } = lead
  const { bill } = judged.facts
  const total = f.jobCost
  const lines = [
    { name: 'Timber', cost: middle(f.timberCost) },
    ...WORK.flatMap((part) => {
      const cost = bill.work[part]
      return cost === undefined ? [] : [{ name: WORK_NAMES[part], cost: workFigure(part, cost, lead, c) }]
    })
  ]
  return { says: [...saysOf(lead, total, woods, c), pricesSay(c)], bill: lines, total, woods: linesOf(woods, c) }
}

function saysOf(lead: OptionReport, total: Quantity, woods: readonly OptionReport[], c: Context): Sentence[] {
  const f = lead.figures
  const says = [
    sentence(
      'The timber costs {timber}, about {share} of the whole: {volume} at {price}. These main timbers, cut and raised, cost {frame}; a quote may fall anywhere in such a range.',
      { timber: f.timberCost, share: f.timberShare, frame: total, volume: f.volume, price: f.pricePerVolume }
    ),
    ...sumSays(total, c)
  ]
  const cheapest = cheapestOf(woods)
  if (
    !cheapest ||
    !(value(f.jobCost) / value(cheapest.figures.jobCost) - 1 > percent(limit(c.reference, 'price-near')))
  ) {
    return [...says, sentence('Nothing that does the job is cheaper by much.')]
  }
  const adds = added(cheapest, lead, c)
  return [
    ...says,
    sentence(
      `The cheapest that still does the job is ${cheapest.said} (${cheapest.heartSays}, ${cheapest.seasoningSays}). Against it, ${lead.said} adds {timber} to the timber and {frame} to the whole.`,
      { timber: adds.timber, frame: adds.job }
    )
  ]
}

function pricesSay({ sheet }: Context): Sentence {
  const out = 'Plates, purlins, braces, joists, foundations, roofing, walls and taxes are not in'
  return sheet.placeholder
    ? sentence(
        `Every price here is a placeholder from an invented shop sheet: it shows proportions, not what you will pay. ${out} it.`,
        undefined,
        [{ key: 'placeholder' }],
        'placeholder'
      )
    : sentence(`Prices are this shop’s own. ${out} them.`, undefined, [{ key: 'shop-sheet' }], 'seen')
}
