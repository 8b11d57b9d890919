/** Saves a text as a file where the browser saves files. */
export function saveText(text: string, name: string, type: string): void {
  const address = URL.createObjectURL(new Blob([text], { type }));
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  // The browser reads it after the click; a minute is long enough for any phone.
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}
