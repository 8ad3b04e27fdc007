const MOST_SIDE = 1600;
const MOST_BYTES = 900_000;
const QUALITIES = [0.85, 0.7, 0.55, 0.4];

/** What was chosen is no picture that this phone can read. */
export class NotAPicture extends Error {}

/**
 * Draws a picture anew, upright and no larger than needed, so that place, time and camera stay behind on this phone.
 * @param {Blob} file
 * @returns {Promise<Blob>} a JPEG of at most 1600 pixels on a side
 */
export async function develop(file) {
  const bitmap = await read(file);
  const scale = Math.min(1, MOST_SIDE / Math.max(bitmap.width, bitmap.height));
  const canvas = document.createElement("canvas");
  canvas.width = Math.max(1, Math.round(bitmap.width * scale));
  canvas.height = Math.max(1, Math.round(bitmap.height * scale));
  const pen = /** @type {CanvasRenderingContext2D} */ (canvas.getContext("2d", { alpha: false }));
  pen.drawImage(bitmap, 0, 0, canvas.width, canvas.height);
  bitmap.close();
  for (const quality of QUALITIES) {
    const jpeg = await written(canvas, quality);
    if (jpeg.size <= MOST_BYTES) return jpeg;
  }
  throw new NotAPicture();
}

/** @param {Blob} file */
async function read(file) {
  // A drawing in a text file may hold more than a drawing; only pictures made of pixels are read.
  if (file.type.includes("svg")) throw new NotAPicture();
  try {
    return await createImageBitmap(file, { imageOrientation: "from-image" });
  } catch (fault) {
    throw new NotAPicture("", { cause: fault });
  }
}

/** @param {HTMLCanvasElement} canvas @param {number} quality @returns {Promise<Blob>} */
function written(canvas, quality) {
  return new Promise((done, failed) =>
    canvas.toBlob((blob) => (blob ? done(blob) : failed(new NotAPicture())), "image/jpeg", quality));
}
