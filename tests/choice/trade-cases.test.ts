/**
 * Jobs whose answer any experienced framer knows. Source of what must come out: common practice in the trade.
 * They run the whole of `makeBrief` on the real data and the sample shop sheet; nothing here is fixed by name in the engine.
 */
import { describe, expect, it } from 'vitest'
import { makeBrief as wholeBrief } from '../../src/choice/brief'
import type { Brief } from '../../src/choice/brief-types'
import { plausibleAnswers } from '../../src/choice/facts'
import { whatIfNow } from '../../src/choice/firm/what-if'
import { judgeAll } from '../../src/choice/judge'
import { questionOf } from '../../src/choice/questions'
import { totalOf } from '../../src/choice/score'
import { type Answers, CRITERIA, type Criterion, type OptionReport } from '../../src/choice/types'
import { FOOT, INCH, PSF } from '../../src/data/units'
import { reference, sheet } from '../reference'

/** Every brief made here, so that what holds for all of them is asked of all of them. */
const made: Brief[] = []
const jobs = new Map<Brief, Parameters<typeof wholeBrief>>()
const makeBrief: typeof wholeBrief = (...job) => {
  const brief = wholeBrief(...job)
  made.push(brief)
  jobs.set(brief, job)
  return brief
}

const wood = (brief: Brief, id: string) => {
  const line = brief.woods.find((w) => w.species === id)
  if (!line) throw new Error(`the brief does not account for ${id}`)
  return line
}
const rules = (report: OptionReport, effect?: string) =>
  report.reasons.filter((r) => !effect || r.effect === effect).map((r) => r.rule)
const area = (report: OptionReport) => {
  const [b, d] = report.figures.section.value as readonly [number, number]
  return b * d
}
/** Place in the list of woods, first is 0. */
const placeOf = (brief: Brief, id: string) => brief.woods.findIndex((w) => w.species === id)
const optionsOf = (answers: Answers, species: string) =>
  judgeAll(answers, sheet, reference).judged.filter((j) => j.facts.option.species === species)

describe('a. pavilion in the weather, moderate decay hazard, left to grey, no upkeep, 16 ft spans', () => {
  const brief = makeBrief(
    {
      project: 'pavilion',
      role: 'structure',
      exposure: 'weather',
      place: 'madison-wi',
      carries: 'beam',
      span: 16 * FOOT,
      spacing: 8 * FOOT,
      count: 3,
      slope: 6 / 12,
      snow: 30 * PSF,
      postHeight: 8 * FOOT,
      finish: 'grey',
      upkeep: 'none',
      order: ['durability', 'cost', 'movement', 'look', 'stoutness', 'local', 'time']
    },
    sheet,
    reference
  )
  it('a naturally durable wood leads', () => {
    expect(Number(brief.lead?.figures.durabilityClass.value)).toBeLessThanOrEqual(2.5)
  })
  it('spruce, white pine and hemlock are ruled out by decay', () => {
    for (const id of [
      'white-spruce',
      'red-spruce',
      'engelmann-spruce',
      'eastern-white-pine',
      'eastern-hemlock',
      'western-hemlock'
    ]) {
      expect(wood(brief, id).in, id).toBe(false)
      expect(rules(wood(brief, id).report, 'out'), id).toContain('decay-weather')
    }
  })
  it('redcedar needs a visibly larger section than Douglas-fir', () => {
    expect(area(wood(brief, 'western-redcedar').report)).toBeGreaterThanOrEqual(
      1.15 * area(wood(brief, 'douglas-fir').report)
    )
  })
})

