/** A frame as it is drawn: its timbers to scale, with what pushes or pulls along each. */
import type { Quantity } from '../data/quantity'
import type { MemberKind } from '../frame/member-spec'
import type { Section } from '../frame/values'

/** One timber of the drawing, with what is along it. */
export interface DrawnPart {
  readonly id: string
  readonly name: string
  readonly section: Section
  readonly push: Quantity | null
  readonly pull: Quantity | null
}
export interface Drawn {
  readonly kind: MemberKind
  readonly span: number
  readonly slope: number
  readonly height: number
  readonly queenAt: number
  readonly parts: readonly DrawnPart[]
  /** What an end brings to its support. */
  readonly end: Quantity | null
  /** Loads at points: mm from the left support. */
  readonly points?: readonly { readonly at: number; readonly load: Quantity }[]
}
