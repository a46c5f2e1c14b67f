import { cleanTestStorage, getTestStorage, setTestStorageKey, useTestStorageEngine } from '@nanostores/persistent'
import { beforeEach, describe, expect, test, vi } from 'vitest'

useTestStorageEngine()
const KEY = 'bentwise.answers.1'

/** The stores as a freshly opened page has them. */
async function open() {
  vi.resetModules()
  const persistent = await import('@nanostores/persistent')
  persistent.useTestStorageEngine()
  for (const [key, text] of Object.entries(getTestStorage())) persistent.setTestStorageKey(key, text)
  return {
    ...(await import('../../src/stores/answers')),
    ...(await import('../../src/stores/drafts')),
    ...(await import('../../src/stores/saved')),
    storage: persistent.getTestStorage
  }
}

beforeEach(cleanTestStorage)

describe('saved answers', () => {
  test('are there again when the page is opened again', async () => {
    setTestStorageKey(KEY, '{"finish":"grey","span":4876.8}')
    const { $answers, $notice } = await open()
    expect($answers.get()).toEqual({ finish: 'grey', span: 4876.8 })
    expect($notice.get()).toBeNull()
  })

  test('an answer is saved, and taken back', async () => {
    const { $answers, setAnswer, storage } = await open()
    setAnswer('finish', 'dark')
    expect(storage()[KEY]).toBe('{"finish":"dark"}')
    setAnswer('finish', undefined)
    expect($answers.get()).toEqual({})
  })

  test('what is bad goes, with a notice; the rest stays, and nothing that was saved is thrown away', async () => {
    setTestStorageKey(KEY, '{"finish":"grey","span":-1}')
    const { $answers, $notice } = await open()
    expect($answers.get()).toEqual({ finish: 'grey' })
    expect($notice.get()).toContain('set aside')
  })

  test('what is no JSON at all starts afresh', async () => {
    setTestStorageKey(KEY, '{{{')
    const { $answers, $notice, startOf } = await open()
    expect($answers.get()).toEqual({})
    expect($notice.get()).toContain('start afresh')
    expect(startOf($answers)).toEqual({})
    expect(startOf($notice)).toBeNull()
  })
})

describe('drafts', () => {
  test('keep what was typed, cut to a sane length, whatever was saved', async () => {
    setTestStorageKey('bentwise.drafts.1', '{"span":"900","x":7}')
    const { $drafts, setDraft } = await open()
    expect($drafts.get()).toEqual({ span: '900' })
    setDraft('span', 'y'.repeat(9999))
    expect($drafts.get()['span']).toHaveLength(200)
    setDraft('span', undefined)
    expect($drafts.get()).toEqual({})
  })
})