describe('b. great-room trusses indoors, 28 ft clear, snow 35 psf, mid stain', () => {
  const answers: Answers = {
    project: 'great-room',
    role: 'structure',
    exposure: 'heated',
    place: 'minneapolis-st-paul-mn',
    carries: 'truss',
    span: 28 * FOOT,
    spacing: 12 * FOOT,
    count: 4,
    slope: 8 / 12,
    snow: 35 * PSF,
    postHeight: 'none',
    finish: 'mid',
    checks: 'some',
    joints: 'small',
    resin: 'rather-not',
    stands: 'w52',
    order: ['movement', 'look', 'stoutness', 'cost', 'time', 'durability', 'local']
  }
  const brief = makeBrief(answers, sheet, reference)
  it('Douglas-fir free of heart centre leads', () => {
    expect(brief.lead?.option.species).toBe('douglas-fir')
    expect(brief.lead?.option.heart).toBe('free')
  })
  it('redcedar is possible, only stout, with a caution on tension and splitting', () => {
    const cedar = wood(brief, 'western-redcedar')
    expect(cedar.in).toBe(true)
    expect(rules(cedar.report, 'caution')).toEqual(
      expect.arrayContaining(['strength-stout', 'strength-tension-splits'])
    )
  })
  it('spruce and white pine stand well down, with strength, pitch and lengthwise shrinkage among the reasons', () => {
    const ids = [
      'white-spruce',
      'red-spruce',
      'engelmann-spruce',
      'eastern-white-pine',
      'ponderosa-pine',
      'lodgepole-pine',
      'red-pine'
    ]
    for (const id of ids) expect(placeOf(brief, id), id).toBeGreaterThanOrEqual(8)
    const all = new Set(ids.flatMap((id) => optionsOf(answers, id).flatMap((j) => j.fired.map((r) => r.id))))
    expect([...all].some((id) => id.startsWith('strength-'))).toBe(true)
    expect([...all]).toEqual(expect.arrayContaining(['look-pitch', 'movement-lengthwise']))
  })
})

describe('c. beams for looks only, heated indoors, lowest budget, dark stain', () => {
  const brief = makeBrief(
    {
      project: 'beams',
      role: 'looks',
      exposure: 'heated',
      place: 'burlington-vt',
      finish: 'dark',
      budget: 'lowest',
      checks: 'fine',
      joints: 'fine',
      knots: 'any',
      resin: 'fine',
      order: ['cost', 'look', 'movement', 'time', 'local', 'stoutness', 'durability']
    },
    sheet,
    reference
  )
  const cheap = /spruce|pine|hemlock/
  it('spruce, pine or hemlock are allowed and lead', () => {
    expect(brief.lead?.option.species).toMatch(cheap)
    for (const id of ['eastern-white-pine', 'white-spruce', 'eastern-hemlock'])
      expect(wood(brief, id).in, id).toBe(true)
  })
  it('boxed heart is fine', () => expect(brief.lead?.option.heart).toBe('boxed'))
  it('no sections are demanded', () => {
    expect(brief.sizes.demanded).toBe(false)
    expect(brief.lead?.members).toEqual([])
  })
})

describe('d. a pale finish', () => {
  const brief = makeBrief(
    { project: 'great-room', role: 'looks', exposure: 'heated', place: 'denver-co', finish: 'pale' },
    sheet,
    reference
  )
  it('redwood, giant sequoia and redcedar fall, because their own colour wins', () => {
    for (const id of ['redwood', 'giant-sequoia', 'western-redcedar']) {
      expect(wood(brief, id).in, id).toBe(false)
      expect(rules(wood(brief, id).report, 'out'), id).toContain('look-too-dark')
    }
  })
  it('a light wood is left to lead', () => {
    const lead = reference.woods.get(brief.lead?.option.species ?? '')
    expect(lead?.colour.L).toBeGreaterThan(65)
  })
})

describe('e. green white oak, frame raised a year after cutting', () => {
  const answers: Answers = {
    role: 'structure',
    exposure: 'heated',
    place: 'albany-ny',
    carries: 'beam',
    span: 14 * FOOT,
    spacing: 8 * FOOT,
    snow: 40 * PSF,
    stands: 'w104',
    waits: 'year',
    joints: 'small'
  }
  const brief = makeBrief(answers, sheet, reference)
  it('is allowed with a strong caution to raise soon after cutting', () => {
    const green = optionsOf(answers, 'white-oak').filter((j) => j.facts.option.seasoning === 'green')
    const allowed = green.filter((j) => j.in)
    expect(allowed.length).toBeGreaterThan(0)
    for (const j of allowed) expect(j.fired.map((r) => r.id)).toContain('green-waits')
  })
  it('or a drier option leads', () => expect(brief.lead?.option.seasoning).not.toBe('green'))
})

