/** What the finish wanted asks of one wood: how it holds, what bleeds, when it is dry enough, how often, for how much. */

import { finishCost20 } from '../../cost/upkeep'
import type { Quantity, Sentence } from '../../data/quantity'
import { originOf, type Sourced } from '../../data/reference'
import type { FinishContent } from '../../data/schema'
import { percent } from '../../data/units'
import { monthOf } from '../clock/clock'
import { monthName } from '../clock/report'
import type { Clock } from '../clock/types'
import { limit } from '../facts'
import { sheetOrigin } from '../figures'
import type { Judged } from '../judge'
import type { OptionFacts } from '../option-facts'
import type { Context } from '../rule'
import { computed, limitQuantity, quantity, sentence } from '../say'
import type { FinishLine } from '../types'
import { felledDay } from '../yard'
import { isIndoors } from './looks'
import { coatYears } from './years'

const HOLDS = ['', 'Holds a film well', 'Holds a film fairly', 'Hard to keep a film on'] as const

function takes({ wood }: OptionFacts): Sentence {
  const { paint } = wood
  if (paint?.group)
    return sentence(`${HOLDS[paint.group]}: group {group} of 3.`, {
      group: quantity('count', paint.group, paint.origin)
    })
  if (paint?.older)
    return sentence('For paint, group {group} of 5 on an older list.', {
      group: quantity('count', paint.older, paint.origin)
    })
  return sentence('No published group for paint.')
}

/** Pitch, oils, extractives: only what is there and has not been set. */
function bleeds(o: OptionFacts, finish: FinishContent, c: Context): Sentence {
  const { pitch, tannin } = o.wood.traits
  const wet = !isIndoors(c.facts) || o.delivered > percent(limit(c.reference, 'wet-service'))
  const parts: string[] = []
  const from: Sourced['mark'][] = []
  const sources: { key: string; where?: string }[] = []
  const add = (
    says: string,
    origin: { mark: Sourced['mark']; sources: readonly { key: string; where?: string }[] }
  ) => {
    parts.push(says)
    from.push(origin.mark)
    sources.push(...origin.sources)
  }
  if (pitch.level > 0)
    add(
      o.seasoning.setsPitch ? 'The heat of drying has set its pitch.' : (pitch.says ?? 'It may weep pitch.'),
      pitch.origin
    )
  if (o.wood.oils) add('Its oils creep out and spoil a film.', o.wood.oils)
  if (tannin.level === 2 || (tannin.level === 1 && wet))
    add(tannin.says ?? 'Its colour bleeds where it is wet.', tannin.origin)
  if (tannin.level > 0 && (finish.build === 'film' || finish.id === 'pale')) parts.push('Blocking primer first.')
  if (parts.length === 0) return sentence('Nothing to speak of.')
  return sentence(parts.join(' '), undefined, sources, from.includes('memory') ? 'memory' : from[0])
}

/** Moisture that the outside must come down to before it is coated; null where nothing is laid on. */
export function coatMoisture(finish: FinishContent, { facts, reference }: Context): Quantity | null {
  if (finish.build === 'none') return null
  if (finish.build === 'penetrating') return limitQuantity(reference, 'coat-penetrating', 'moisture', percent(1))
  if (!isIndoors(facts)) return limitQuantity(reference, 'coat-film-outdoors', 'moisture', percent(1))
  const usual = limitQuantity(reference, 'coat-film-indoors', 'moisture', percent(1))
  const lives = facts.service.mean + percent(limit(reference, 'coat-service-margin'))
  return lives > Number(usual.value) ? quantity('moisture', lives, computed(reference, 'service')) : usual
}

/** When the outer half inch is as dry as that, by the drying clock. */
function dry(needs: Quantity | null, curve: Clock, c: Context): Sentence {
  if (needs === null) return sentence('Nothing to wait for.')
  const raised = curve.milestones.find((m) => m.id === 'raised')?.day ?? 0
  const at = curve.days.findIndex((_, i) => (curve.shell[i] ?? 1) <= Number(needs.value))
  const day = curve.days[at]
  if (day === undefined)
    return sentence(`Asks for {needs} outside: not within ${c.reference.drying.stages.shownYears} years.`, { needs })
  if (day <= raised) return sentence('Outside at {needs} by the time it is raised.', { needs })
  const month = monthName(monthOf(felledDay(c.facts) + day))
  return sentence(`Outside at {needs} about {after} after the raising, in ${month}.`, {
    needs,
    after: quantity('weeks', (day - raised) / 7, computed(c.reference, 'clock'))
  })
}

/** What the first coat costs by the sheet's rates; null where the sheet does not price it. */
const firstCoat = (o: OptionFacts): number | null => o.bill.work.finish ?? null

export function finishLine(
  j: Judged,
  role: string | null,
  finish: FinishContent,
  curve: Clock,
  c: Context
): FinishLine {
  const { facts: o } = j
  const { reference, sheet } = c
  const life = coatYears(o.wood, finish, c)
  const bare = finish.build === 'none'
  const own = sheetOrigin(sheet.placeholder)
  const coat = bare ? 0 : firstCoat(o)
  const first = coat === null ? null : quantity('money', coat, own)
  const share = limitQuantity(reference, 'recoat-share', 'ratio')
  const upkeep = life && finishCost20(coat ?? 0, life, Number(share.value))
  const years = life
    ? quantity(
        'years',
        (life.low + life.high) / 2,
        isIndoors(c.facts)
          ? limitQuantity(reference, 'coat-indoors-low', 'years').origin
          : {
              ...computed(reference, 'coat-years'),
              sources: originOf(finish as Sourced).sources
            },
        life
      )
    : null
  const origin = { ...computed(reference, 'finish-20', { 'recoat share': share }), ...own }
  const spread = (low: number, high: number, kind: 'money' | 'count') =>
    quantity(kind, (low + high) / 2, origin, { low, high })
  return {
    species: o.wood.id,
    wood: o.wood.name,
    short: o.wood.short,
    role,
    takes: takes(o),
    bleeds: bleeds(o, finish, c),
    dry: dry(coatMoisture(finish, c), curve, c),
    years,
    recoats: upkeep && spread(upkeep.recoats.low, upkeep.recoats.high, 'count'),
    first,
    over: upkeep && first ? spread(upkeep.cost.low, upkeep.cost.high, 'money') : first
  }
}
