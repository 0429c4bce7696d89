/** The whole page. */
export function App() {
  return (
    <main>
      <h1>Throughfin</h1>
    </main>
  );
}