describe('f. one 40 ft stick, 12 x 16 in, free of heart', () => {
  const answers: Answers = {
    role: 'looks',
    exposure: 'heated',
    place: 'portland-or',
    stick: 40 * FOOT,
    size: [12 * INCH, 16 * INCH],
    checks: 'few',
    stands: 'none'
  }
  const brief = makeBrief(answers, sheet, reference)
  it('only woods whose trees give it stay in', () => {
    const inWoods = brief.woods.filter((w) => w.in)
    expect(inWoods.length).toBeGreaterThan(0)
    for (const w of inWoods) {
      const { supply } = reference.woods.get(w.species) ?? { supply: { longest: 0, log: 0 } }
      expect(supply.longest, w.species).toBeGreaterThanOrEqual(40 * FOOT - 1)
      expect(supply.log, w.species).toBeGreaterThanOrEqual(29 * INCH)
    }
    expect(inWoods.map((w) => w.species)).toContain('douglas-fir')
  })
  it('the lead is free of heart and shows the log it needs, about 30 in', () => {
    expect(brief.lead?.option.heart).toBe('free')
    const log = Number(brief.lead?.figures.logDiameter.value) / INCH
    expect(log).toBeGreaterThan(29)
    expect(log).toBeLessThan(31)
  })
  it('oak is out on length', () => {
    for (const id of ['white-oak', 'red-oak']) {
      expect(rules(wood(brief, id).report, 'out'), id).toContain('supply-length')
    }
  })
})

describe('g. posts that touch the ground', () => {
  const brief = makeBrief(
    {
      project: 'pergola',
      role: 'structure',
      exposure: 'ground',
      place: 'atlanta-ga',
      carries: 'beam',
      span: 10 * FOOT,
      spacing: 8 * FOOT,
      snow: 5 * PSF,
      postHeight: 8 * FOOT,
      size: 'none'
    },
    sheet,
    reference
  )
  it('nothing untreated stays in but the most durable', () => {
    for (const w of brief.woods.filter((x) => x.in))
      expect(reference.woods.get(w.species)?.durability.best, w.species).toBe(1)
    expect(wood(brief, 'black-locust').in).toBe(true)
    for (const id of ['douglas-fir', 'white-oak', 'western-redcedar']) expect(wood(brief, id).in, id).toBe(false)
  })
  it('a stand-off base is the first advice', () => {
    const advice = brief.durability.says.map((s) => s.text).find((t) => t.startsWith('First advice'))
    expect(advice).toMatch(/stand-off base/)
  })
})

describe('h. a porch under a roof in the desert', () => {
  const porch: Answers = {
    project: 'porch',
    role: 'structure',
    exposure: 'roofed',
    place: 'las-vegas-nv',
    carries: 'beam',
    span: 12 * FOOT,
    spacing: 8 * FOOT,
    snow: 0,
    postHeight: 8 * FOOT,
    joints: 'small'
  }
  const outside = makeBrief(porch, sheet, reference)
  const inside = makeBrief({ ...porch, exposure: 'heated' }, sheet, reference)
  it('decay hazard is low and Douglas-fir is fine outside', () => {
    expect(Number(outside.durability.hazard.value)).toBeLessThan(35)
    const fir = wood(outside, 'douglas-fir')
    expect(fir.in).toBe(true)
    expect(rules(fir.report, 'caution').filter((id) => id.startsWith('decay'))).toEqual([])
  })
  it('indoors the service moisture is about 6 %', () => {
    expect(Number(inside.lead?.figures.moistureInService.value)).toBeGreaterThan(0.05)
    expect(Number(inside.lead?.figures.moistureInService.value)).toBeLessThan(0.07)
  })
  it('and green timber shrinks more there than in a heated room elsewhere', () => {
    const strain = (place: string) =>
      optionsOf({ ...porch, exposure: 'heated', place }, 'douglas-fir').find(
        (j) => j.facts.option.seasoning === 'green'
      )?.facts.faceStrain ?? 0
    for (const place of ['madison-wi', 'atlanta-ga', 'seattle-wa'])
      expect(strain('las-vegas-nv'), place).toBeGreaterThan(strain(place))
  })
})

