/**
 * The questions, as data: one list, in the order they are asked. The questionnaire draws any such list.
 * Numbers are answered in SI (mm, Pa, rise over run as a ratio); choices by their id; every question also takes
 * `unsure`, and the engine then carries the plausible values of `content/unsure.json`.
 */
import { FOOT, INCH, PSF } from '../data/units'
import type { Answers, Question, Stage } from './types'

export const STAGES: readonly { readonly id: Stage; readonly name: string }[] = [
  { id: 'use', name: 'The job' },
  { id: 'place', name: 'Where it lives' },
  { id: 'load', name: 'Span and load' },
  { id: 'look', name: 'Look and care' },
  { id: 'plan', name: 'Time and money' },
  { id: 'weigh', name: 'What matters' }
]

const always = () => true
const loaded = (a: Answers) => a['role'] !== 'looks'
const trussed = (a: Answers) =>
  loaded(a) && (a['carries'] === 'truss' || a['carries'] === 'unsure' || a['carries'] === undefined)
const roof = (a: Answers) => loaded(a) && a['carries'] !== 'floor'
/** Snow lies on a roof, and on a deck in the open. */
const snowed = (a: Answers) =>
  loaded(a) && (a['carries'] !== 'floor' || ['roofed', 'weather', 'ground'].includes(String(a['exposure'])))
const outside = (a: Answers) =>
  ['roofed', 'weather', 'ground', 'unsure', undefined].includes(a['exposure'] as string | undefined)
const rained = (a: Answers) => a['exposure'] === 'roofed' || a['exposure'] === 'weather'
const heated = (a: Answers) =>
  a['project'] !== 'beams' && ['heated', 'unsure', undefined].includes(a['exposure'] as string | undefined)

