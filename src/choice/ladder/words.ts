/** The names of timbers and checks on the size ladder. */
import type { SizedMember } from '../../frame/member-parts'
import type { MemberKind } from '../../frame/member-spec'
import { CHECK_NAMES } from '../rules/strength'

export const KIND_NAMES: Readonly<Record<MemberKind, string>> = {
  king: 'king-post truss',
  'king-struts': 'king-post truss with struts',
  queen: 'queen-post truss',
  rafter: 'rafter on a ridge beam',
  ridge: 'ridge beam',
  purlin: 'purlin',
  beam: 'beam',
  joist: 'floor joist',
  post: 'post'
}

export const PART_NAMES: Readonly<Record<SizedMember['id'], string>> = {
  beam: 'Beam',
  joist: 'Joist',
  purlin: 'Purlin',
  ridge: 'Ridge beam',
  rafter: 'Rafter',
  'upper-rafter': 'Upper rafter',
  post: 'Post',
  tie: 'Tie',
  'king-post': 'King post',
  'queen-post': 'Queen post',
  strut: 'Strut',
  'straining-beam': 'Straining beam'
}

export const checkName = (id: string): string => CHECK_NAMES[id] ?? id

/** "nds 3.9.2" as a framer would look it up. */
export const clauseWords = (clause: string): string => clause.replace(/^(nds|ibc|asce-7)\b/, (s) => s.toUpperCase())
