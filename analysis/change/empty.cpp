// placeholder until the room is written
