import { expect, it } from 'vitest'
import { remembered } from '../../src/choice/firm/remembered'
import type { Answers } from '../../src/choice/types'

it('work is done once for the same answers, in whatever order they came, and begun anew where it was broken off', () => {
  let begun = 0
  const work = remembered(function* (answers: Answers): Generator<void, number> {
    begun++
    yield
    return Object.keys(answers).length
  })
  work({ a: '1' }).next()
  const finish = (answers: Answers) => {
    const steps = work(answers)
    let count = 0
    let step = steps.next()
    for (; !step.done; step = steps.next()) count++
    return { value: step.value, count }
  }
  expect(finish({ a: '1', b: '2' })).toEqual({ value: 2, count: 1 })
  expect(finish({ b: '2', a: '1' })).toEqual({ value: 2, count: 0 })
  expect(begun).toBe(2)
  expect(finish({ a: '1' })).toEqual({ value: 1, count: 1 })
  expect(finish({ a: '2', b: '2' })).toEqual({ value: 2, count: 1 })
})