describe('i. must stand in six weeks, 10 x 10', () => {
  const answers: Answers = {
    role: 'structure',
    exposure: 'unheated',
    place: 'boston-ma',
    carries: 'beam',
    span: 12 * FOOT,
    spacing: 8 * FOOT,
    snow: 35 * PSF,
    size: [10 * INCH, 10 * INCH],
    stands: 'w6'
  }
  const judging = judgeAll(answers, sheet, reference)
  const brief = makeBrief(answers, sheet, reference)
  it('air drying is ruled out by time, in every wood', () => {
    const air = judging.judged.filter((j) => j.facts.option.seasoning === 'air')
    expect(air.length).toBeGreaterThan(20)
    for (const j of air)
      expect(
        j.fired.filter((r) => r.effect === 'out').map((r) => r.id),
        j.facts.option.id
      ).toContain('time-air')
  })
  it('something can still stand in time', () => {
    expect(judging.judged[0]?.in).toBe(true)
    expect(brief.lead).not.toBeNull()
  })
})

describe('j. plaster between the timbers, joints must stay tight', () => {
  const answers: Answers = {
    project: 'house',
    role: 'structure',
    exposure: 'heated',
    place: 'hartford-ct',
    carries: 'beam',
    span: 14 * FOOT,
    spacing: 8 * FOOT,
    snow: 30 * PSF,
    joints: 'tight',
    checks: 'few',
    stands: 'w52'
  }
  const brief = makeBrief(answers, sheet, reference)
  it('dried to the core and free of heart is favoured', () => {
    expect(brief.lead?.option.heart).toBe('free')
    expect(['kiln', 'rfv']).toContain(brief.lead?.option.seasoning)
  })
  it('green is ruled out or strongly cautioned', () => {
    const green = judgeAll(answers, sheet, reference).judged.filter((j) => j.facts.option.seasoning === 'green')
    for (const j of green) {
      const spoken = j.fired.filter((r) => r.effect !== 'favour').map((r) => r.id)
      expect(
        spoken.some((id) => ['movement-tight-green', 'movement-gap', 'movement-few-checks'].includes(id)),
        j.facts.option.id
      ).toBe(true)
    }
  })
})

describe('k. an eastern shop with only hemlock, white pine, red and white oak', () => {
  const few = ['eastern-hemlock', 'eastern-white-pine', 'red-oak', 'white-oak']
  const eastern = { ...sheet, woods: sheet.woods.filter((w) => few.includes(w.species)) }
  const brief = makeBrief(
    {
      project: 'barn',
      role: 'structure',
      exposure: 'unheated',
      place: 'concord-nh',
      carries: 'beam',
      span: 14 * FOOT,
      spacing: 10 * FOOT,
      snow: 60 * PSF,
      postHeight: 10 * FOOT,
      order: ['stoutness', 'cost', 'durability', 'movement', 'look', 'time', 'local']
    },
    eastern,
    reference
  )
  it('the answer is one of those', () => {
    expect(few).toContain(brief.lead?.option.species)
    expect(brief.woods.map((w) => w.species).sort()).toEqual([...few].sort())
  })
  it('hemlock stands above pine for load', () => {
    expect(placeOf(brief, 'eastern-hemlock')).toBeLessThan(placeOf(brief, 'eastern-white-pine'))
    expect(area(wood(brief, 'eastern-hemlock').report)).toBeLessThanOrEqual(
      area(wood(brief, 'eastern-white-pine').report)
    )
  })
})

