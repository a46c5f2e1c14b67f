// Cuts the two typefaces down to the characters that the site sets. Whole, their Latin files are 56 KB; cut, 32 KB.
import { mkdir, readFile, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import subsetFont from 'subset-font'
import { root } from './place.mjs'

// Stylesheets name these files relative to themselves, so that the bundler puts them under any base path.
const target = join(root, 'src/styles/fonts')
// The Open Font License wants its text to travel with the fonts.
const notice = join(root, 'public/fonts')

// Prose has no use for the signs of programs.
const ascii = Array.from({ length: 0x7f - 0x20 }, (_, i) => String.fromCharCode(0x20 + i))
  .filter((sign) => !'`^~{}|\\'.includes(sign))
  .join('')
// Neither typeface draws ⅛ ⅜ ⅝ ⅞ → ← ≤ ≥ π (nor Barlow ↑ ↓): those come from the fallback. `font-variant-numeric:
// diagonal-fractions` sets 7/8 as a fraction in both.
const text = `${ascii}\u00a0–—’‘“”×°±½¼¾⅛⅜⅝⅞²³·…→←↑↓≤≥−′″µπ§©é`

const barlow = '@fontsource/barlow-semi-condensed'
const bitter = '@fontsource-variable/bitter'
const fonts = [
  {
    from: `${bitter}/files/bitter-latin-wght-normal.woff2`,
    to: 'bitter.woff2',
    variationAxes: { wght: { min: 400, max: 700 } }
  },
  { from: `${barlow}/files/barlow-semi-condensed-latin-500-normal.woff2`, to: 'barlow-500.woff2' }
]

/** @param {string} path */
const read = (path) => readFile(join(root, 'node_modules', path))

await mkdir(target, { recursive: true })
await mkdir(notice, { recursive: true })
for (const { from, to, ...axes } of fonts) {
  // Hinting is a third of Barlow's size, and changes little on today's screens.
  const font = await subsetFont(await read(from), text, { targetFormat: 'woff2', noHinting: true, ...axes })
  await writeFile(join(target, to), font)
  console.log(`fonts: ${to} ${(font.length / 1024).toFixed(1)} KB`)
}
const licences = [await read(`${bitter}/LICENSE`), await read(`${barlow}/LICENSE`)]
await writeFile(join(notice, 'LICENSE.txt'), licences.join('\n\n'))
