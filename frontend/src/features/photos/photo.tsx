/** One photo, as large as it is kept. */
import { dayAndClock } from "../../domain/clock";
import { upperFirst } from "../../domain/format";
import { Act } from "../../ui/act";
import { Tray } from "../../ui/frame";
import { WholePhoto } from "../../ui/photo";
import { Fact } from "../../ui/seam";
import { useBack } from "../common/back";
import { Screen } from "../common/screen";
import { useZone } from "../common/session";
import { useNow } from "../common/use-now";
import { usePhotoScreen } from "./use-photo-screen";

const HOME = "/racks";

export function PhotoScreen({ id = "" }: { id?: string }) {
  const zone = useZone();
  const now = useNow();
  const back = useBack(HOME);
  const { address, photo, isMissing, miss } = usePhotoScreen(id);
  const when = photo ? dayAndClock(new Date(photo.happened_at), now, zone) : undefined;
  return (
    <Screen title="Photo" when={when} within={HOME} tray={<Tray><Act onPress={back}>Back</Act></Tray>}>
      {isMissing
        ? <Fact label="" natch="hand" value="Not on this phone" note="It is shown again when the studio answers." />
        : <WholePhoto address={address} spoken={photo ? `Photo by ${photo.taken_by}` : "Photo"} onMissing={miss} />}
      {photo && <Fact label="taken by" value={photo.taken_by} note={upperFirst(when ?? "")} />}
    </Screen>
  );
}
