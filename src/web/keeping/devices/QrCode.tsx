import { encode } from 'uqr';

/** Light modules around it, so that a reader finds it (ISO/IEC 18004 asks for 4). */
const BORDER = 4;

/** A text as a QR code: dark on light, whatever the page's colours are. */
export function QrCode({ text, label }: { text: string; label: string }) {
  const { size, data } = encode(text, { ecc: 'M', border: BORDER });
  const dark = data.flatMap((row, y) => row.flatMap((on, x) => (on ? [`M${x} ${y}h1v1h-1z`] : [])));
  return (
    <svg
      className="qr-code"
      viewBox={`0 0 ${size} ${size}`}
      role="img"
      aria-label={label}
      shapeRendering="crispEdges"
    >
      <path fill="#fff" d={`M0 0h${size}v${size}h-${size}z`} />
      <path fill="#000" d={dark.join('')} />
    </svg>
  );
}
