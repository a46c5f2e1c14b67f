/** The sections of a brief below the headline, each a few sentences that carry their numbers. */
import type { Quantity, Sentence } from '../../data/quantity'
import { originOf, type Sourced } from '../../data/reference'
import { logDiameterNeeded, sectionShape } from '../../wood/section'
import { changeBetween } from '../../wood/shrinkage'
import type { Facts, LoadedBy } from '../facts'
import { hazardFigure, serviceMoistureFigure } from '../figures'
import type { Judged } from '../judge'
import type { Context } from '../rule'
import { ANSWERED, computed, PRACTICE, quantity, sentence } from '../say'
import type { Brief, LogEnd, OptionReport } from '../types'

const HANDBOOK = { key: 'wood-handbook-2010' }

const LOADED_BY: Readonly<Record<LoadedBy, string>> = {
  snow: 'snow',
  roof: 'the code’s least roof load',
  rooms: 'people and furniture',
  deck: 'people',
  storage: 'stored goods'
}

/** The variable loads as quantities, in words. */
function loadWords(c: Context): { readonly text: string; readonly values: Record<string, Quantity> } {
  const { facts, reference } = c
  const values: Record<string, Quantity> = {}
  const words = facts.variable.map(({ load, by }) => {
    const ground = quantity('areaLoad', facts.groundSnow, ANSWERED)
    const origin =
      by === 'snow' && facts.carries !== 'floor'
        ? computed(reference, 'roof-snow', { pg: ground })
        : by === 'snow'
          ? ANSWERED
          : (reference.loads.live.get(by)?.origin ?? { mark: 'practice' as const, sources: [PRACTICE] })
    values[by] = quantity('areaLoad', load, origin)
    return `{${by}} of ${LOADED_BY[by]}`
  })
  return { text: words.join(' or '), values }
}

export function sizesSection(c: Context, lead: Judged | null): Brief['sizes'] {
  const { facts, reference } = c
  if (!facts.loaded) {
    const text =
      'These timbers carry nothing, so no size is demanded. Choose what pleases the eye and what can be lifted.'
    return { demanded: false, says: [sentence(text)] }
  }
  const dead = reference.loads.dead.get(facts.dead.id)
  const what = { truss: 'king-post trusses of {span}', beam: 'plain beams of {span}', floor: 'floor beams of {span}' }[
    facts.carries
  ]
  const load = loadWords(c)
  const says = [
    sentence(
      `Each wood is sized as ${what}, {spacing} apart, for {dead} of ${facts.carries === 'floor' ? 'floor' : 'roof'} and, in turn, ${load.text}, besides its own weight, at grade ${c.sheet.grade.replace('No.', 'No. ')}.`,
      {
        span: quantity('span', facts.span, ANSWERED),
        spacing: quantity('span', facts.spacing, ANSWERED),
        dead: quantity('areaLoad', facts.dead.pressure, dead?.origin ?? { mark: 'practice', sources: [PRACTICE] }),
        ...load.values
      }
    )
  ]
  const tie = lead?.facts.frame.members.find((m) => m.id === 'tie')
  const rafter = lead?.facts.frame.members.find((m) => m.id === 'rafter')
  const beam = lead?.facts.frame.members.find((m) => m.id === 'beam')
  if (tie?.force && rafter?.force) {
    says.push(
      sentence(
        'The tie is pulled by about {pull} and each rafter foot pushes with {push}: the joint there decides, not the timber. Nothing is hung from the tie or stored on it.',
        {
          pull: quantity('force', tie.force, computed(reference, 'tie-pull')),
          push: quantity('force', rafter.force, computed(reference, 'tie-pull'))
        }
      )
    )
  }
  if (beam?.bearing) {
    says.push(
      sentence(
        'Each end of the beam needs {bearing} of bearing under it, clear of pegs and mortises, or the wood crushes.',
        {
          bearing: quantity('gap', beam.bearing, computed(reference, 'bearing'))
        }
      )
    )
  }
  says.push(
    sentence(
      'A weaker or springier wood carries the same load with a larger timber: the picture sets them side by side. Joinery often asks for more than the load does.'
    ),
    sentence(
      'Preliminary sizes, not for construction. Not in them: joints and notched ends, wind and uplift, drifted or one-sided snow, earthquake, posts without braces, and the way down to the ground. A licensed engineer designs the frame to the local code.'
    )
  )
  return { demanded: true, says }
}