describe('l. "not sure" to everything', () => {
  const ids = [
    'project',
    'role',
    'exposure',
    'place',
    'carries',
    'span',
    'spacing',
    'count',
    'slope',
    'snow',
    'postHeight',
    'stick',
    'size',
    'depthLimit',
    'finish',
    'knots',
    'checks',
    'joints',
    'resin',
    'upkeep',
    'stands',
    'waits',
    'heating',
    'budget',
    'local',
    'order'
  ]
  const brief = makeBrief(Object.fromEntries(ids.map((id) => [id, 'unsure'])), sheet, reference)
  it('is still a brief', () => {
    expect(brief.lead).not.toBeNull()
    expect(brief.job.every((line) => line.assumed)).toBe(true)
  })
  it('says how open it is and which questions would settle it', () => {
    expect(brief.sure.of).toBeGreaterThan(1)
    expect(brief.sure.firstIn).toBeLessThan(brief.sure.of)
    expect(brief.sure.settle.filter((q) => q.changes > 0).length).toBeGreaterThan(1)
  })
  it('and an empty set of answers gives the same choice', () => {
    expect(makeBrief({}, sheet, reference).lead?.option.id).toBe(brief.lead?.option.id)
  })
})

describe('m. a pergola near Seattle in a weak wood: caps, stand-off feet and joints that drain', () => {
  const pergola: Answers = {
    project: 'pergola',
    role: 'looks',
    exposure: 'weather',
    place: 'seattle-wa',
    size: [8 * INCH, 8 * INCH],
    finish: 'grey',
    stands: 'none'
  }
  const plain = makeBrief(pergola, sheet, reference)
  const shed = makeBrief({ ...pergola, details: 'sheltered' }, sheet, reference)
  it('western hemlock (class 4) is out by default and in, with a caution, where water is shed', () => {
    expect(Number(plain.durability.hazard.value)).toBeLessThan(65)
    expect(rules(wood(plain, 'western-hemlock').report, 'out')).toContain('decay-weather')
    expect(wood(shed, 'western-hemlock').in).toBe(true)
    expect(rules(wood(shed, 'western-hemlock').report, 'caution')).toContain('decay-roofed')
  })
  it('and the brief says what the details did', () => {
    expect(plain.durability.useClass).toBe('3.2')
    expect(shed.durability.useClass).toBe('3.1')
    expect(shed.durability.says.map((s) => s.text).join(' ')).toContain('a step towards shelter')
  })
})

describe('n. a durable wood whose joints hold water', () => {
  const deck: Answers = {
    role: 'looks',
    exposure: 'weather',
    place: 'madison-wi',
    details: 'holding',
    size: [6 * INCH, 6 * INCH],
    stick: 8 * FOOT,
    stands: 'none'
  }
  const brief = makeBrief(deck, sheet, reference)
  it('stays in, with a caution for the water traps', () => {
    for (const id of ['white-oak', 'western-redcedar', 'black-locust']) {
      expect(wood(brief, id).in, id).toBe(true)
      expect(rules(wood(brief, id).report, 'caution'), id).toContain('decay-traps')
    }
  })
  it('lasts less than where the usual details let it dry', () => {
    const score = (details: string) =>
      optionsOf({ ...deck, details }, 'western-redcedar')[0]?.scores.durability ?? Number.NaN
    expect(score('holding')).toBeLessThan(score('usual'))
    expect(score('usual')).toBeLessThan(score('sheltered'))
  })
})

describe('o. big red oak, air-dried for a frame in half a year, felled in spring or in autumn', () => {
  const dry = (begins: string) => {
    const job: Answers = { place: 'madison-wi', exposure: 'roofed', stands: 'w26', size: [7 * INCH, 9 * INCH], begins }
    const oak = optionsOf(job, 'red-oak').find((j) => j.facts.option.id === 'red-oak/boxed/air')
    if (!oak) throw new Error('no air-dried red oak')
    return oak.facts
  }
  const [spring, autumn] = [dry('spring'), dry('autumn')]
  it('both lie in the yard for all that the date leaves', () => {
    expect(spring.yardWeeks).toBeGreaterThan(15)
    expect(spring.yardWeeks).toBeCloseTo(autumn.yardWeeks, 9)
    expect(spring.readyWeeks).toBeCloseTo(26, 9)
  })
  it('the one that had the summer comes drier, and has more of its shrinkage behind it', () => {
    expect(spring.delivered).toBeLessThan(autumn.delivered - 0.02)
    expect(spring.gap).toBeLessThan(autumn.gap)
  })
})

