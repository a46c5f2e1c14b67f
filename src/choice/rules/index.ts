/** All rules, in the order in which a reason is worth saying. */
import type { Rule } from '../rule'
import { decayRules } from './decay'
import { fieldRules } from './field'
import { lookRules } from './look'
import { moneyRules } from './money'
import { movementRules } from './movement'
import { strengthRules } from './strength'
import { supplyRules } from './supply'
import { timeRules } from './time'

export const RULES: readonly Rule[] = [
  ...decayRules,
  ...supplyRules,
  ...strengthRules,
  ...timeRules,
  ...moneyRules,
  ...movementRules,
  ...lookRules,
  ...fieldRules
]
