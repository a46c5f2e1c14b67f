/** Handing text on: to the clipboard, to another program of the device, or into a file. All three may be refused. */

/** Whether it went to the clipboard. */
export async function copyText(text: string): Promise<boolean> {
  try {
    await navigator.clipboard.writeText(text)
    return true
  } catch {
    return false
  }
}

/** Whether the device offers to pass on a link. */
export const canShare = (): boolean => typeof navigator !== 'undefined' && typeof navigator.share === 'function'

/** Opens the device's own list of programs; closing it again is no fault. Gives false where it was refused. */
export async function share(data: ShareData): Promise<boolean> {
  try {
    await navigator.share(data)
    return true
  } catch (error) {
    return error instanceof DOMException && error.name === 'AbortError'
  }
}

export function download(name: string, content: BlobPart, type: string): void {
  const url = URL.createObjectURL(new Blob([content], { type }))
  const link = document.createElement('a')
  link.href = url
  link.download = name
  link.click()
  setTimeout(() => URL.revokeObjectURL(url), 10_000)
}
