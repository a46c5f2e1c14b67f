/**
 * The name of the shop whose sheet is loaded in this browser, set into the title blocks. Without script the line stays
 * blank. Looks at what is kept without the stores: these pages follow nothing, and the stores weigh more than the sheet.
 */

/** As the stores name them; a test compares. */
export const KEYS = { invite: 'bentwise.invite.1', ownSheet: 'bentwise.sheet.1' } as const
const LONGEST = 80

/** The name on a sheet as kept: only shown, as text, so only its being a short text is asked. */
function nameOn(sheet: unknown): string | null {
  const name = typeof sheet === 'object' && sheet !== null && 'name' in sheet ? sheet.name : null
  return typeof name === 'string' && name.trim() !== '' ? name.trim().slice(0, LONGEST) : null
}

function kept(key: string): unknown {
  try {
    return JSON.parse(localStorage.getItem(key) ?? 'null')
  } catch {
    // Shut storage, or what cannot be read: nothing is loaded.
    return null
  }
}

/** An opened invite's sheet is in force before the framer's own. */
export function nameShop(): void {
  const invite = kept(KEYS.invite)
  const invited = typeof invite === 'object' && invite !== null && 'sheet' in invite ? nameOn(invite.sheet) : null
  const name = invited ?? nameOn(kept(KEYS.ownSheet))
  if (name !== null) for (const line of document.querySelectorAll('[data-shop]')) line.textContent = name
}
