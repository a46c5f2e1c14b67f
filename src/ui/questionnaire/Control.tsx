/** The control for a question's kind. */
import { ChoiceField } from './ChoiceField'
import type { FieldProps } from './field-props'

export type Fields = typeof import('./fields')

/** `fields` are null until their code has come, which takes a moment on a slow line. */
export function Control({ fields, ...props }: FieldProps & { readonly fields: Fields | null }) {
  const { question, ...rest } = props
  if (question.kind === 'choice') return <ChoiceField {...rest} question={question} />
  if (fields === null) return <p class="help">One moment …</p>
  switch (question.kind) {
    case 'order':
      return <fields.OrderField {...rest} question={question} />
    case 'place':
      return <fields.PlaceField {...rest} question={question} />
    case 'number':
      return <fields.NumberField {...rest} question={question} />
    case 'section':
      return <fields.SectionField {...rest} question={question} />
  }
}
