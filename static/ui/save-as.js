/** Offers a file to be saved under a name. @param {Blob} file @param {string} name */
export function saveAs(file, name) {
  const address = URL.createObjectURL(file);
  Object.assign(document.createElement("a"), { href: address, download: name }).click();
  URL.revokeObjectURL(address);
}