/** Both cuts of the leading wood from green to service, drawn larger than they move. */
export function logEnds(lead: Judged, c: Context): LogEnd[] {
  const { wood, section } = lead.facts
  const service = Math.min(c.facts.service.mean, wood.fibreSaturation)
  const strain = (total: number) =>
    Math.max(0, changeBetween(total, wood.fibreSaturation, service, wood.fibreSaturation))
  const radial = strain(wood.radial)
  const tangential = strain(wood.tangential)
  const { dryRadial, dryTangential } = lead.facts
  const exaggeration = 3
  return (['boxed', 'free'] as const).map((heart): LogEnd => {
    const shape = sectionShape({ heart, breadth: section[0], depth: section[1], radial, tangential, exaggeration })
    const log: Quantity = quantity(
      'diameter',
      logDiameterNeeded(heart, section[0], section[1]),
      computed(c.reference, heart === 'boxed' ? 'log-boxed' : 'log-free')
    )
    const rings = 14
    return {
      heart,
      logRadius: shape.logRadius,
      ringRadii: Array.from({ length: rings }, (_, i) => (shape.logRadius * (i + 1)) / rings),
      before: shape.before,
      after: shape.after,
      exaggeration,
      says:
        heart === 'boxed'
          ? sentence(
              'Boxed heart, from a {log} log. It cannot close round the pith: the checks on a face open up to {opening} in all, drawn here as one.',
              {
                log,
                opening: quantity(
                  'gap',
                  2 * Math.PI * (section[1] / 2) * (dryTangential - dryRadial),
                  computed(c.reference, 'checks')
                )
              }
            )
          : sentence(
              'Free of heart centre, from a {log} log. It closes up slightly out of square, with no check to the pith.',
              { log }
            )
    }
  })
}

export function movementSection(report: OptionReport, judged: Judged, c: Context): Brief['movement'] {
  const f = report.figures
  const drier = judged.facts.gap > 0.4
  return {
    says: [
      drier
        ? sentence(
            'It comes at {delivered} and settles at {service}. Its {section} face shrinks {face} more, and a housed shoulder opens {gap}.',
            {
              delivered: f.moistureDelivered,
              service: f.moistureInService,
              section: f.section,
              face: f.faceShrinkage,
              gap: f.shoulderGap
            }
          )
        : sentence(
            'It comes at {delivered} and lives at {service}: next to nothing is left to shrink, but it goes on moving with the seasons.',
            {
              delivered: f.moistureDelivered,
              service: f.moistureInService
            }
          ),
      f.checkOpening
        ? sentence(
            'With its heart inside it checks: up to {checks} on a face, all openings together. Checks along the grain seldom weaken a beam; they show.',
            { checks: f.checkOpening }
          )
        : sentence('Free of heart centre it should show only fine surface checks.', undefined, [PRACTICE], 'practice'),
      sentence(
        'Draw-bored pegs pull a joint shut and hold it there; housings a little deeper than the gap hide what opens.',
        undefined,
        [PRACTICE],
        'practice'
      )
    ],
    logEnds: logEnds(judged, c)
  }
}

const WHERE: Readonly<Record<string, string>> = {
  heated: 'in a heated room',
  unheated: 'indoors without heating',
  roofed: 'outside under a roof',
  weather: 'in the weather',
  ground: 'touching the ground'
}

const MONTHS = [
  'January',
  'February',
  'March',
  'April',
  'May',
  'June',
  'July',
  'August',
  'September',
  'October',
  'November',
  'December'
]
const driestMonth = ({ service }: Facts): string =>
  MONTHS[service.months.indexOf(Math.min(...service.months))] ?? 'winter'

