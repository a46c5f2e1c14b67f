/** Lengths as a carpenter says them: feet and inches, inches and sixteenths, millimetres and metres. */
import { NBSP, plain } from './number'

export const MM_PER_INCH = 25.4
export const MM_PER_FOOT = 304.8

/** "3/16", "1 1/4", "12": inches to the nearest `parts`, in lowest terms. */
export function inchesIn(inches: number, parts = 16): string {
  let top = Math.round(Math.abs(inches) * parts)
  let bottom = parts
  const whole = Math.floor(top / bottom)
  top -= whole * bottom
  while (top > 0 && top % 2 === 0) {
    top /= 2
    bottom /= 2
  }
  const sign = inches < 0 && (whole > 0 || top > 0) ? '−' : ''
  if (top === 0) return `${sign}${plain(whole)}`
  const fraction = `${top}/${bottom}`
  return whole === 0 ? `${sign}${fraction}` : `${sign}${plain(whole)}${NBSP}${fraction}`
}

/** Below half of the smallest division that a rule carries, an opening is only said to be small. */
export const SMALLEST_GAP_MM = MM_PER_INCH / 32

/** Half millimetres where a whole one would hide the difference. */
export function gapMm(mm: number): string {
  return mm < 5 ? plain(Math.round(mm * 2) / 2, 1) : plain(mm)
}

/** "16 ft", "16 ft 6 in", "10 in": to the nearest inch. */
export function feetAndInches(mm: number): string {
  const all = Math.round(Math.abs(mm) / MM_PER_INCH)
  const feet = Math.floor(all / 12)
  const inches = all % 12
  const sign = mm < 0 && all > 0 ? '−' : ''
  if (feet === 0) return `${sign}${inches}${NBSP}in`
  return inches === 0 ? `${sign}${feet}${NBSP}ft` : `${sign}${feet}${NBSP}ft ${inches}${NBSP}in`
}

export function metres(mm: number): string {
  return `${(mm / 1000).toFixed(2)}${NBSP}m`
}

/** Whether a timber's sides are inches and eighths. One of a metric series is called by its millimetres by everybody. */
export const inInches = (...sides: readonly number[]): boolean =>
  sides.every((mm) => Math.abs(mm - Math.round(mm / 3.175) * 3.175) < 0.015)
