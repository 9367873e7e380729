export function Backups() {
  return (
    <section className="panel" aria-label="Backups">
      <h2>Backups</h2>
    </section>
  );
}
