/** What the figures of an option and the criteria are called on the page: one list, for margin, tables and paper. */
import type { Criterion, OptionReport } from '../../choice/types'

export const FIGURE_NAMES: Readonly<Record<keyof OptionReport['figures'], string>> = {
  section: 'Section',
  moistureDelivered: 'Moisture when delivered',
  moistureInService: 'Moisture in place',
  faceShrinkage: 'Depth shrinks by',
  breadthShrinkage: 'Breadth shrinks by',
  lengthChange: 'Length shrinks by',
  yearlySwing: 'Shoulder moves each year',
  twist: 'Twist at a corner, up to',
  shoulderGap: 'Gap at a shoulder',
  checkOpening: 'Checks open, at most',
  logDiameter: 'Log needed, small end',
  stickWeight: 'Weight of the heaviest stick',
  durabilityClass: 'Durability class, 1 best to 5',
  readyWeeks: 'Ready to raise in',
  pricePerVolume: 'Timber price',
  volume: 'Timber, in all',
  timberCost: 'Timber cost',
  jobCost: 'Whole job',
  timberShare: 'Timber’s share of the job'
}

export const CRITERION_NAMES: Readonly<Record<Criterion, string>> = {
  cost: 'Cost',
  movement: 'Stays put',
  durability: 'Lasts',
  look: 'Look',
  stoutness: 'Slender',
  time: 'Ready soon',
  local: 'Grew near by'
}

/** "boxed heart, green" */
export const howOf = (report: OptionReport): string => `${report.heartSays}, ${report.seasoningSays}`
