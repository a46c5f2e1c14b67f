/** The list of what would change the brief, worked off while the page is idle. */

import type { WhatIf } from '../../choice/firm/what-if'
import type { Answers } from '../../choice/types'
import type { Engine } from '../engine'
import { useWorked } from '../use-worked'

export const useWhatIf = (engine: Engine, answers: Answers): WhatIf | null =>
  useWorked(() => engine.whatIf(answers), [engine, answers])
