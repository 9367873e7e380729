/** A text saved as a file on the keeper's device. */

/** @param type media type, such as "text/calendar" */
export function saveAs(name: string, type: string, text: string): void {
  const url = URL.createObjectURL(new Blob([text], { type: `${type};charset=utf-8` }));
  const link = document.createElement('a');
  link.href = url;
  link.download = name;
  link.click();
  // The browser reads it after the click.
  setTimeout(() => URL.revokeObjectURL(url), 10_000);
}
