/** A file, picked or dropped. The same file can be picked again once it was mended. */
import { useState } from 'preact/hooks'

interface Props {
  readonly id: string
  readonly label: string
  readonly accept: string
  readonly onFile: (file: File) => void
}
export function FileBox({ id, label, accept, onFile }: Props) {
  const [over, setOver] = useState(false)
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: dropping is besides the field, which does the same by keyboard
    <div
      class={over ? 'field shop-drop shop-drop--over' : 'field shop-drop'}
      onDragOver={(event) => {
        event.preventDefault()
        setOver(true)
      }}
      onDragLeave={() => setOver(false)}
      onDrop={(event) => {
        event.preventDefault()
        setOver(false)
        const file = event.dataTransfer?.files[0]
        if (file) onFile(file)
      }}
    >
      <label for={id}>{label}</label>
      <input
        id={id}
        type="file"
        accept={accept}
        onChange={(event) => {
          const file = event.currentTarget.files?.[0]
          event.currentTarget.value = ''
          if (file) onFile(file)
        }}
      />
    </div>
  )
}
