/** A QR code, black on white in every theme: inverted codes are not read by all phones. */
import { type Qr, qrPath, qrSide } from '../../shop/qr'

export function QrPicture({ qr, title }: { readonly qr: Qr; readonly title: string }) {
  const side = qrSide(qr)
  return (
    <svg class="qr" viewBox={`0 0 ${side} ${side}`} role="img" aria-label={title} shape-rendering="crispEdges">
      <rect width={side} height={side} fill="#fff" />
      <path d={qrPath(qr)} fill="#000" />
    </svg>
  )
}
