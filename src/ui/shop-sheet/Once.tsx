/** A number that stands once in the form. */
import { NUMBERS, type NumberName } from '../../shop/sheet/fields'
import { NumberInput } from './Fields'

export const Once = ({ field, help }: { readonly field: NumberName; readonly help?: string }) => (
  <NumberInput field={field} kind={NUMBERS[field]} {...(help !== undefined && { help })} />
)
