/** The section "How big": what was sized, for which loads, and what is not in it. */
import type { Quantity, Sentence } from '../../data/quantity'
import type { Reference } from '../../data/reference'
import type { MemberId } from '../../frame/job'
import type { Brief } from '../brief-types'
import { LIFTS } from '../cut-list'
import type { Drawn, DrawnPart } from '../drawn'
import { type LoadedBy, limit } from '../facts'
import { sagFigure, weightFigure } from '../figures'
import { joineryOf } from '../joinery/joinery'
import { joineryNeeds } from '../joinery/needs'
import { joineryLine } from '../joinery/says'
import type { Judged } from '../judge'
import { liftLimit, liftOf } from '../ladder/job'
import { MEMBER_NAMES } from '../member-names'
import type { Context } from '../rule'
import { ANSWERED, computed, listed, PRACTICE, quantity, sentence } from '../say'

const LOADED_BY: Readonly<Record<LoadedBy, string>> = {
  snow: 'snow',
  roof: 'the code’s least roof load',
  rooms: 'people and furniture',
  deck: 'people',
  storage: 'stored goods'
}

const TRUSSES = {
  king: 'king-post trusses',
  'king-struts': 'king-post trusses with struts',
  queen: 'queen-post trusses'
} as const

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

const JOINT_SOURCES = [{ key: 'nds' }, { key: 'tfec-1' }]

/** Whether the joints work in timber, and where not, which sections of the shop would make them. */
function jointsSay({ facts: o }: Judged, steel: boolean, c: Context): Sentence {
  const say = (text: string, values?: Record<string, Quantity>) => sentence(text, values, JOINT_SOURCES, 'memory')
  if (!steel) return say('The joints below work in timber at these sizes, as a first look.')
  const needs = joineryNeeds(o, c)
  const other = 'another form of frame, closer bents or steel must be thought of'
  if (needs === null)
    return say(`Not every joint below works in timber, and no section of this shop would make them: ${other}.`)
  const wanted = Object.entries(needs)
  if (wanted.length === 0) return say(`Not every joint below works in timber at these sizes: larger timbers, ${other}.`)
  const origin = computed(c.reference, 'section')
  return say(
    `Not every joint below works in timber at these sizes. As a first look ${listed(wanted.map(([id]) => `a ${MEMBER_NAMES[id as MemberId].toLowerCase()} of {${id.replace('-', '')}}`))} would make them; or think of steel.`,
    Object.fromEntries(wanted.map(([id, section]) => [id.replace('-', ''), quantity('section', section, origin)]))
  )
}

/** How far strength and stiffness scatter, and what of it the sizes hold already. */
function scatterSays({ scatter: { bending, elasticity } }: Reference): Sentence {
  return sentence(
    'Clear wood of one kind scatters by {bending} in strength and {stiffness} in stiffness. Design values for bending, pull, push along the grain and shear are such as 19 pieces of 20 exceed, so that scatter is in the sizes; stiffness and crushing across the grain are means.',
    {
      bending: quantity('percent', bending.of, bending.origin),
      stiffness: quantity('percent', elasticity.of, elasticity.origin)
    },
    [{ key: 'astm-d2555' }, { key: 'astm-d245' }],
    'memory'
  )
}

/** What was sized and how; for looks, that nothing is demanded. */
export function sizesSection(c: Context, lead: Judged | null): Brief['sizes'] {
  const { facts, reference } = c
  if (!facts.loaded) {
    const text =
      'These timbers carry nothing, so no size is demanded. Choose what pleases the eye and what can be lifted.'
    return { demanded: false, says: [sentence(text)], joinery: [], drawn: null }
  }
  const dead = reference.loads.dead.get(facts.dead.id)
  const what = {
    truss: `${TRUSSES[facts.truss]} of {span}`,
    beam: 'plain beams of {span}',
    floor: 'floor beams of {span}'
  }[facts.carries]
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
  const uneven = computed(reference, 'snow-one-sided', { pg: quantity('areaLoad', facts.groundSnow, ANSWERED) })
  if (facts.oneSided)
    says.push(
      sentence('Wind may sweep snow from one side to the other: {more} on one and {less} on the other is tried too.', {
        more: quantity('areaLoad', facts.oneSided.leeward, uneven),
        less: quantity('areaLoad', facts.oneSided.windward, uneven)
      })
    )
  const tie = lead?.facts.frame.members.find((m) => m.id === 'tie')
  const rafter = lead?.facts.frame.members.find((m) => m.id === 'rafter')
  const beam = lead?.facts.frame.members.find((m) => m.id === 'beam')
  if (tie?.force && rafter?.force) {
    says.push(
      sentence(
        'The tie is pulled by about {pull} and each rafter foot pushes with {push}: the joint there often decides. Nothing is hung from the tie or stored on it.',
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
  const sag = beam?.sized.section && beam.sized.checks.find((k) => k.id === 'deflection-total')
  if (sag) {
    says.push(
      sentence(
        'Fully loaded and after years, the beam sags {sag} at mid-span: stiffness differs from stick to stick, and two of three lie in that range.',
        { sag: sagFigure(sag, reference) }
      )
    )
  }
  if (lead?.facts.frame.passes) says.push(scatterSays(reference))
  const joints = lead ? joineryOf(lead.facts, c) : []
  const joinery = joints.map((joint) => joineryLine(joint, reference))
  if (lead && joinery.length > 0)
    says.push(
      jointsSay(
        lead,
        joinery.some((line) => line.steel),
        c
      )
    )
  if (lead) {
    const lifted = liftOf(lead.facts.stickMass, reference)
    says.push(
      sentence(
        `Its heaviest stick weighs about {weight} as delivered: ${LIFTS[lifted]}.`,
        {
          weight: weightFigure(lead.facts, facts, reference),
          most: liftLimit(reference, lifted === 'crane' ? 'heavy-stick' : 'two-carry')
        },
        [PRACTICE],
        'practice'
      )
    )
  }
  says.push(
    sentence(
      'A weaker or springier wood carries the same load with a larger timber: the picture sets them side by side. Joinery often asks for more than the load does.'
    ),
    sentence(
      'Preliminary sizes, not for construction. Strengths of pegs and rules of steps are recalled, not read. Not in the sizes: notched ends, wind and uplift, snow that drifts against what stands higher, earthquake, posts without braces, and the way down to the ground. A licensed engineer designs the frame to the local code.'
    )
  )
  return { demanded: true, says, joinery, drawn: lead && drawnFrame(lead, c) }
}

/** Where posts are not asked for, a frame is drawn this high above the ground, mm. */
const DRAWN_HIGH = 2700

/** The leading option's frame to scale, with the forces along its timbers. */
function drawnFrame({ facts: o }: Judged, { facts, reference }: Context): Drawn | null {
  const force = (n: number | null): Quantity | null =>
    n ? quantity('force', n, computed(reference, 'tie-pull')) : null
  const parts = o.frame.members.flatMap(({ id, sized: { section }, force: along, pulled }): DrawnPart[] => {
    if (!section || id === 'post') return []
    return [
      { id, name: MEMBER_NAMES[id], section, push: pulled ? null : force(along), pull: pulled ? force(along) : null }
    ]
  })
  if (parts.length === 0) return null
  return {
    kind: facts.carries === 'truss' ? facts.truss : 'beam',
    span: facts.span,
    slope: facts.slope,
    height: facts.postHeight ?? DRAWN_HIGH,
    queenAt: limit(reference, 'queen-usual'),
    parts,
    end: null
  }
}