describe('in every one of these, whose weights another wood or cut would suit', () => {
  type Weights = Readonly<Record<Criterion, number>>
  const cut = (id: string) => id.split('/').slice(0, 2).join('/')
  /** The option that is judged first when the points weigh otherwise. */
  const firstUnder = (brief: Brief, weights: Weights) =>
    brief.options
      .filter((o) => o.in)
      .map((o) => ({ id: o.option.id, total: totalOf(o.scores, weights) }))
      .sort((p, q) => q.total - p.total || (p.id < q.id ? -1 : 1))[0]?.id ?? ''
  /** The client's weights with some moved, the rest in their old proportions; points that tell nothing here stay out. */
  const moved = (brief: Brief, there: Weights, ids: readonly Criterion[]): Weights => {
    const own = (id: Criterion) => (there[id] > 0 ? brief.weights[id] : 0)
    const kept = CRITERIA.filter((id) => !ids.includes(id)).reduce((s, id) => s + own(id), 0)
    const left = 1 - ids.reduce((s, id) => s + there[id], 0)
    const weights = CRITERIA.map((id) => [id, ids.includes(id) ? there[id] : (own(id) / kept) * left])
    return Object.fromEntries(weights) as Weights
  }
  const cases = () => made.flatMap((brief) => (brief.sure.weights ? [{ brief, report: brief.sure.weights }] : []))

  it('all of them have an answer', () => {
    expect(made.length).toBeGreaterThanOrEqual(14)
    expect(cases().length).toBe(made.length)
    expect(cases().flatMap((c) => c.report.others).length).toBeGreaterThan(15)
  })
  it('its central weights put it first when judged', () => {
    for (const { brief, report } of cases())
      for (const other of report.others) {
        expect(CRITERIA.reduce((s, id) => s + other.weights[id], 0)).toBeCloseTo(1, 9)
        expect(firstUnder(brief, other.weights), brief.title.text).toBe(other.option)
      }
  })
  it('moving only the weights that the sentence names changes the recommendation to it, and no fewer do', () => {
    for (const { brief, report } of cases())
      for (const { option, weights, named, says } of report.others) {
        expect(cut(option)).not.toBe(cut(brief.lead?.option.id ?? ''))
        expect(cut(firstUnder(brief, moved(brief, weights, named))), says.text).toBe(cut(option))
        for (const spared of named) {
          const fewer = named.filter((id) => id !== spared)
          expect(cut(firstUnder(brief, moved(brief, weights, fewer))), `${says.text} ${spared}`).not.toBe(cut(option))
        }
        for (const id of named) {
          expect(says.values?.[`${id}There`]?.value).toBeCloseTo(weights[id], 12)
          expect(says.text).toContain(
            weights[id] > Number(says.values?.[`${id}Own`]?.value) ? 'more about' : 'less about'
          )
        }
      }
  })
  it('shares are told largest first and never exceed the whole; none that chance could make is told', () => {
    for (const { report } of cases()) {
      const shares = report.others.map((o) => o.share)
      expect(report.share + shares.reduce((s, x) => s + x, 0)).toBeLessThanOrEqual(1 + 1e-9)
      expect(shares).toEqual([...shares].sort((p, q) => q - p))
      for (const share of shares) expect(share).toBeGreaterThan(report.error)
    }
  })
  it('what is first as answered is first under some weights, and under most where the client gave an order', () => {
    for (const { brief, report } of cases()) {
      const own = cut(firstUnder(brief, brief.weights))
      const leads = own === cut(brief.lead?.option.id ?? '')
      const share = leads ? report.share : (report.others.find((o) => cut(o.option) === own)?.share ?? 0)
      expect(share, brief.title.text).toBeGreaterThan(report.ordered ? 0.5 : report.error)
      expect(report.says.text.includes('safer over your open answers'), brief.title.text).toBe(!leads)
    }
  })
})

