/** A picture made small enough to be kept: a JPEG of at most 60 kB, without what a camera wrote beside it. */

/** Bytes, so that a household with many animals stays quick to open. */
const MOST_BYTES = 60_000;
/** Longest sides in pixels and qualities, tried one after the other until it is small enough. */
const TRIES: readonly (readonly [side: number, quality: number])[] = [
  [800, 0.82],
  [800, 0.7],
  [640, 0.7],
  [480, 0.7],
  [360, 0.6],
  [240, 0.5],
];

/** The picture as base64. Drawn anew, so place and time of the photo are not in it. @throws Error where it is no picture */
export async function smallJpeg(file: Blob): Promise<string> {
  const image = await createImageBitmap(file, { imageOrientation: 'from-image' });
  try {
    for (const [side, quality] of TRIES) {
      const blob = await drawn(image, side, quality);
      if (blob.size <= MOST_BYTES) return await base64(blob);
    }
  } finally {
    image.close();
  }
  throw new Error('the picture does not become small enough');
}

async function drawn(image: ImageBitmap, side: number, quality: number): Promise<Blob> {
  const scale = Math.min(1, side / Math.max(image.width, image.height));
  const canvas = document.createElement('canvas');
  canvas.width = Math.max(1, Math.round(image.width * scale));
  canvas.height = Math.max(1, Math.round(image.height * scale));
  const brush = canvas.getContext('2d');
  if (!brush) throw new Error('this browser cannot draw pictures');
  // What was see-through would turn black.
  brush.fillStyle = 'white';
  brush.fillRect(0, 0, canvas.width, canvas.height);
  brush.drawImage(image, 0, 0, canvas.width, canvas.height);
  return new Promise((made, failed) =>
    canvas.toBlob((blob) => (blob ? made(blob) : failed(new TypeError('toBlob'))), 'image/jpeg', quality),
  );
}

function base64(blob: Blob): Promise<string> {
  return new Promise((read, failed) => {
    const reader = new FileReader();
    reader.onload = () => read(String(reader.result).replace(/^[^,]*,/, ''));
    reader.onerror = () => failed(reader.error ?? new TypeError('readAsDataURL'));
    reader.readAsDataURL(blob);
  });
}
