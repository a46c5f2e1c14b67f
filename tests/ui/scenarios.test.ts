import * as v from 'valibot'
import { describe, expect, test } from 'vitest'
import { readAnswers } from '../../src/choice/answers'
import { askedQuestions } from '../../src/choice/questions'
import { content, scenarios } from '../../src/data/content'
import { scenarioSchema } from '../../src/data/schema'

const places = new Set((content.places as { places: { id: string }[] }).places.map((place) => place.id))

describe.each(scenarios.map((file) => v.parse(scenarioSchema, file)))('$title', ({ answers: given, paragraph }) => {
  test('is read without a problem and answers every question that is asked', () => {
    const { answers, problems } = readAnswers(given, places)
    expect(problems).toEqual([])
    expect(
      askedQuestions(answers)
        .filter((q) => answers[q.id] === undefined)
        .map((q) => q.id)
    ).toEqual([])
  })
  test('says that it is invented', () => expect(paragraph).toMatch(/invented/i))
})
