/** The tables of notes: woods, places or sizes down the side, the engine's figures across. */
import { lengthwiseTotal } from '../choice/piece-facts'
import { computed, quantity } from '../choice/say'
import type { Origin, Quantity, Sentence } from '../data/quantity'
import { originOf, type Reference } from '../data/reference'
import type { ShopSheetContent } from '../data/shop-schema'
import { VERDICTS } from '../wood/decay'
import { Args } from './args'
import { exampleBrief } from './cost'
import { figureOf, reaches } from './figures'
import { ladderOfArgs } from './ladder'
import type { Call } from './parse'

/** A sentence is said with its source behind it; a list of them one below the other. */
export type Cell = Quantity | string | Sentence | readonly Sentence[]
export interface Row {
  /** A name, or a size that follows the reader's units. */
  readonly label: string | Quantity
  readonly cells: readonly Cell[]
}
export interface Table {
  readonly head: readonly string[]
  readonly rows: readonly Row[]
  /** Prices in it are invented. */
  readonly placeholder?: boolean
}

type Maker = (args: Args, sheet: ShopSheetContent) => Table

/** A cell that a figure of the same name would give. */
const cell = (args: Args, sheet: ShopSheetContent, name: string, given: Record<string, string>): Quantity =>
  figureOf({ name, args: given }, args.reference, sheet).quantity

const said = (text: string, origin: Origin): Sentence => ({ text, sources: origin.sources, mark: origin.mark })

/** One row a wood, one column a figure. */
function byWood(args: Args, sheet: ShopSheetContent, columns: Readonly<Record<string, readonly [string, object]>>) {
  const rows = args.woods().map((wood) => ({
    label: wood.short,
    cells: Object.values(columns).map(([name, given]) => cell(args, sheet, name, { wood: wood.id, ...given }))
  }))
  return { head: ['Wood', ...Object.keys(columns)], rows }
}

