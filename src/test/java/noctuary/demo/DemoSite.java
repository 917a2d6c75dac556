package noctuary.demo;

/** The two invented places. */
record DemoSite(String id, double latitudeDeg, double longitudeDeg, double elevationM) {
    static DemoSite of(String id) {
        return id.equals("terrace") ? new DemoSite(id, 44.3, 9.2, 100) : new DemoSite(id, 44.52, 9.47, 930);
    }
}
