export function OutAndIn() {
  return (
    <section className="panel" aria-label="Take out and bring in">
      <h2>Take out and bring in</h2>
    </section>
  );
}
