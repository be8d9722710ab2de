/**
 * Length of a bow that stands `rise` over two feet `span` apart, mm: straight legs and half a circle,
 * or half an ellipse where it is lower than half its span (Ramanujan's first rule, good to 3e-4 down
 * to a rise of a tenth of the span).
 */
export function archLength(span: number, rise: number): number {
  const radius = span / 2;
  if (rise >= radius) return 2 * (rise - radius) + Math.PI * radius;
  return (
    (Math.PI / 2) * (3 * (radius + rise) - Math.sqrt((3 * radius + rise) * (radius + 3 * rise)))
  );
}