describe('in every one of these, how firm the answer is, and what would change it', () => {
  const cut = (id: string | undefined) => (id ?? 'none').split('/').slice(0, 2).join('/')
  const cases = () => [...jobs]
  /** An answer by its words in a list of what would change the choice. */
  const answerOf = (question: string, words: string, answers: Answers) => {
    const q = questionOf(question)
    if (q?.kind === 'choice') return q.choices.find((c) => c.label === words)?.id ?? ''
    const first = q?.kind === 'order' ? q.choices.find((c) => `${c.label} first` === words)?.id : undefined
    if (first === undefined) throw new Error(`${question}: ${words}`)
    const now = answers[question]
    return [first, ...(Array.isArray(now) ? now : CRITERIA).filter((id) => id !== first)]
  }
  const found = new Map<Brief, ReturnType<typeof whatIfNow>['turns']>()
  /** Other woods, cuts and drynesses, with what leads to them. */
  const turnsOf = (brief: Brief) => {
    const [answers, shop, ref] = jobs.get(brief) ?? [{}, sheet, reference]
    const turns = found.get(brief) ?? whatIfNow(answers, shop, ref).turns.filter((t) => t.effect !== 'size')
    found.set(brief, turns)
    return turns
  }

  it('it says plainly how firm it is, as answered, over what is open, and over what the points weigh', () => {
    for (const [brief] of cases()) {
      const { sure } = brief
      expect(sure.says.text, brief.title.text).toMatch(/comes first|rests on your answers|taken as usual|safest/)
      if (brief.runnerUp) expect(sure.says.text).toMatch(/points of 100/)
      expect(sure.weights?.says.text).toMatch(/^Of all ways to weigh the points/)
      const held = sure.weights?.confidence
      if (held !== null && held !== undefined) {
        expect(held).toBeGreaterThanOrEqual(0)
        expect(held).toBeLessThanOrEqual(1)
        expect(sure.weights?.holds?.text).toContain('give or take {error}')
      }
    }
  })

  it('an answer that it names as changing the wood, cut or dryness does, as judged', () => {
    let held = 0
    for (const [brief, [answers, shop, ref]] of cases()) {
      const best = (more: Answers) => {
        const [first] = judgeAll({ ...answers, ...more }, shop, ref).judged
        return first?.in ? first.facts.option.id : 'none'
      }
      const turns = turnsOf(brief)
      expect(turns.length, brief.title.text).toBeGreaterThan(0)
      for (const turn of turns)
        for (const { question, words } of turn.when) {
          expect(best({ [question]: answerOf(question, words, answers) }), `${question} ${words}`).not.toBe(best({}))
          held++
        }
    }
    expect(held).toBeGreaterThan(30)
  }, 60_000)

  it('and so does the brief that is made with it, for every one of these jobs', () => {
    for (const [brief, [answers, shop, ref]] of cases()) {
      const turns = turnsOf(brief)
      const changed = turns.some((turn) =>
        turn.when.some(({ question, words }) => {
          const other = wholeBrief({ ...answers, [question]: answerOf(question, words, answers) }, shop, ref)
          return other.lead?.option.id !== brief.lead?.option.id
        })
      )
      expect(changed, brief.title.text).toBe(true)
    }
  }, 60_000)

  it('of the open questions that it says would settle it, one has an answer that puts another wood or cut first', () => {
    let held = 0
    for (const [brief, [answers, shop, ref]] of cases()) {
      const movers = brief.sure.settle.filter((q) => q.moves).slice(0, 3)
      if (movers.length === 0) continue
      const changed = movers.some(({ question }) => {
        const tried =
          question === 'order' ? CRITERIA.map((id) => [id]) : plausibleAnswers(ref, question).map((p) => p.answer)
        return tried.some(
          (answer) =>
            cut(wholeBrief({ ...answers, [question]: answer }, shop, ref).lead?.option.id) !==
            cut(brief.lead?.option.id)
        )
      })
      expect(changed, brief.title.text).toBe(true)
      held++
    }
    expect(held).toBeGreaterThan(3)
  }, 60_000)
})