export function climateSection(c: Context): Brief['climate'] {
  const { facts, reference } = c
  return {
    place: facts.place.name,
    months: facts.service.outdoor.map((outdoor, i) => ({ outdoor, service: facts.service.months[i] ?? outdoor })),
    says: [
      sentence(`Near ${facts.place.name}, ${WHERE[facts.exposure]}, wood settles at about {service} over the year.`, {
        service: serviceMoistureFigure(facts, reference)
      }),
      facts.exposure === 'heated'
        ? sentence(
            `The room is driest in ${driestMonth(facts)}, so that is when gaps are widest.`,
            undefined,
            [{ key: 'derived' }],
            'derived'
          )
        : sentence(
            'A big timber follows the air slowly: its inside hardly notices a season.',
            undefined,
            [PRACTICE],
            'practice'
          )
    ]
  }
}

export function durabilitySection(report: OptionReport | null, c: Context): Brief['durability'] {
  const { facts, reference } = c
  const hazard = hazardFigure(facts, reference)
  const use = reference.decay.useClasses.find((u) => u.id === facts.useClass)
  const says: Sentence[] = []
  if (facts.exposure === 'heated' || facts.exposure === 'unheated') {
    says.push(
      sentence(
        'Indoors and dry, no fungus grows: below about 20 % moisture wood does not rot, whatever the species. Keep leaks and condensation off it.',
        undefined,
        [{ key: 'en-335-2013' }],
        'seen'
      )
    )
  } else {
    says.push(
      sentence(
        `The climate’s index for decay above ground near ${facts.place.name} is {hazard}: ${facts.hazard}. This is use class ${facts.useClass}: ${(use?.says ?? '').replace(/\.$/, '').toLowerCase()}.`,
        { hazard }
      )
    )
    if (report) {
      says.push(
        sentence(
          `${report.wood} heartwood is of durability class {class} (1 lasts longest, 5 least). Its sapwood, like all sapwood, does not last.`,
          { class: report.figures.durabilityClass }
        )
      )
    }
    const details =
      facts.exposure === 'ground'
        ? 'First advice: do not let wood touch the ground. A metal stand-off base, an inch or more clear, does more than any species.'
        : 'Details do more than species: deep eaves, posts on stand-off bases, covered end grain, joints that drain, and no pockets that hold water.'
    says.push(sentence(details, undefined, [PRACTICE], 'practice'))
    if (report && facts.exposure === 'ground') {
      const years = reference.decay.groundYears.find(
        (y) => y.durabilityClass === Math.round(Number(report.figures.durabilityClass.value))
      )
      if (years)
        says.push(
          sentence(
            `In ground contact, heartwood of that class is expected to last ${years.says.replace(/\.$/, '')}.`,
            undefined,
            originOf(years as Sourced).sources,
            years.mark
          )
        )
    }
    says.push(
      sentence(
        'Termites and beetles are not in the index, and pressure-treated timber is not among the options here: ask about both where they matter.',
        undefined,
        [PRACTICE],
        'practice'
      )
    )
    says.push(
      sentence(
        'Classes come from tests of stakes and blocks; field trials and buildings scatter widely about them, and some woods change places.',
        undefined,
        [{ key: 'highley-1995' }, { key: 'en-350-2016' }],
        'seen'
      )
    )
  }
  return { says, hazard, months: facts.hazardMonths, useClass: facts.useClass }
}

