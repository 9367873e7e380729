/** Drying: runs on the trays, looks in time, and the moisture that the scale tells. */

/** @param shown id of a run; undefined for all */
export function DryingScreen({ shown: _ }: { shown: string | undefined }) {
  return (
    <main id="main" className="page">
      <h1>Drying</h1>
    </main>
  );
}
