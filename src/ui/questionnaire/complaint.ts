/** What to say in place when Next is pressed and there is no answer yet. */
import type { Question } from '../../choice/types'
import type { Drafts } from '../../stores/drafts'
import { parseNumber } from '../format/field'
import type { System } from '../format/quantity'

export function complaintOf(question: Question, drafts: Drafts, system: System): string {
  switch (question.kind) {
    case 'choice':
      return 'Choose one of these, or “Not sure”.'
    case 'order':
      return 'Put them in order, or choose “Not sure”.'
    case 'place': {
      const typed = drafts[question.id]?.trim() ?? ''
      return typed === ''
        ? 'Type a town and choose from the list, or choose “Not sure”.'
        : `“${typed}” is not in our list of places. Choose one with a climate like yours, or “Not sure”.`
    }
    case 'number': {
      const read = parseNumber(drafts[question.id] ?? '', question.quantity, system, question)
      return read.ok ? 'Type a number, or choose “Not sure”.' : read.says
    }
    case 'section':
      return (
        sideComplaint(drafts[`${question.id}.0`], question, system) ??
        sideComplaint(drafts[`${question.id}.1`], question, system) ??
        'Type both sides.'
      )
  }
}

function sideComplaint(text: string | undefined, range: { min: number; max: number }, system: System): string | null {
  const read = parseNumber(text ?? '', 'diameter', system, range)
  return read.ok ? null : read.says
}
