/** The setting of a bench in the address of its page. */

/** Put a setting there; `step` where the back button should come back from it. */
export function address(fragment: string, step: boolean): void {
  if (location.hash === `#${fragment}`) return
  if (step) history.pushState(null, '', `#${fragment}`)
  else history.replaceState(null, '', `#${fragment}`)
}

/** Open what the address asks for, now and whenever it changes. */
export function followAddress(open: (fragment: string) => void): void {
  const follow = () => {
    const fragment = decoded(location.hash.slice(1))
    // A jump within the page, such as the skip link's, asks for no setting.
    if (fragment === '' || document.getElementById(fragment) === null) open(fragment)
  }
  if (location.hash !== '') follow()
  addEventListener('popstate', follow)
}

/** A fragment with a broken escape is taken as it stands: it will be refused by name. */
function decoded(fragment: string): string {
  try {
    return decodeURIComponent(fragment)
  } catch {
    return fragment
  }
}

/** What was chosen or typed before the script had come: field and text. Ids of fields begin with `prefix`. */
export function changedFields(form: Element | null, prefix: string): [field: string, text: string][] {
  const all = form?.querySelectorAll<HTMLInputElement | HTMLSelectElement>('input, select') ?? []
  return [...all].flatMap((element): [string, string][] => {
    const was = 'options' in element ? [...element.options].find((o) => o.defaultSelected)?.value : element.defaultValue
    return element.value === was ? [] : [[element.id.replace(prefix, ''), element.value]]
  })
}
