/** What prose must not state by itself: a number comes from the engine or with its source, never from the keyboard. */

const WORDS =
  'two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|fifteen|twenty|thirty|forty|fifty|sixty|ninety|hundred|thousand'
const UNITS =
  'inch|inches|foot|feet|yards?|pounds?|tons?|tonnes?|kilograms?|millimetres?|metres?|degrees?|percent|per cent|weeks?|months?|years?|days?|psi'

const ALLOWED = [
  // Grades are named so, and years of a publication are names too.
  /\bNo\. [12]\b/g,
  /\b(1[5-9]|20)\d\d\b/g
]

/** Numbers in a piece of prose that look stated: any digit, and number words before a unit. Empty where all is well. */
export function bareNumbers(text: string): readonly string[] {
  const rest = ALLOWED.reduce((t, pattern) => t.replace(pattern, ''), text)
  return [
    ...(rest.match(/[\d½¼¾⅛⅜⅝⅞][\d.,/]*\S*/g) ?? []),
    ...(rest.match(new RegExp(`\\b(${WORDS})([ -](${WORDS}|or|to|and))*[ -](${UNITS})\\b`, 'gi')) ?? [])
  ]
}
