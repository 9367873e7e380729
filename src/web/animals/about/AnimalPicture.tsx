/** The small picture of an animal, where there is one. */
import type { Photo } from '../../../care/model.ts';
import './picture.css';

/** @param alt empty where the name stands beside it */
export function AnimalPicture({
  photo,
  alt,
  size,
}: {
  photo: Photo | undefined;
  alt: string;
  size: 'list' | 'page';
}) {
  if (!photo) return null;
  return (
    <img className={`animal-picture of-${size}`} src={`data:image/jpeg;base64,${photo.jpeg}`} alt={alt} />
  );
}
