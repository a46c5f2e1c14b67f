/** What the timbers of a frame are called, in the order in which a list names them. */
export const MEMBER_NAMES = {
  tie: 'Tie',
  rafter: 'Rafter',
  'upper-rafter': 'Upper rafter',
  'king-post': 'King post',
  'queen-post': 'Queen post',
  strut: 'Strut',
  'straining-beam': 'Straining beam',
  beam: 'Beam',
  post: 'Post'
} as const