const TABLES: Readonly<Record<string, Maker>> = {
  shrinkage: (args, sheet) => {
    const given = { face: args.text('face'), at: args.text('at') }
    return byWood(args, sheet, {
      'Towards the pith, whole': ['total', { way: 'radial' }],
      'Round the rings, whole': ['total', { way: 'tangential' }],
      'Rings into the face': ['shrink', { way: 'radial', ...given }],
      'Rings along the face': ['shrink', { way: 'tangential', ...given }]
    })
  },
  green: (args, sheet) =>
    byWood(args, sheet, {
      'Heartwood, green': ['green', {}],
      'Fibre saturation': ['fibre', {}],
      'Days for an inch board': ['airdays', {}]
    }),
  places: (args, sheet) => {
    const at = (place: string, lives: string, of: string) => cell(args, sheet, 'service', { place, lives, of })
    return {
      head: ['Place', 'Under a porch roof', 'Heated room', 'Its driest month', 'Its wettest'],
      rows: args.places().map(({ id, name }) => ({
        label: name,
        cells: [
          at(id, 'roofed', 'mean'),
          at(id, 'heated', 'mean'),
          at(id, 'heated', 'driest'),
          at(id, 'heated', 'wettest')
        ]
      }))
    }
  },
  rot: (args, sheet) => ({
    head: ['Place', 'Index', 'Moisture, under cover'],
    rows: args.places().map(({ id, name }) => ({
      label: name,
      cells: [
        cell(args, sheet, 'rot', { place: id }),
        cell(args, sheet, 'service', { place: id, lives: 'roofed', of: 'mean' })
      ]
    }))
  }),
  grades: (args, sheet) => {
    const given = { wood: args.wood().id, size: args.text('size') }
    const of = ['bending', 'tension', 'compression', 'elasticity']
    return {
      head: ['Grade', 'Bending', 'Pull', 'Push along the grain', 'Stiffness'],
      rows: ['Select Structural', 'No.1', 'No.2'].map((grade) => ({
        label: grade.replace('.', '. '),
        cells: of.map((what) => cell(args, sheet, 'strength', { ...given, grade, of: what }))
      }))
    }
  },
  logs: (args, sheet) => ({
    head: ['Timber', 'Boxed heart', 'Free of heart centre'],
    rows: args
      .text('sizes')
      .split(',')
      .map((size) => ({
        label: cell(args, sheet, 'size', { of: size }),
        cells: ['boxed', 'free'].map((heart) => cell(args, sheet, 'log', { heart, size }))
      }))
  }),
  drying: (args, sheet) => {
    const wood = args.wood().id
    return {
      head: ['Green timber', 'Still to come when raised', 'Half of that within', 'Middle, when raised'],
      rows: args
        .text('sizes')
        .split(',')
        .map((size) => ({
          label: cell(args, sheet, 'size', { of: size }),
          cells: [
            cell(args, sheet, 'clock', { of: 'toCome', moment: 'raised', wood, size }),
            cell(args, sheet, 'clock', { of: 'half', wood, size }),
            cell(args, sheet, 'clock', { of: 'core', moment: 'raised', wood, size })
          ]
        }))
    }
  },
  twist: (args, sheet) => {
    const given = { of: 'twist', size: args.text('size'), ft: args.text('ft') }
    return byWood(args, sheet, {
      'Boxed heart, up to': ['job', { ...given, heart: 'boxed' }],
      'Free of heart centre, up to': ['job', { ...given, heart: 'free' }]
    })
  },
  gaps: (args, sheet) => {
    const wood = args.wood().id
    const dry = args.text('dry').split(',')
    const names = { green: 'Green', air: 'Air-dried', kiln: 'Kiln-dried', rfv: 'Vacuum-dried' } as const
    const given = { wood, size: args.text('size'), place: args.placeId() }
    return {
      head: ['Beam between posts', ...dry.map((d) => names[d as keyof typeof names] ?? d)],
      rows: args
        .text('lengths')
        .split(',')
        .map((ft) => ({
          label: cell(args, sheet, 'ft', { of: ft }),
          cells: dry.map((d) => cell(args, sheet, 'job', { of: 'gap', ...given, ft, dry: d }))
        }))
    }
  },
  splitting: (args, sheet) =>
    byWood(args, sheet, {
      'Clear wood pulled across the grain': ['clear', { of: 'tensionPerp' }],
      'Peg to tenon’s end': ['peg', { of: 'end' }],
      'Peg to the loaded edge': ['peg', { of: 'edge' }]
    }),
  weights: (args, sheet) => {
    const given = { size: args.text('size'), ft: args.text('ft') }
    return byWood(args, sheet, { Green: ['weight', given], 'At 15 %': ['weight', { ...given, at: '15' }] })
  },
  lengthwise: (args, sheet) => {
    const { reference } = args
    const given = { ft: args.text('ft'), at: args.text('at') }
    const rows = args.woods().map((wood) => {
      const [low, high] = lengthwiseTotal(wood, reference)
      const { says, origin } = wood.traits.lengthwise
      const id = wood.traits.lengthwise.level === 2 ? 'lengthwise-troublesome' : 'lengthwise-high'
      const share = quantity('percent', high, reference.limits.get(id)?.origin ?? origin, { low, high })
      const change = cell(args, sheet, 'lengthwise', { wood: wood.id, ...given })
      return { label: wood.short, cells: [share, change, says ? said(says, origin) : ''] }
    })
    return { head: ['Wood', 'Green to bone dry', 'Over the length', 'The trade says'], rows }
  },
  /** What the trade says of a habit of each wood. */
  habits: (args) => {
    const trait = args.word('of', [
      'pitch',
      'tannin',
      'twist',
      'checking',
      'splitting',
      'lengthwise',
      'knots',
      'hardToDry'
    ])
    const LEVEL = ['little', 'some', 'much'] as const
    return {
      head: ['Wood', 'How much', 'What to expect'],
      rows: args.woods().map((wood) => {
        const { level, says, origin } = wood.traits[trait]
        return { label: wood.short, cells: [LEVEL[level], says ? said(says, origin) : ''] }
      })
    }
  },
  lasting: (args, sheet) => ({
    head: ['Heartwood', 'Class', 'What field trials found'],
    rows: args.woods().map((wood) => ({
      label: wood.short,
      cells: [
        cell(args, sheet, 'durability', { wood: wood.id }),
        wood.durability.fieldTests.length > 0
          ? wood.durability.fieldTests.map((t) => said(t.says, t.origin))
          : 'none read'
      ]
    }))
  }),
  useclasses: ({ reference }) => ({
    head: ['Class', 'What it means', 'Heartwood that is enough by nature'],
    rows: reference.decay.useClasses.map((c) => {
      const row = reference.decay.sufficiency.byUseClass[c.id.charAt(0) as '1']
      const enough = row.flatMap((verdict, i) => (VERDICTS.indexOf(verdict) < 2 ? [i + 1] : []))
      const [first = 0, last = first] = [enough[0], enough.at(-1)]
      return {
        label: c.id,
        cells: [
          said(c.says, originOf(c)),
          said(first === last ? `class ${first}` : `classes ${first} to ${last}`, originOf(reference.decay.sufficiency))
        ]
      }
    })
  }),
  finishes: ({ reference }) => ({
    head: ['Finish', 'In the weather', 'What it does'],
    rows: reference.finishes.map((f) => {
      const [low, high] = f.weatherYears ?? []
      return {
        label: f.name,
        cells: [
          low === undefined || high === undefined
            ? 'nothing to renew'
            : quantity('years', (low + high) / 2, originOf(f), { low, high }),
          said(f.says, originOf(f))
        ]
      }
    })
  }),
  stains: (args, sheet) => {
    const finishes = args.text('finishes').split(',')
    const names = finishes.map((id) => args.reference.finishes.find((f) => f.id === id)?.name ?? id)
    return {
      head: ['Lightness, 100 is white', 'Bare', ...names],
      rows: args.woods().map((wood) => ({
        label: wood.short,
        cells: [
          cell(args, sheet, 'lightness', { wood: wood.id }),
          ...finishes.map((finish) => {
            const shown = cell(args, sheet, 'lightness', { wood: wood.id, finish })
            if (reaches(args.reference, wood.id, finish)) return shown
            return { text: '{l}, short of it', values: { l: shown } }
          })
        ]
      }))
    }
  },
  seasonings: ({ reference }) => ({
    head: ['Way', 'Comes at', 'Thickest, by how hard the wood is to dry', 'Sets pitch', 'What it is'],
    rows: [...reference.seasonings.values()].map((s) => {
      const origin = originOf(s)
      const share = s.deliveredPercent
      const [easy, , hard] = s.thickestIn ?? []
      return {
        label: s.name,
        cells: [
          share === null ? 'what time leaves' : quantity('moisture', share / 100, origin),
          easy === undefined || hard === undefined
            ? 'any'
            : quantity('gap', easy * 25.4, origin, { low: hard * 25.4, high: easy * 25.4 }),
          s.setsPitch ? 'yes' : 'no',
          s.says
        ]
      }
    })
  }),
  local: (args) => {
    const { regions, woods } = args.reference
    return {
      head: ['Near', 'Forest region', 'Framing woods that grow there'],
      rows: args.places().map(({ name, state }) => {
        const here = regions.filter((r) => r.states.includes(state))
        const ids = here.map((r) => r.id as string)
        const grown = [...woods.values()].filter((w) => w.regions.some((r) => ids.includes(r)))
        return { label: name, cells: [here.map((r) => r.name).join('; '), grown.map((w) => w.short).join(', ')] }
      })
    }
  },
  bill: (args, sheet) => {
    const { cost } = exampleBrief(args.text('project'), sheet, args.reference)
    const amount = (q: Quantity) => Number(q.value)
    const all = cost.bill.reduce((sum, { cost: c }) => sum + amount(c), 0)
    const rows = cost.bill.map(({ name, cost: part }) => {
      const origin = { ...computed(args.reference, 'share'), mark: part.origin.mark, sources: part.origin.sources }
      return { label: name, cells: [quantity('percent', amount(part) / all, origin)] }
    })
    return { head: ['Part of the frame', 'Share of the whole'], rows, placeholder: true }
  },
  dearer: (args, sheet) => {
    const { cost } = exampleBrief(args.text('project'), sheet, args.reference)
    const rows = cost.woods.flatMap(({ short, adds }) =>
      adds ? [{ label: short, cells: [adds.timber, adds.job] }] : []
    )
    return { head: ['Against the cheapest', 'Adds to the timber', 'Adds to the whole'], rows, placeholder: true }
  },
  sections: (args, sheet) => {
    const wanted = args.woods().map((w) => w.id)
    const { lines } = ladderOfArgs(args, sheet)
    return {
      head: ['Wood', 'Section', 'What decides', 'Weight of the stick'],
      rows: lines
        .filter((l) => wanted.includes(l.wood))
        .map((l) => ({
          label: l.short,
          cells: [l.section ?? 'none passes', l.governs, l.heaviest?.weight ?? '']
        }))
    }
  }
}

export const TABLE_NAMES: readonly string[] = Object.keys(TABLES)

/** @throws Error for a table that is not known, or arguments that are wrong. */
export function tableOf(call: Call, reference: Reference, sheet: ShopSheetContent): Table {
  const make = Object.hasOwn(TABLES, call.name) ? TABLES[call.name] : undefined
  if (!make) throw new Error(`no table "${call.name}"`)
  const args = new Args(call, reference)
  const table = make(args, sheet)
  args.done()
  return table
}
