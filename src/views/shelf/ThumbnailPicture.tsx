import type { Thumbnail } from '../../mesh/thumbnailBox.ts';

interface Props {
  readonly thumbnail: Thumbnail | null;
}

/** The small picture of a basket: its outline and a few rows. */
export function ThumbnailPicture({ thumbnail }: Props) {
  return (
    <svg className="thumbnail" viewBox="0 0 100 75" aria-hidden="true">
      {thumbnail && <path className="thumbnail-body" d={thumbnail.body} />}
      {thumbnail && <path className="thumbnail-rows" d={thumbnail.rows} />}
    </svg>
  );
}
