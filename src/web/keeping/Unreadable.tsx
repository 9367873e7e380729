export function Unreadable() {
  return (
    <section className="panel" aria-label="Not readable">
      <h2>Not readable</h2>
    </section>
  );
}