export const QUESTIONS: readonly Question[] = [
  {
    id: 'project',
    stage: 'use',
    kind: 'choice',
    picture: 'frame',
    when: always,
    title: 'What are you building?',
    label: 'Building',
    why: 'It names your brief and sets what is usual for spans and heights. It decides nothing by itself.',
    unsure: 'We call it a timber frame and go by the other answers.',
    choices: [
      { id: 'great-room', label: 'A great room or hall', help: 'One big room under an open timber roof' },
      { id: 'house', label: 'A house frame' },
      { id: 'barn', label: 'A barn or workshop' },
      { id: 'pavilion', label: 'A pavilion', help: 'A roof on posts, open at the sides' },
      { id: 'porch', label: 'A porch or entry' },
      { id: 'pergola', label: 'A pergola or arbour' },
      { id: 'beams', label: 'Beams in a room that stands already' }
    ]
  },
  {
    id: 'role',
    stage: 'use',
    kind: 'choice',
    picture: 'role',
    when: always,
    title: 'Will the timbers carry the building, or are they only to be seen?',
    label: 'Carries or for looks',
    why: 'Timbers that carry need a size, a grade and an engineer. Timbers for looks may be any size that pleases.',
    unsure: 'We take it that they carry: the safer guess.',
    choices: [
      { id: 'structure', label: 'They carry', help: 'Roof, floor or deck rests on them' },
      { id: 'looks', label: 'Only to be seen', help: 'Something else carries; these are dressing' }
    ]
  },
  {
    id: 'exposure',
    stage: 'place',
    kind: 'choice',
    picture: 'exposure',
    when: always,
    title: 'Where will the timbers live?',
    label: 'Where the timbers live',
    why: 'Dry rooms shrink wood the most; rain and ground rot it. This answer moves more than any other.',
    unsure: 'We carry both a heated room and an outdoor roof, and show what it changes.',
    choices: [
      { id: 'heated', label: 'Indoors, heated' },
      { id: 'unheated', label: 'Indoors, not heated', help: 'A barn, a garage, a cold roof' },
      { id: 'roofed', label: 'Outside, under a roof', help: 'Rain is kept off, the air is not' },
      { id: 'weather', label: 'Outside, in the weather', help: 'Rain reaches the timbers' },
      { id: 'ground', label: 'Touching the ground or standing water' }
    ]
  },
  {
    id: 'details',
    stage: 'place',
    kind: 'choice',
    picture: 'water',
    when: rained,
    title: 'How well is water kept off, and let go?',
    label: 'Water at joints and feet',
    why: 'Wood that dries between rains seldom rots. Details do more than species.',
    unsure: 'We take it that it is as usual.',
    choices: [
      { id: 'sheltered', label: 'Well', help: 'Deep eaves or caps, end grain covered, feet on stand-offs' },
      { id: 'usual', label: 'As usual' },
      { id: 'holding', label: 'Water can stand', help: 'In joints, in checks on top, at post feet' }
    ]
  },
  {
    id: 'place',
    stage: 'place',
    kind: 'place',
    picture: 'climate',
    when: always,
    title: 'Which of these places is nearest, in weather?',
    label: 'Place',
    why: 'How dry the wood gets and how fast rot works are computed from the monthly weather there.',
    unsure: 'We carry a handful of places from dry to damp.'
  },
  {
    id: 'carries',
    stage: 'load',
    kind: 'choice',
    picture: 'load',
    when: loaded,
    title: 'What do the main timbers carry, and how?',
    label: 'Carrying',
    why: 'A truss shares the work between its parts; a beam bends alone. The size follows from it.',
    unsure: 'We carry a truss and a plain beam, and show what it changes.',
    choices: [
      { id: 'truss', label: 'A roof, on trusses', help: 'Rafters, a tie across, one or two posts between' },
      { id: 'beam', label: 'A roof, on plain beams', help: 'Ridge, purlins or girts that span alone' },
      { id: 'floor', label: 'A floor or deck', help: 'Girts or summer beams with people on top' }
    ]
  },
  {
    id: 'truss',
    stage: 'load',
    kind: 'choice',
    picture: 'elevation',
    when: trussed,
    title: 'Which kind of truss?',
    label: 'Truss',
    why: 'Struts and queen posts prop the rafters part-way, so that they can be slimmer. Often the framer decides.',
    unsure: 'We take a king post without struts, the plainest.',
    choices: [
      { id: 'king', label: 'A king post', help: 'One post in the middle; each rafter spans from wall to ridge' },
      { id: 'king-struts', label: 'A king post with struts', help: 'Struts hold each rafter at its middle' },
      { id: 'queen', label: 'Two queen posts', help: 'The middle stays open; for wide roofs' }
    ]
  },
  {
    id: 'span',
    stage: 'load',
    kind: 'number',
    quantity: 'span',
    min: 4 * FOOT,
    max: 60 * FOOT,
    picture: 'elevation',
    when: loaded,
    title: 'How far is it, clear, from support to support?',
    label: 'Clear span',
    why: 'Bending grows with the square of the span and sag faster still. It decides the size more than the wood does.',
    unsure: 'We carry 12, 16 and 24 ft (3.7, 4.9 and 7.3 m).',
    examples: [
      { label: 'Porch', value: 8 * FOOT },
      { label: 'Room', value: 16 * FOOT },
      { label: 'Hall', value: 28 * FOOT }
    ]
  },
  {
    id: 'spacing',
    stage: 'load',
    kind: 'number',
    quantity: 'span',
    min: 1 * FOOT,
    max: 24 * FOOT,
    picture: 'plan',
    when: loaded,
    title: 'How far apart do they stand?',
    label: 'Spacing',
    why: 'Each timber carries the strip half-way to its neighbours.',
    unsure: 'We take 10 ft (3 m) for trusses and beams, and 4 ft (1.2 m) under a floor.',
    examples: [
      { label: 'Floor beams', value: 4 * FOOT },
      { label: 'Close bents', value: 8 * FOOT },
      { label: 'Usual bents', value: 12 * FOOT }
    ]
  },
  {
    id: 'count',
    stage: 'load',
    kind: 'number',
    quantity: 'count',
    min: 1,
    max: 40,
    picture: 'plan',
    when: always,
    title: 'How many of them stand in a row?',
    label: 'How many',
    why: 'Only for the amount of timber and its cost.',
    unsure: 'We take four.'
  },
  {
    id: 'slope',
    stage: 'load',
    kind: 'number',
    quantity: 'pitch',
    min: 2 / 12,
    max: 24 / 12,
    picture: 'elevation',
    when: roof,
    title: 'How steep is the roof?',
    label: 'Roof pitch',
    why: 'A low truss pulls harder on its tie. Said as rise in 12 of run.',
    unsure: 'We take 8 in 12.',
    examples: [
      { label: 'Low', value: 4 / 12 },
      { label: 'Usual', value: 8 / 12 },
      { label: 'Steep', value: 12 / 12 }
    ]
  },
  {
    id: 'snow',
    stage: 'load',
    kind: 'number',
    quantity: 'areaLoad',
    min: 0,
    max: 300 * PSF,
    picture: 'load',
    when: snowed,
    title: 'How much snow does your building office design for, on the ground?',
    label: 'Ground snow',
    why: 'It is often the largest load on a roof. The building office or a neighbour’s drawings state it.',
    unsure: 'We carry 20, 35 and 60 psf (1.0, 1.7 and 2.9 kN/m²) and show what it changes.',
    examples: [
      { label: 'None', value: 0 },
      { label: 'Moderate', value: 30 * PSF },
      { label: 'Heavy', value: 70 * PSF }
    ]
  },
  {
    id: 'postHeight',
    stage: 'load',
    kind: 'number',
    quantity: 'span',
    min: 2 * FOOT,
    max: 30 * FOOT,
    picture: 'elevation',
    when: loaded,
    title: 'How tall are the posts?',
    label: 'Post height',
    why: 'A tall thin post bows before it crushes.',
    unsure: 'We take 9 ft (2.7 m).',
    none: { id: 'none', label: 'No posts: walls carry it' },
    examples: [
      { label: 'Porch', value: 8 * FOOT },
      { label: 'One storey', value: 10 * FOOT },
      { label: 'Loft', value: 18 * FOOT }
    ]
  },
  {
    id: 'stick',
    stage: 'load',
    kind: 'number',
    quantity: 'span',
    min: 4 * FOOT,
    max: 80 * FOOT,
    picture: 'stick',
    when: always,
    title: 'How long is the longest single stick?',
    label: 'Longest stick',
    why: 'Few trees give long clear timbers. Past a length some woods cannot be had at all.',
    unsure: 'We take the span and a little for its two ends.',
    none: { id: 'none', label: 'As long as the span asks' }
  },
  {
    id: 'size',
    stage: 'load',
    kind: 'section',
    picture: 'stick',
    min: 3 * INCH,
    max: 30 * INCH,
    when: always,
    title: 'Is a size already settled?',
    label: 'Size settled',
    why: 'If a drawing or your eye has fixed it, we test that size instead of finding one.',
    unsure: 'We work it out, or take 8 × 8 in (203 × 203 mm) where the timbers are for looks.',
    none: { id: 'none', label: 'No, work it out' }
  },
  {
    id: 'depthLimit',
    stage: 'load',
    kind: 'number',
    quantity: 'diameter',
    min: 4 * INCH,
    max: 36 * INCH,
    picture: 'stick',
    when: loaded,
    title: 'Is there a limit on how deep a timber may be?',
    label: 'Depth limit',
    why: 'Headroom or a window may set it. A weak wood then falls out.',
    unsure: 'We set no limit.',
    none: { id: 'none', label: 'No limit' }
  },
  {
    id: 'finish',
    stage: 'look',
    kind: 'choice',
    picture: 'finish',
    when: always,
    title: 'How should the wood look?',
    label: 'Finish',
    why: 'A clear coat or a stain lets the wood’s own colour through; some woods can never be made pale.',
    unsure: 'We carry a clear, a mid and a dark finish.',
    choices: [
      { id: 'grey', label: 'Left bare, to grey', help: 'Outdoors it silvers; indoors it yellows a little' },
      { id: 'clear', label: 'Clear', help: 'The wood’s own colour, a little deeper' },
      { id: 'pale', label: 'Pale', help: 'Whitened or very light' },
      { id: 'mid', label: 'Mid-toned stain' },
      { id: 'dark', label: 'Dark stain' },
      { id: 'painted', label: 'Painted' }
    ]
  },
  {
    id: 'knots',
    stage: 'look',
    kind: 'choice',
    picture: 'knots',
    when: always,
    title: 'How do you feel about knots?',
    label: 'Knots',
    why: 'Clear timbers are rare and dear in most woods.',
    unsure: 'We take it that some knots are fine.',
    choices: [
      { id: 'any', label: 'I like them' },
      { id: 'some', label: 'Some are fine' },
      { id: 'clear', label: 'As few as can be' }
    ]
  },
  {
    id: 'checks',
    stage: 'look',
    kind: 'choice',
    picture: 'log-end',
    when: always,
    title: 'And about the long splits that drying opens?',
    label: 'Drying checks',
    why: 'A timber with the heart of the tree in it always checks. They seldom weaken it, but they show.',
    unsure: 'We take it that some are fine.',
    choices: [
      { id: 'fine', label: 'Part of the timber', help: 'They belong to a frame' },
      { id: 'some', label: 'Some are fine' },
      { id: 'few', label: 'As few as can be' }
    ]
  },
  {
    id: 'joints',
    stage: 'look',
    kind: 'choice',
    picture: 'joint',
    when: always,
    title: 'How much do you mind joints that open a little?',
    label: 'Open joints',
    why: 'Wood shrinks across its grain. If plaster or glass meets the timber, even a small gap shows.',
    unsure: 'We take it that a small gap is fine.',
    choices: [
      { id: 'fine', label: 'Not at all' },
      { id: 'small', label: 'A small gap is fine' },
      { id: 'tight', label: 'They must stay tight', help: 'Plaster or glass runs up to the timbers' }
    ]
  },
  {
    id: 'resin',
    stage: 'look',
    kind: 'choice',
    picture: 'pitch',
    when: always,
    title: 'Would beads of pitch bother you?',
    label: 'Pitch',
    why: 'Pines, larch, spruce and Douglas-fir may weep resin for years unless heat has set it.',
    unsure: 'We take it that you would rather not.',
    choices: [
      { id: 'fine', label: 'No' },
      { id: 'rather-not', label: 'I would rather not' },
      { id: 'never', label: 'There must be none' }
    ]
  },
  {
    id: 'upkeep',
    stage: 'look',
    kind: 'choice',
    picture: 'upkeep',
    when: outside,
    title: 'What upkeep will really be done?',
    label: 'Upkeep',
    why: 'A coat that nobody renews protects nothing after a few years. An honest answer saves a frame.',
    unsure: 'We take it that it will be seldom.',
    choices: [
      { id: 'none', label: 'None' },
      { id: 'seldom', label: 'Every five years or so' },
      { id: 'regular', label: 'Every two or three years' }
    ]
  },
  {
    id: 'stands',
    stage: 'plan',
    kind: 'choice',
    picture: 'timeline',
    when: always,
    title: 'When must it stand?',
    label: 'Must stand',
    why: 'Drying takes time that nothing but a kiln can shorten.',
    unsure: 'We carry half a year, a year and two years.',
    choices: [
      { id: 'w6', label: 'In six weeks' },
      { id: 'w13', label: 'In three months' },
      { id: 'w26', label: 'In half a year' },
      { id: 'w52', label: 'In a year' },
      { id: 'w104', label: 'In two years' },
      { id: 'none', label: 'No hurry' }
    ]
  },
  {
    id: 'begins',
    stage: 'plan',
    kind: 'choice',
    picture: 'timeline',
    when: always,
    title: 'In which season could the timber be felled and sawn?',
    label: 'Felling',
    why: 'A yard dries timber in summer and hardly in winter. The months of the whole job follow from it.',
    unsure: 'We take January.',
    choices: [
      { id: 'winter', label: 'Winter' },
      { id: 'spring', label: 'Spring' },
      { id: 'summer', label: 'Summer' },
      { id: 'autumn', label: 'Autumn' }
    ]
  },
  {
    id: 'waits',
    stage: 'plan',
    kind: 'choice',
    picture: 'timeline',
    when: always,
    title: 'Will cut timbers lie waiting before the raising?',
    label: 'Cut to raised',
    why: 'Green joints twist and shrink apart while they wait. Raised at once, they hold each other.',
    unsure: 'We take it that it is weeks.',
    choices: [
      { id: 'weeks', label: 'A few weeks at most' },
      { id: 'months', label: 'Some months' },
      { id: 'year', label: 'A year or more' }
    ]
  },
  {
    id: 'heating',
    stage: 'plan',
    kind: 'choice',
    picture: 'timeline',
    when: heated,
    title: 'How soon after raising will it be heated?',
    label: 'First heating',
    why: 'Warm dry air on wet timber opens checks fast. A year of open air first is kinder.',
    unsure: 'We take the first winter.',
    choices: [
      { id: 'at-once', label: 'At once' },
      { id: 'first-winter', label: 'The first winter' },
      { id: 'next-year', label: 'A year later, or more' }
    ]
  },
  {
    id: 'budget',
    stage: 'plan',
    kind: 'choice',
    picture: 'money',
    when: always,
    title: 'How do you think about the price of the timber?',
    label: 'Budget',
    why: 'Timber is one part of the bill. A dearer wood adds less to the whole than it seems.',
    unsure: 'We take it that value for money counts.',
    choices: [
      { id: 'lowest', label: 'It must be as low as can be' },
      { id: 'fair', label: 'Good value' },
      { id: 'quality', label: 'The right wood comes first' }
    ]
  },
  {
    id: 'budgetSum',
    stage: 'plan',
    kind: 'number',
    quantity: 'money',
    min: 500,
    max: 5_000_000,
    picture: 'money',
    when: always,
    title: 'Is there a sum for the frame: its timber, cut and raised?',
    label: 'Sum for the frame',
    why: 'What would go over it is ruled out, if something else does the job within it. Foundations, roof and walls are not in it.',
    unsure: 'We set no limit, and say what it comes to.',
    none: { id: 'none', label: 'No sum yet' }
  },
  {
    id: 'local',
    stage: 'plan',
    kind: 'choice',
    picture: 'map',
    when: always,
    title: 'Should the wood come from near by?',
    label: 'Local wood',
    why: 'Local wood is often cheaper, can be seen standing, and is used to the climate.',
    unsure: 'We take it that it would be nice.',
    choices: [
      { id: 'must', label: 'Yes, it must' },
      { id: 'rather', label: 'It would be nice' },
      { id: 'no-matter', label: 'It does not matter' }
    ]
  },
  {
    id: 'order',
    stage: 'weigh',
    kind: 'order',
    picture: 'order',
    when: always,
    title: 'What matters most? Put the first thing first.',
    label: 'What matters most',
    why: 'No wood is best at everything. Your order sets how much each point weighs.',
    unsure: 'We weigh all of them alike.',
    choices: [
      { id: 'movement', label: 'It stays put', help: 'Tight joints, little twist, few checks' },
      { id: 'durability', label: 'It lasts where it stands' },
      { id: 'cost', label: 'It costs less' },
      { id: 'look', label: 'It looks as wanted' },
      { id: 'stoutness', label: 'Slender timbers' },
      { id: 'time', label: 'It is ready soon' },
      { id: 'local', label: 'It grew near by' }
    ]
  }
]

/** The questions that matter to the answers so far, in order. */
export function askedQuestions(answers: Answers): Question[] {
  return QUESTIONS.filter((q) => q.when(answers))
}

export const questionOf = (id: string): Question | undefined => QUESTIONS.find((q) => q.id === id)
