/** What a question says that it assumes is what the brief then assumes. */
import { describe, expect, it } from 'vitest'
import { factsFrom, plausibleAnswers } from '../../src/choice/facts'
import { questionOf } from '../../src/choice/questions'
import { FOOT, PSF } from '../../src/data/units'
import { reference } from '../reference'

const numbersIn = (text: string) => (text.split('(')[0] ?? '').match(/\d+/g)?.map(Number) ?? []

describe('not sure', () => {
  it.each([
    ['span', FOOT],
    ['snow', PSF],
    ['postHeight', FOOT]
  ])('%s: the values said are the values carried', (id, unit) => {
    const carried = plausibleAnswers(reference, id).map(({ answer }) => Math.round(Number(answer) / unit))
    expect([...carried].sort((a, b) => a - b)).toEqual(numbersIn(questionOf(id)?.unsure ?? ''))
  })
  it('spacing: as said, by what is carried', () => {
    expect(factsFrom({ carries: 'truss' }, reference).spacing / FOOT).toBeCloseTo(10, 9)
    expect(factsFrom({ carries: 'floor' }, reference).spacing / FOOT).toBeCloseTo(4, 9)
  })
})
