/** Text of a CSV file by RFC 4180: fields quoted where they must be, lines ended with CRLF. */
export function csv(lines: readonly (readonly (string | number)[])[]): string {
  return lines.map((fields) => `${fields.map(field).join(',')}\r\n`).join('');
}

function field(value: string | number): string {
  const text = String(value);
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}