export function finishSection(judged: Judged, c: Context): Brief['finish'] {
  const { facts, reference } = c
  const { wood } = judged.facts
  const finish = reference.finishes.find((f) => f.id === facts.finish)
  const says: Sentence[] = []
  const indoors = facts.exposure === 'heated' || facts.exposure === 'unheated'
  if (finish && !(indoors && finish.id === 'grey'))
    says.push(
      sentence(
        `${finish.name}: ${finish.says.charAt(0).toLowerCase()}${finish.says.slice(1)}`,
        undefined,
        originOf(finish as Sourced).sources,
        finish.mark
      )
    )
  const outdoors = facts.exposure === 'weather' || facts.exposure === 'roofed'
  if (finish?.weatherYears && outdoors) {
    const [from = 1, to = 1] = finish.weatherYears
    says.push(
      sentence(
        `In the weather such a coat lasts about {years}; under a deep roof, longer.${facts.upkeep === 'none' ? ' With no upkeep planned, leaving the wood to grey is the honest finish.' : ''}`,
        {
          years: quantity('years', (from + to) / 2, originOf(finish as Sourced), { low: from, high: to })
        }
      )
    )
  }
  const { pitch, tannin } = wood.traits
  if (pitch.level > 0 && !judged.facts.seasoning.setsPitch) {
    says.push(
      sentence(
        `${wood.name}: ${pitch.says ?? 'it may weep pitch in warm rooms and sun unless heat has set it.'}`,
        undefined,
        pitch.origin.sources,
        pitch.origin.mark
      )
    )
  }
  const wetIron = outdoors || judged.facts.delivered > 0.2
  if (tannin.level === 2 || (tannin.level === 1 && wetIron)) {
    says.push(
      sentence(
        `${wood.name}: ${(tannin.says ?? 'its colour bleeds where it is wet.').replace(/^./, (c) => c.toLowerCase())}`,
        undefined,
        tannin.origin.sources,
        tannin.origin.mark
      )
    )
  }
  if (judged.facts.delivered > 0.2 && facts.finish !== 'grey')
    says.push(
      sentence(
        'Coat it only when its outside has dried: a film over wet wood blisters.',
        undefined,
        [{ ...HANDBOOK, where: 'p. 16-5' }],
        'seen'
      )
    )
  says.push(
    sentence(
      'Colours on a screen mislead. Ask for a sample finished on the wood itself, and look at it in your own light.',
      undefined,
      [PRACTICE],
      'practice'
    )
  )
  return { says }
}

export function costSection(lead: OptionReport, inOptions: readonly OptionReport[], c: Context): Brief['cost'] {
  const f = lead.figures
  const says: Sentence[] = [
    sentence(
      'The timber comes to about {timber}, which is {share} of the {frame} for these main timbers cut and raised: {volume} at {price}.',
      {
        timber: f.timberCost,
        share: f.timberShare,
        frame: f.jobCost,
        volume: f.volume,
        price: f.pricePerVolume
      }
    )
  ]
  const value = (q: Quantity) => (typeof q.value === 'number' ? q.value : 0)
  const cheapest = [...inOptions].sort((a, b) => value(a.figures.jobCost) - value(b.figures.jobCost))[0]
  if (
    cheapest &&
    value(cheapest.figures.jobCost) < 0.98 * value(f.jobCost) &&
    value(cheapest.figures.timberCost) < value(f.timberCost)
  ) {
    const g = cheapest.figures
    const less = (a: Quantity, b: Quantity) =>
      quantity('percent', 1 - value(b) / value(a), {
        ...computed(c.reference, 'times', { [cheapest.short]: b, [lead.short]: a }),
        mark: a.origin.mark,
        sources: a.origin.sources
      })
    says.push(
      sentence(
        `The cheapest that still does the job, ${cheapest.said} (${cheapest.heartSays}, ${cheapest.seasoningSays}), saves {timber} of the timber, and {frame} of the whole.`,
        {
          timber: less(f.timberCost, g.timberCost),
          frame: less(f.jobCost, g.jobCost)
        }
      )
    )
  } else {
    says.push(sentence('Nothing that does the job is cheaper by much.'))
  }
  says.push(
    c.sheet.placeholder
      ? sentence(
          'Every price here is a placeholder from an invented shop sheet: it shows proportions, not what you will pay. Plates, purlins, braces, joists, foundations, roofing, walls and taxes are not in it.',
          undefined,
          [{ key: 'placeholder' }],
          'placeholder'
        )
      : sentence(
          `Prices are those of ${c.sheet.name}. Plates, purlins, braces, joists, foundations, roofing, walls and taxes are not in them.`,
          undefined,
          [{ key: 'shop-sheet' }],
          'seen'
        )
  )
  return { says }
}
