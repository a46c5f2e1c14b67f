/**
 * The one script of a content page, inline and allowed by its hash: puts the remembered units and theme on <html>
 * before the first paint, and remembers a change. Everything else about the two switches is CSS (styles/units.css).
 */
function early() {
  const root = document.documentElement
  const names = ['units', 'theme'] as const
  root.dataset.script = ''
  const set = (name: string, value: string) => {
    // 'auto' follows the device, which is what no attribute means.
    if (value === 'auto') delete root.dataset[name]
    else root.dataset[name] = value
  }
  const recall = (name: string) => {
    try {
      return localStorage.getItem(`bentwise.${name}`)
    } catch {
      return null // storage refused: the switch works for this page only
    }
  }
  const apply = () => {
    for (const name of names) {
      const value = recall(name)
      if (!value || !/^(us|si|light|dark|auto)$/.test(value)) continue
      set(name, value)
      const radio = document.getElementById(`${name}-${value}`) as HTMLInputElement | null
      if (radio) radio.checked = true
    }
  }
  apply()
  // The radios come later in the page; a browser may also restore a page, or another tab change the choice.
  for (const event of ['DOMContentLoaded', 'pageshow', 'storage']) addEventListener(event, apply)
  addEventListener('change', (event) => {
    const radio = event.target as HTMLInputElement
    const name = radio.name as (typeof names)[number]
    if (!names.includes(name)) return
    set(name, radio.value)
    try {
      localStorage.setItem(`bentwise.${name}`, radio.value)
    } catch {
      // as above
    }
  })
}

export const earlyScript = `(${early.toString().replace(/\s*\n\s*/g, '\n')})()`
