/** Span, load, and the limits that the frame has to keep. */
import { FOOT, INCH, PSF } from '../../data/units'
import type { Question } from '../types'
import { always, loaded, roof, snowed, trussed } from './when'

export const loadQuestions: readonly Question[] = [
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
  }
]
