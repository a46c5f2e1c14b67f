/** Which loads a job is sized for, in the code's own units. Source of the factors: asce-7, irc, ibc (content/loads.json). */
import { describe, expect, it } from 'vitest'
import { factsFrom } from '../../src/choice/facts'
import { askedQuestions } from '../../src/choice/questions'
import type { Answers } from '../../src/choice/types'
import { PSF } from '../../src/data/units'
import { reference } from '../reference'

const loads = (answers: Answers) =>
  Object.fromEntries(factsFrom(answers, reference).variable.map((v) => [v.by, Number((v.load / PSF).toFixed(1))]))

describe('variable loads', () => {
  it('a roof takes the least roof load and the snow, each in turn: 0.7 x 40 = 28 psf over a heated room', () => {
    expect(loads({ carries: 'truss', exposure: 'heated', snow: 40 * PSF })).toEqual({ roof: 20, snow: 28 })
  })
  it('an unheated roof keeps more: 0.7 x 1.2 x 60 = 50.4 psf', () => {
    expect(loads({ carries: 'beam', exposure: 'unheated', snow: 60 * PSF })).toEqual({ roof: 20, snow: 50.4 })
  })
  it('a deck in the open takes people, and the ground snow in turn; it is asked for there', () => {
    expect(loads({ carries: 'floor', exposure: 'weather', snow: 60 * PSF })).toEqual({ deck: 40, snow: 60 })
    const asked = (exposure: string) => askedQuestions({ carries: 'floor', exposure }).some((q) => q.id === 'snow')
    expect(asked('weather')).toBe(true)
    expect(asked('heated')).toBe(false)
  })
  it('a floor indoors takes people and furniture, in a barn what is stored', () => {
    expect(loads({ carries: 'floor', exposure: 'heated' })).toEqual({ rooms: 40 })
    expect(loads({ carries: 'floor', exposure: 'unheated', project: 'barn' })).toEqual({ storage: 125 })
  })
})
