/** What carries: sections that pass, limits on depth, cautions about tension and derived values. */
import { worst } from '../../frame/check'
import { limit } from '../facts'
import { sectionFigure } from '../figures'
import type { OptionBasis } from '../option-basis'
import type { Rule } from '../rule'
import { ANSWERED, computed, PRACTICE, quantity, sentence } from '../say'

export const CHECK_NAMES: Readonly<Record<string, string>> = {
  bending: 'bending',
  shear: 'shear',
  'deflection-live': 'sag under live load',
  'deflection-total': 'sag with creep',
  compression: 'compression',
  slenderness: 'slenderness',
  tension: 'pull',
  'compression-bending': 'push and bending together',
  'tension-bending': 'pull and bending together'
}

/** The member that fails most, with its worst check. */
function failing(o: OptionBasis) {
  const failed = o.frame.members.filter((m) => m.sized.section === null)
  return failed
    .map((m) => ({ member: m.id, check: worst(m.sized.checks) }))
    .sort((a, b) => (b.check?.ratio ?? 0) - (a.check?.ratio ?? 0))[0]
}

export const strengthRules: readonly Rule[] = [
  {
    id: 'strength-no-values',
    about: 'strength',
    effect: 'out',
    early: true,
    when: (o, { facts }) => facts.loaded && o.frame.noValues,
    short: () => sentence('no published strength'),
    says: (o) =>
      sentence(
        `No strength is published for ${o.wood.said} that a size could rest on: it may dress a frame, not carry one.`
      ),
    sources: [{ key: 'nds-supplement-4d' }],
    mark: 'memory'
  },
  {
    id: 'strength-depth-limit',
    about: 'strength',
    effect: 'out',
    early: true,
    when: (o, { facts }) => facts.loaded && !o.frame.noValues && !o.frame.passes && o.frame.withoutLimit !== null,
    short: (o, { reference }) =>
      sentence('needs {needs}', {
        needs: quantity('section', o.frame.withoutLimit ?? o.section, computed(reference, 'section'))
      }),
    says: (o, { facts, reference }) =>
      sentence('It would need {needs}; you set a depth of at most {limit}.', {
        needs: quantity('section', o.frame.withoutLimit ?? o.section, computed(reference, 'section')),
        limit: quantity('diameter', facts.depthLimit ?? 0, ANSWERED)
      }),
    sources: [{ key: 'nds' }],
    mark: 'derived'
  },
  {
    id: 'strength-fails',
    about: 'strength',
    effect: 'out',
    early: true,
    when: (o, { facts }) => facts.loaded && !o.frame.noValues && !o.frame.passes && o.frame.withoutLimit === null,
    short: (o, { reference }) => {
      const fault = failing(o)
      return fault?.check
        ? sentence('too weak, {times} times', {
            times: quantity('ratio', Math.max(1.01, fault.check.ratio), computed(reference, fault.check.id))
          })
        : sentence('no post that thick')
    },
    says: (o, { facts, reference }) => {
      const fault = failing(o)
      const member = fault?.member ?? 'timber'
      const way = `A shorter span, closer bents${facts.carries === 'truss' ? '' : ', a truss'} or steel would be needed.`
      if (!fault?.check) return sentence(`No ${member} of the shop’s sizes can be sawn from it.`)
      const what = CHECK_NAMES[fault.check.id] ?? 'strength'
      const values = {
        section: sectionFigure(o, facts, reference),
        times: quantity('ratio', Math.max(1.01, fault.check.ratio), computed(reference, fault.check.id))
      }
      return facts.size
        ? sentence(`The ${member} at {section} is asked {times} times what it bears, in ${what}.`, values)
        : sentence(
            `Even the largest ${member} it is sawn to is asked {times} times what it bears, in ${what}. ${way}`,
            { times: values.times }
          )
    },
    sources: [{ key: 'nds' }],
    mark: 'derived'
  },
  {
    id: 'strength-derived',
    about: 'strength',
    effect: 'caution',
    when: (o, { facts }) => facts.loaded && o.frame.members.some((m) => m.sized.values?.derived),
    short: () => sentence('strength only derived'),
    says: (o) =>
      sentence(
        `No graded values are tabulated here for ${o.wood.said}; its size rests on values derived from small clear pieces, an indication only.`
      ),
    sources: [{ key: 'astm-d2555' }, { key: 'astm-d245' }],
    mark: 'derived'
  },
  {
    id: 'strength-tension-splits',
    about: 'strength',
    effect: 'caution',
    when: (o, { facts, reference }) =>
      facts.loaded &&
      facts.carries === 'truss' &&
      (o.wood.traits.splitting.level === 2 ||
        (o.wood.strengthGreen?.tensionPerp ?? 9) < limit(reference, 'split-tension')),
    short: () => sentence('splits at pegs'),
    says: (o, { reference }) =>
      o.wood.strengthGreen?.tensionPerp && o.wood.strengthGreen.tensionPerp < limit(reference, 'split-tension')
        ? sentence(
            'It splits easily: across the grain it holds only {pull} when green, so the pegged joints that pull (tie to rafter, king post) need longer ends or steel.',
            {
              pull: quantity('stress', o.wood.strengthGreen.tensionPerp, o.wood.strengthGreen.origin)
            }
          )
        : sentence(
            'It splits easily: the pegged joints that pull (tie to rafter, king post) need longer ends or steel.'
          ),
    sources: [{ key: 'wood-handbook-2010', where: 'Table 5-3' }, PRACTICE],
    mark: 'practice'
  },
  {
    id: 'strength-stout',
    about: 'stoutness',
    effect: 'caution',
    when: (o, c) => isStout(o, c),
    short: (o, { facts, reference }) => sentence('stout, {section}', { section: sectionFigure(o, facts, reference) }),
    says: (o, { leanest, facts, reference }) =>
      sentence('It must be stout: {section}, {times} times the section of the leanest wood.', {
        section: sectionFigure(o, facts, reference),
        times: quantity('ratio', (o.section[0] * o.section[1]) / (leanest ?? 1), computed(reference, 'times'))
      }),
    sources: [{ key: 'nds' }],
    mark: 'derived'
  },
  {
    id: 'strength-lean',
    about: 'stoutness',
    effect: 'favour',
    when: (o, { facts, leanest }) =>
      facts.loaded &&
      facts.size === null &&
      o.frame.passes &&
      leanest !== null &&
      o.section[0] * o.section[1] <= leanest * 1.001,
    short: () => sentence('leanest'),
    says: (o, { facts, reference }) =>
      sentence('It carries this with the leanest timber of all: {section}.', {
        section: sectionFigure(o, facts, reference)
      }),
    sources: [{ key: 'nds' }],
    mark: 'derived'
  }
]

function isStout(o: Parameters<Rule['when']>[0], { facts, leanest, reference }: Parameters<Rule['when']>[1]): boolean {
  return (
    facts.loaded &&
    o.frame.passes &&
    leanest !== null &&
    (o.section[0] * o.section[1]) / leanest >= limit(reference, 'stout-ratio')
  )
}
